package yett.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
    /** The cause that is believed with over 80 % at the first repair, and is not there. */
    Optional<String> surelyWrong() {
      Played.Belief belief = played.last();
      String leading = belief.ranked().get(0);
      boolean wrong =
          belief.chances().get(0) > RuleOfThumb.SURE
              && !leading.equals(Cause.NOT_IN_RULE_BASE)
              && !played.truth().contains(leading);
      return wrong ? Optional.of(leading) : Optional.empty();
    }

    boolean knowsItsLimits(Played.Belief belief) {
      return belief.place(Cause.NOT_IN_RULE_BASE) < 2;
    }
  }

  private final Map<String, Cause> causes;
  private final List<Case> all;

  Missing(Map<String, Cause> causes, List<Case> all) {
    this.causes = causes;
    this.all = all;
  }

  private boolean isOfItsArea(Case one) {
    return one.surelyWrong()
        .filter(wrong -> causes.get(wrong).area().equals(one.cause().area()))
        .isPresent();
  }

  String table() {
    StringBuilder table =
        new StringBuilder(
            Text.head(
                List.of(
                    "area of the missing card",
                    "cases",
                    "unknown first or second, first repair",
                    "at the end",
                    "wrong cause over 80 %, first repair",
                    "of the same area",
                    "handed over")));
    Map<String, List<Case>> areas = new TreeMap<>();
    all.forEach(c -> areas.computeIfAbsent(c.cause().area(), a -> new ArrayList<>()).add(c));
    areas.forEach((area, cases) -> table.append(row(area, cases)));
    return table.append(row("**all**", all)).toString();
  }

  private String row(String name, List<Case> cases) {
    return Text.row(
        List.of(
            name,
            String.valueOf(cases.size()),
            share(cases, c -> c.knowsItsLimits(c.played().last())),
            share(cases, c -> c.knowsItsLimits(c.played().end())),
            share(cases, c -> c.surelyWrong().isPresent()),
            share(cases, this::isOfItsArea),
            share(cases, c -> c.played().handedOver())));
  }

  private static String share(List<Case> cases, Predicate<Case> so) {
    return Text.share(cases.stream().filter(so).count(), cases.size());
  }

  String standsOut() {
    List<Case> handedOver = all.stream().filter(c -> c.played().handedOver()).toList();
    return Text.words(
        "- With the card of the cause missing, *not in this rule base* stood first or second in %s at"
            + " the first repair and in %s at the end, of those handed over in %s (the others ran"
            + " again at some try); a wrong cause had over 80 %% at the first repair in %s, one of"
            + " the missing card's area in %s.",
        share(all, c -> c.knowsItsLimits(c.played().last())),
        share(all, c -> c.knowsItsLimits(c.played().end())),
        share(handedOver, c -> c.knowsItsLimits(c.played().end())),
        share(all, c -> c.surelyWrong().isPresent()),
        share(all, this::isOfItsArea));
  }
}
