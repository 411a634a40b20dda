/** Closed cases against the cards: which chances they speak against, and what to write instead. */
package yett.review;
