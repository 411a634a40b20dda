package yett.interview;

import java.util.List;
import yett.belief.Belief;
import yett.rules.Judgement;

/**
 * A case as it stands: what was said and done, what the rules and the mathematics make of it, and
 * the step that follows.
 */
public record Moment(
    List<Entry> entries,
    CaseState state,
    Judgement judgement,
    Belief belief,
    Trail trail,
    Step step) {}
