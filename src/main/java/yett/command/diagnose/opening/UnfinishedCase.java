package yett.command.diagnose.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.OpenCase;
import yett.interview.event.Ending;
import yett.interview.state.CaseState;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.CallWords;

/**
 * Finds the last case at a gate if it was left before the gate was repaired and proved. Somebody
 * who begins another case is told of it, and of the set-ups that it left in force.
 */
record UnfinishedCase(Casebook casebook, RuleBase base) {
  /**
   * The newest unfinished case that left the gate in a set-up; without one, the newest unfinished
   * case. Cases before the last one that ended with every proof passed do not count. Empty if there
   * is none.
   */
  Optional<Block> at(String gate) {
    return find(gate).map(line -> told(line, state(line)));
  }

  /**
   * Whether that case left the gate as nobody may use it: locked off, barred, or otherwise not
   * given back to its users.
   */
  boolean leftOutOfUse(String gate) {
    return find(gate).map(this::state).stream()
        .flatMap(s -> s.work().setUps().stream())
        .anyMatch(id -> id.equals(SetUp.OUT_OF_USE) || keepsFromUse(id));
  }

  private boolean keepsFromUse(String setUp) {
    return Optional.ofNullable(base.setUps().get(SetUp.IN_USE))
        .filter(use -> use.excludes().contains(setUp))
        .isPresent();
  }

  private Optional<CaseSummary> find(String gate) {
    List<CaseSummary> open = new ArrayList<>();
    for (CaseSummary line : casebook.casesAt(gate)) {
      CaseState state = state(line);
      if (state.closed().filter(Ending::isProved).isPresent()) {
        break;
      }
      if (state.closed().filter(Ending::isDone).isEmpty()) {
        if (!state.work().setUps().isEmpty()) {
          return Optional.of(line);
        }
        open.add(line);
      }
    }
    return open.stream().findFirst();
  }

  private CaseState state(CaseSummary line) {
    return CaseState.of(OpenCase.entries(casebook.events(line.id())));
  }

  private Block told(CaseSummary last, CaseState state) {
    String inForce =
        state.work().setUps().stream()
            .map(id -> base.setUps().get(id))
            .filter(Objects::nonNull)
            .map(s -> s.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining("; "));
    return Block.signal(
        SignalWord.WARNING,
        "%s %s at this gate is not finished: %s, %s.%s To go on with it: save, then resume %s."
            .formatted(
                state.isInspection() ? "Inspection" : "Case",
                last.id(),
                state.closed().map(Ending::words).orElse("left open"),
                CallWords.when(last.lastEvent()),
                inForce.isEmpty() ? "" : " In force there: " + inForce + ".",
                last.id()));
  }
}
