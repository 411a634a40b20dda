package yett.casebook;

import java.util.List;

/**
 * A case that was put right as far as it can be. How it stood before is kept in the casebook, in
 * the table set_apart.
 *
 * @param id its number now
 * @param done what was done, parts of a sentence; empty if nothing had to be
 */
public record Repaired(CaseId id, List<String> done) {}
