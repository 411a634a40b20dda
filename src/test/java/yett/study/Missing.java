package yett.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import yett.knowledge.Cause;

/** What happens when the card of the true cause was never written. */
final class Missing {
  /**
   * A case.
   *
   * @param cause whose card is missing
   */
  record Case(Cause cause, Played played) {
    /** Whether the unknown, or the cause itself for one who knows it, is first or second. */
    boolean knowsItsLimits(Played.Belief belief) {
      return belief.place(Cause.NOT_IN_RULE_BASE) < 2 || belief.place(cause.id()) < 2;
    }

    /** Whether a cause that is not there is believed with over 80 %. */
    boolean surelyWrong(Played.Belief belief) {
      String leading = belief.ranked().get(0);
      return belief.chances().get(0) > RuleOfThumb.SURE
          && !leading.equals(Cause.NOT_IN_RULE_BASE)
          && !played.truth().contains(leading);
    }
  }

  private final List<Case> all;
  private final List<Case> known;

  /**
   * @param all the cases under Yett
   * @param known the same cases, as one would have believed who has the card and takes its cause to
   *     be as rare as the unknown
   */
  Missing(List<Case> all, List<Case> known) {
    this.all = all;
    this.known = known;
  }

  String table() {
    StringBuilder table =
        new StringBuilder(
            Text.head(
                List.of(
                    "area of the missing card",
                    "cases",
                    "unknown first or second: first repair",
                    "at the end",
                    "of what is left then",
                    "wrong cause over 80 %: first repair",
                    "of what is left at the end",
                    "handed over")));
    Map<String, List<Case>> areas = new TreeMap<>();
    all.forEach(c -> areas.computeIfAbsent(c.cause().area(), a -> new ArrayList<>()).add(c));
    areas.forEach((area, cases) -> table.append(row(area, cases)));
    return table
        .append(row("**all**", all))
        .append(row("**handed over**", handedOver()))
        .append(row("*all, by one who has the card*", known))
        .toString();
  }

  private List<Case> handedOver() {
    return all.stream().filter(c -> c.played().handedOver()).toList();
  }

  private String row(String name, List<Case> cases) {
    return Text.row(
        List.of(
            name,
            String.valueOf(cases.size()),
            knowing(cases, Played::last),
            knowing(cases, Played::end),
            knowing(cases, Played::rest),
            wrong(cases, Played::last),
            wrong(cases, Played::rest),
            share(cases, c -> c.played().handedOver())));
  }

  private static String knowing(List<Case> cases, Function<Played, Played.Belief> when) {
    return share(cases, c -> c.knowsItsLimits(when.apply(c.played())));
  }

  private static String wrong(List<Case> cases, Function<Played, Played.Belief> when) {
    return share(cases, c -> c.surelyWrong(when.apply(c.played())));
  }

  private static String share(List<Case> cases, Predicate<Case> so) {
    return Text.share(cases.stream().filter(so).count(), cases.size());
  }

  String standsOut() {
    return Text.words(
        "- With the card of the cause missing, *not in this rule base* stood first or second in %s of"
            + " all cases at the end and in %s of those handed over; among what was then left in %s"
            + " and %s. A wrong cause had over 80 %% of what was left in %s. At the first repair it was"
            + " first or second in %s, and a wrong cause had over 80 %% in %s; one who has the card, and"
            + " takes its cause to be as rare as the unknown, would have had %s and %s there.",
        knowing(all, Played::end),
        knowing(handedOver(), Played::end),
        knowing(all, Played::rest),
        knowing(handedOver(), Played::rest),
        wrong(all, Played::rest),
        knowing(all, Played::last),
        wrong(all, Played::last),
        knowing(known, Played::last),
        wrong(known, Played::last));
  }
}
