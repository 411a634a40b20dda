package yett.bench;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.belief.GateModels;
import yett.belief.Observation;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * Sees to it that a cause is confirmed before its repair. Complaints that few causes have can make
 * one so probable that the plan repairs at once, and the check that settles it is never made.
 */
final class MeasuredFirst {
  static final String KEY = "measure-first";

  /** Answered where no check has to come first. */
  private static final String NONE = "none";

  /** From this chance on, a repair may come before any check; considered judgement. */
  private static final double SURE = 0.9;

  private MeasuredFirst() {}

  /** Asks what has to be checked before the repair; by default the check that settles it. */
  static Question question(CardQuestions asked, Map<String, String> answers) {
    String settles = settling(asked.base(), answers).map(Check::id).orElse("");
    return CardQuestions.ids(
            KEY,
            "Which checks must come before the repair, however sure it looks? Ids, with commas, or "
                + NONE,
            "check",
            asked.vocabulary().checks())
        .usual(settles)
        .allowing(NONE);
  }

  static List<String> ids(String answer) {
    return answer.equals(NONE) ? List.of() : Lists.ids(answer);
  }

  /**
   * Of the checks for which the author gave the cause a row, the one that tells it best from a
   * sound gate and from all its look-alikes.
   */
  private static Optional<Check> settling(RuleBase base, Map<String, String> answers) {
    List<String> like = Lists.ids(answers.getOrDefault("like", ""));
    return new CheckChoice(base, answers)
        .all().stream()
            .filter(c -> c.kind() == Check.Kind.CHECK && !c.danger())
            .filter(c -> !answers.getOrDefault(c.id(), "").isBlank())
            .max(Comparator.comparingDouble(c -> least(c, answers.get(c.id()), like)));
  }

  private static double least(Check check, String answer, List<String> like) {
    double[] row = RowAnswer.row(answer, check);
    return Stream.concat(
            Stream.of(check.otherwise()),
            like.stream().map(l -> check.likelihood().getOrDefault(l, check.otherwise())))
        .mapToDouble(other -> Neighbours.distance(row, other))
        .min()
        .orElse(0);
  }

  /**
   * Advice where complaints alone make a cause so probable that its repair may come at once.
   *
   * @param first the case of the gate at which it was met, as text
   */
  static List<String> advice(
      String cause, String first, Map<String, String> answers, RuleBase base) {
    List<String> said =
        first
            .lines()
            .filter(l -> l.startsWith("complaints: "))
            .findFirst()
            .map(l -> Lists.ids(l.replaceAll("complaints: |[\\[\\]]", "")))
            .orElse(List.of());
    double chance = said.isEmpty() ? 0 : chance(cause, said, answers, base);
    if (chance < SURE) {
      return List.of();
    }
    String stands =
        "With these complaints alone (%s) it stands at %.0f %%"
            .formatted(String.join(", ", said), Math.min(99, 100 * chance));
    return base.removing(cause).stream()
        .limit(1)
        .map(repair -> stands + before(repair, cause))
        .toList();
  }

  private static String before(Repair repair, String cause) {
    return repair.measureFirst().isEmpty()
        ? ", so "
            + repair.id()
            + " may come before any check of "
            + cause
            + ". Name the check that settles it under "
            + KEY
            + " of that repair, or see whether these complaints are as rare with other causes as"
            + " the cards say."
        : "; before "
            + repair.id()
            + " comes all the same: "
            + String.join(", ", repair.measureFirst())
            + ".";
  }

  private static double chance(
      String cause, List<String> said, Map<String, String> answers, RuleBase base) {
    Map<String, String> needed = new HashMap<>();
    OnlyIf.parts(answers.getOrDefault(OnlyIf.KEY, ""))
        .forEach((question, allowed) -> needed.put(question, allowed.get(0)));
    Site gate = new SiteFacts(base).site(needed);
    Map<String, Double> ruledOut = new HashMap<>();
    base.causes().values().stream()
        .filter(c -> !gate.allows(c))
        .forEach(c -> ruledOut.put(c.id(), 0.0));
    Belief belief = Belief.roughly(GateModels.of(base).at(ruledOut));
    for (String complaint : said) {
      Check check = base.checks().get(complaint);
      if (check != null) {
        belief =
            belief.learn(
                Observation.of(complaint, check.indexOf(Check.SAID), check.outcomes().size()));
      }
    }
    return belief.atCallOut(cause);
  }
}
