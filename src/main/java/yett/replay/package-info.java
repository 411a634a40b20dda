/** Runs recorded cases without a person, for regression tests, comparison and study. */
package yett.replay;
