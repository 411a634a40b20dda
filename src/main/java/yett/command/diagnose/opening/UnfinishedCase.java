package yett.command.diagnose.opening;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.command.diagnose.screen.StillInForce;
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
  Optional<Left> at(String gate) {
    Optional<Left> newest = Optional.empty();
    for (CaseSummary line : casebook.casesAt(gate)) {
      CaseState state = CaseState.of(OpenCase.entries(casebook.events(line.id())));
      if (state.closed().filter(Ending::isProved).isPresent()) {
        break;
      }
      if (state.closed().filter(Ending::isDone).isEmpty()) {
        Left left = new Left(line, state, base);
        if (!state.work().setUps().isEmpty()) {
          return Optional.of(left);
        }
        newest = newest.or(() -> Optional.of(left));
      }
    }
    return newest;
  }

  /**
   * A case that was left unfinished.
   *
   * @param last its line in the casebook
   * @param state how it was left
   */
  record Left(CaseSummary last, CaseState state, RuleBase base) {
    /**
     * Whether it left the gate as nobody may use it: locked off, barred, or otherwise not given
     * back to its users.
     */
    boolean isOutOfUse() {
      SetUp inUse = base.setUps().get(SetUp.IN_USE);
      return state.work().setUps().stream()
          .anyMatch(
              id -> id.equals(SetUp.OUT_OF_USE) || inUse != null && inUse.excludes().contains(id));
    }

    Block told() {
      List<String> known =
          state.work().setUps().stream().filter(base.setUps()::containsKey).toList();
      String inForce = StillInForce.names(base, known);
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
}
