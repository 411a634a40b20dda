/**
 * A case at one moment: its events, the conclusions of the rules and the belief; {@link
 * yett.interview.moment.Present} is it before the next step is chosen, {@link
 * yett.interview.moment.Moment} after.
 */
package yett.interview.moment;
