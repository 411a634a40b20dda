package yett.interview;

import java.util.List;
import java.util.Optional;
import yett.belief.Belief;
import yett.rules.Judgement;

/**
 * A case as it stands: what was said and done, what the rules and the mathematics make of it, and
 * the step that follows.
 *
 * @param conflict answers that can hardly all be right
 */
public record Moment(
    List<Entry> entries,
    CaseState state,
    Judgement judgement,
    Belief belief,
    Trail trail,
    Optional<Conflict> conflict,
    Step step) {}
