/**
 * Events that were entered elsewhere, by two people at once, in a file or from a paper: whether
 * they make sense, and how they join the case.
 */
package yett.interview.intake;
