package yett.interview;

import java.time.Instant;
import yett.knowledge.Role;

/**
 * An event with its place in the case.
 *
 * @param number 1 for the first event of a case
 * @param by who was at the keyboard
 */
public record Entry(long number, Instant at, Role by, Event event) {}
