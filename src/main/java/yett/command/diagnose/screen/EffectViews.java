package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.interview.evidence.EffectSigns;
import yett.interview.evidence.EffectSigns.Sign;
import yett.interview.evidence.Trail;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows what the machine does according to the answers, as far as a cause explains it. */
record EffectViews(RuleBase base) {
  private static final int MOST_SEEN = 3;
  private static final int MOST_UNSEEN = 2;
  private static final int MOST_SIGNS = 3;

  /** A few lines under a heading; nothing if no effect of the cause was looked for. */
  List<Block> of(Trail trail, Cause cause) {
    List<EffectSigns> all = EffectSigns.of(cause, trail, base);
    List<Block.Row> rows = new ArrayList<>();
    all.stream()
        .filter(s -> !s.seen().isEmpty())
        .limit(MOST_SEEN)
        .forEach(s -> rows.add(Block.row("Seen", seen(s))));
    all.stream()
        .filter(s -> s.seen().isEmpty())
        .limit(MOST_UNSEEN)
        .forEach(
            s -> rows.add(Block.row("Not seen", s.effect().name() + ": " + signs(s.ordinary()))));
    return rows.isEmpty()
        ? List.of()
        : List.of(Block.heading(cause.name() + ": how the machine behaves"), new Block.Rows(rows));
  }

  private static String seen(EffectSigns signs) {
    return signs.effect().name()
        + ": "
        + signs(signs.seen())
        + (signs.ordinary().isEmpty() ? "" : "; against it: " + signs(signs.ordinary()))
        + (signs.expected()
            ? " (expected)"
            : " (in " + Figures.percent(signs.chance()) + " of cases)");
  }

  private static String signs(List<Sign> signs) {
    return signs.stream()
        .limit(MOST_SIGNS)
        .map(EffectViews::sign)
        .collect(Collectors.joining("; "));
  }

  /** A complaint, or what a look showed, in the words of its card. */
  private static String sign(Sign sign) {
    Check check = sign.check();
    return check.kind() == Check.Kind.COMPLAINT
        ? Wording.uncapital(check.ask())
        : Wording.uncapital(Wording.spaced(check.name()))
            + " ("
            + Wording.meaning(check, sign.outcome())
            + ")";
  }
}
