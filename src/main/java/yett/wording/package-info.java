/** How things of a case are said, on a screen and on paper alike: words, no layout. */
package yett.wording;
