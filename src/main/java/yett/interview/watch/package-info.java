/**
 * Checks that no step is unsafe. It reads the events on its own, so that it does not share a
 * mistake with what chose the step.
 */
package yett.interview.watch;
