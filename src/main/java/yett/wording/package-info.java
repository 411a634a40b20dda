/** The words for the things of a case, the same on screen and on paper. No layout. */
package yett.wording;
