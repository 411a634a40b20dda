/** Entering and leaving the set-ups that work needs, one at a time. */
package yett.interview.setup;
