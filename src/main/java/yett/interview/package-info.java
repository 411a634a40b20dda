/** One case from the first question to the closing, as a pure function of its events. */
package yett.interview;
