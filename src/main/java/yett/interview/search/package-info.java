/**
 * The search for the fault: which check or repair comes next, at the gate and on the telephone.
 * What is allowed at all is decided before.
 */
package yett.interview.search;
