package yett.casebook;

/**
 * A case whose line in the list cannot be read.
 *
 * @param id as it is stored
 * @param why what cannot be read, parts of a sentence
 */
public record Unreadable(String id, String why) {}
