package yett.command.diagnose.told;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import yett.command.diagnose.sitting.Sitting;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.saying.Thing;
import yett.saying.Thing.Kind;

/** Finds what shows an effect, in things that somebody could say. */
record Signs(Sitting sitting) {
  /** How many are offered, the most likely first. */
  private static final int MOST = 6;

  /** The most likely signs that this person can check. */
  List<Thing> of(Effect effect) {
    Set<String> unavailable = sitting.moment().judgement().unavailable();
    return effect.shows().entrySet().stream()
        .filter(e -> !unavailable.contains(e.getKey()))
        .map(e -> sign(sitting.base().checks().get(e.getKey()), e.getValue()))
        .sorted(Comparator.comparingDouble((Sign s) -> -s.chance()))
        .limit(MOST)
        .map(Sign::thing)
        .toList();
  }

  private record Sign(Thing thing, double chance) {}

  /**
   * The most probable outcome of a check when the effect is present; an ordinary outcome is no
   * sign.
   */
  private static Sign sign(Check check, double[] row) {
    int most = row.length - 1;
    for (int i = row.length - 1; i > 0; i--) {
      most = row[i] > row[most] ? i : most;
    }
    if (check.kind() == Check.Kind.COMPLAINT) {
      return new Sign(new Thing(Kind.COMPLAINT, check.id(), ""), row[row.length - 1]);
    }
    return check.measured()
        ? new Sign(new Thing(Kind.READING, check.id(), ""), row[most])
        : new Sign(new Thing(Kind.OUTCOME, check.id(), check.outcomes().get(most).id()), row[most]);
  }
}
