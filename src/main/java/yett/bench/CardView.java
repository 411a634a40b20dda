package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.wording.WhoMay;

/**
 * Shows a card as the program understands it: words converted to figures, and rows from all files
 * together. For a cause it also shows what it leads to, its signs, what removes it and what looks
 * like it.
 */
public final class CardView {
  private final RuleBase base;
  private final EffectView effects;
  private final Map<String, String> lines = new LinkedHashMap<>();

  private CardView(RuleBase base) {
    this.base = base;
    this.effects = new EffectView(base);
  }

  /**
   * Lines by their name; empty if there is no cause, effect, check, complaint, proof or repair with
   * this id.
   */
  public static Map<String, String> of(String id, RuleBase base) {
    CardView view = new CardView(base);
    Optional.ofNullable(base.causes().get(id)).ifPresent(view::cause);
    Optional.ofNullable(base.effects().get(id))
        .ifPresent(effect -> view.lines.putAll(view.effects.of(effect)));
    Optional.ofNullable(base.checks().get(id)).ifPresent(view::check);
    Optional.ofNullable(base.repairs().get(id))
        .ifPresent(
            repair -> {
              view.lines.put("repair " + id, repair.name());
              view.who(id, repair.who(), repair.hazards());
              repair
                  .measureFirst()
                  .forEach(c -> view.lines.put("measure first " + c, base.checks().get(c).ask()));
              repair.removes().forEach((c, p) -> view.lines.put("removes " + c, figure(p)));
            });
    return view.lines;
  }

  /** The ids for which {@link #of} has lines. */
  public static List<String> ids(RuleBase base) {
    List<String> ids = new ArrayList<>(base.causes().keySet());
    ids.addAll(base.effects().keySet());
    ids.addAll(base.checks().keySet());
    ids.addAll(base.repairs().keySet());
    return ids;
  }

  private void cause(Cause cause) {
    lines.put("cause " + cause.id(), cause.name());
    lines.put("prior", figure(cause.prior()) + ": " + Priors.words(cause.prior()));
    lines.putAll(effects.of(cause));
    base.checks().values().stream()
        .filter(c -> c.likelihood().containsKey(cause.id()))
        .sorted(Comparator.comparingDouble((Check c) -> -telling(c, cause.id())))
        .forEach(c -> lines.put("shows " + c.id(), row(c, cause)));
    cause.consequences().forEach((c, p) -> lines.put("brings about " + c, figure(p)));
    base.repairs().values().stream()
        .filter(r -> r.removes().containsKey(cause.id()))
        .forEach(r -> lines.put("removed by " + r.id(), figure(r.removes().get(cause.id()))));
    alike(cause);
  }

  private void alike(Cause cause) {
    List<LookAlike> alike = LookAlike.of(cause, base);
    alike.forEach(a -> lines.put("looks like " + a.cause().id(), words(a)));
    if (alike.isEmpty()) {
      lines.put(
          "looks like",
          String.format(
              Locale.ROOT,
              "nothing: no other cause shares %.0f %% of what would be seen",
              100 * Likeness.ALIKE));
    }
  }

  /** How far a cause's row is from that of a sound gate. */
  private static double telling(Check check, String cause) {
    return Neighbours.distance(check.likelihood().get(cause), check.otherwise());
  }

  private static String words(LookAlike alike) {
    String same =
        String.format(
            Locale.ROOT, "%.0f %% of what would be seen is the same; ", 100 * alike.share());
    return same
        + alike
            .told()
            .map(
                best ->
                    String.format(
                        Locale.ROOT,
                        "best told apart by %s (%.0f %%)",
                        best.check().id(),
                        100 * best.distance()))
            .orElse("no check tells them apart");
  }

  private void check(Check check) {
    lines.put(check.kind().name().toLowerCase(Locale.ROOT) + " " + check.id(), check.ask());
    who(check.id(), check.who(), check.hazards());
    check.outcomes().forEach(o -> lines.put("outcome " + o.id(), o.text()));
    check
        .likelihood()
        .keySet()
        .forEach(c -> lines.put("with " + c, row(check, base.causes().get(c))));
    lines.putAll(effects.on(check));
    lines.put("otherwise", row(check, check.otherwise()));
  }

  private void who(String card, Role who, List<String> hazards) {
    lines.put("who", WhoMay.words(base, card, who, hazards));
  }

  /** The row of a cause, and its origin. */
  private String row(Check check, Cause cause) {
    return row(check, check.likelihood().get(cause.id())) + effects.origin(cause, check);
  }

  static String row(Check check, double[] row) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < row.length; i++) {
      parts.add(check.outcomes().get(i).id() + " " + figure(row[i]));
    }
    return String.join(", ", parts);
  }

  static String figure(double chance) {
    return String.format(Locale.ROOT, "%.3f", chance)
        .replaceFirst("0+$", "")
        .replaceFirst("\\.$", "");
  }
}
