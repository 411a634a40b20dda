package yett.casebook;

import java.util.List;

/**
 * A case that was repaired as far as possible. Its state before is kept in the casebook, in the
 * table set_apart.
 *
 * @param id its number now
 * @param done what was done, parts of a sentence; empty if nothing was necessary
 */
public record Repaired(CaseId id, List<String> done) {}
