/** Runs recorded cases without a person, for regression, comparison and study. */
package yett.replay;
