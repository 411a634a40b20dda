/**
 * One case from the first question to the closing, as a pure function of its events. {@link
 * yett.interview.course.Interview} leads it; the packages inside this one are its parts, from
 * {@code event} up to {@code course} and {@code watch}.
 */
package yett.interview;
