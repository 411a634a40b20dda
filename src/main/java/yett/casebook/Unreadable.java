package yett.casebook;

/**
 * A case whose line in the list cannot be read.
 *
 * @param id as it stands there
 * @param why what cannot be read, parts of a sentence
 */
public record Unreadable(String id, String why) {}
