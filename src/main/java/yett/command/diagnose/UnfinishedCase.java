package yett.command.diagnose;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.OpenCase;
import yett.interview.CaseState;
import yett.interview.Ending;
import yett.knowledge.RuleBase;
import yett.wording.CallWords;

/**
 * The last case at a gate, if it was left before the gate was repaired and proved: whoever begins
 * another one is told of it, and of what it left in force.
 */
final class UnfinishedCase {
  private final Casebook casebook;
  private final RuleBase base;

  UnfinishedCase(Casebook casebook, RuleBase base) {
    this.casebook = casebook;
    this.base = base;
  }

  /** Empty if there is none. */
  Optional<Block> at(String gate) {
    return casebook.casesAt(gate).stream().findFirst().flatMap(this::told);
  }

  private Optional<Block> told(CaseSummary last) {
    CaseState state = CaseState.of(OpenCase.entries(casebook.events(last.id())));
    if (state.isInspection() || state.closed().filter(Ending::isDone).isPresent()) {
      return Optional.empty();
    }
    String inForce =
        state.work().setUps().stream()
            .map(id -> base.setUps().get(id))
            .filter(Objects::nonNull)
            .map(s -> s.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining("; "));
    return Optional.of(
        Block.signal(
            SignalWord.WARNING,
            "Case %s at this gate is not finished: %s, %s.%s To go on with it: save, then resume %s."
                .formatted(
                    last.id(),
                    state.closed().map(Ending::words).orElse("left open"),
                    CallWords.when(last.lastEvent()),
                    inForce.isEmpty() ? "" : " In force there: " + inForce + ".",
                    last.id())));
  }
}
