/**
 * All cases run under a rule base, and held against an earlier run or another rule base: what a
 * trainer looks through before a change goes out.
 */
package yett.trial;
