/**
 * What was said and done in a case, as it is stored: each event with its number, time and author.
 */
package yett.interview.event;
