/**
 * Compares closed cases with the cards: which chances they contradict, and what to write instead.
 */
package yett.review;
