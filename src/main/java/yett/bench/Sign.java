package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yett.belief.Decibans;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * An outcome that is seen more often with a cause than on a sound gate.
 *
 * @param with chance of it with the cause alone
 * @param sound chance of it on a sound gate
 * @param by names of the effects that show it; empty if it is the cause's own mark
 */
record Sign(Check check, int outcome, double with, double sound, List<String> by) {
  /** Least difference of the chances for an outcome to be a sign; considered judgement. */
  private static final double LEAST = 0.05;

  /** All signs of a cause, those with the largest difference from a sound gate first. */
  static List<Sign> of(Cause cause, RuleBase base) {
    List<Sign> signs = new ArrayList<>();
    for (Check check : base.checks().values()) {
      double[] row = check.likelihood().get(cause.id());
      for (int o = 0; row != null && o < row.length; o++) {
        if (row[o] - check.otherwise()[o] >= LEAST) {
          signs.add(new Sign(check, o, row[o], check.otherwise()[o], by(cause, check, base)));
        }
      }
    }
    signs.sort(
        Comparator.comparingDouble((Sign s) -> s.sound() - s.with())
            .thenComparing(s -> s.check().id()));
    return List.copyOf(signs);
  }

  private static List<String> by(Cause cause, Check check, RuleBase base) {
    return base.effectRows().behind(cause, check).stream().map(Effect::name).toList();
  }

  /** The evidence of this sign for the cause against a sound gate, as the belief counts it. */
  double decibans() {
    return Decibans.ofSeeing(with, sound, check.outcomes().size());
  }

  String words() {
    return check.kind() == Check.Kind.COMPLAINT ? "" : Wording.meaning(check, id());
  }

  private String id() {
    return check.outcomes().get(outcome).id();
  }

  /** The id of the check in words, which is short. */
  String brief() {
    return check.kind() == Check.Kind.COMPLAINT
        ? check.ask()
        : Wording.spaced(check.id()) + " " + Wording.spaced(id());
  }

  String origin() {
    return by.isEmpty() ? "Its own marks" : String.join("; ", by);
  }
}
