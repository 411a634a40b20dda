/**
 * Where a case stands after its events, before any reasoning. What the desk did, the forces that
 * were measured and the time worked are read from the same events.
 */
package yett.interview.state;
