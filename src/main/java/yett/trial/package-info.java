/**
 * Runs all cases under a rule base and compares them with an earlier run or another rule base. A
 * trainer looks at the result before releasing a change.
 */
package yett.trial;
