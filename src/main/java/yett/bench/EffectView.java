package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.RuleBase;

/**
 * Shows effects as the program understands them: their signs, what leads to them, and what they
 * lead to.
 */
record EffectView(RuleBase base) {
  /** What a cause leads to: its own effects first, then what those lead to. */
  Map<String, String> of(Cause cause) {
    Map<String, String> lines = new LinkedHashMap<>();
    Map<Effect, Double> all = base.effectRows().chances(cause);
    cause
        .leadsTo()
        .forEach(
            (id, chance) -> {
              Effect effect = base.effects().get(id);
              double inAll = all.get(effect);
              boolean more = inAll - chance > 0.0005;
              String words = more ? ", with what follows " + CardView.figure(inAll) : "";
              lines.put("leads to " + id, chance(chance) + words + ": " + effect.name());
            });
    all.forEach(
        (effect, chance) -> {
          if (!cause.leadsTo().containsKey(effect.id())) {
            lines.put(
                "leads on to " + effect.id(),
                chance(chance) + ", by way of " + before(effect, all) + ": " + effect.name());
          }
        });
    return lines;
  }

  private static String before(Effect effect, Map<Effect, Double> all) {
    return all.keySet().stream()
        .filter(e -> e.leadsTo().containsKey(effect.id()))
        .map(Effect::id)
        .collect(Collectors.joining(", "));
  }

  /** What leads to an effect, what it shows and what it leads to. */
  Map<String, String> of(Effect effect) {
    Map<String, String> lines = new LinkedHashMap<>();
    lines.put("effect " + effect.id(), effect.name());
    List<Cause> causes = new ArrayList<>(base.causes().values());
    causes.removeIf(c -> !c.leadsTo().containsKey(effect.id()));
    causes.sort(Comparator.comparingDouble(c -> -c.leadsTo().get(effect.id())));
    causes.forEach(
        c ->
            lines.put(
                "comes of " + c.id(), chance(c.leadsTo().get(effect.id())) + ": " + c.name()));
    base.effects().values().stream()
        .filter(e -> e.leadsTo().containsKey(effect.id()))
        .forEach(
            e ->
                lines.put(
                    "comes of effect " + e.id(),
                    chance(e.leadsTo().get(effect.id())) + ": " + e.name()));
    effect
        .shows()
        .forEach(
            (check, row) ->
                lines.put("seen by " + check, CardView.row(base.checks().get(check), row)));
    effect
        .leadsTo()
        .forEach(
            (to, chance) ->
                lines.put("makes " + to, chance(chance) + ": " + base.effects().get(to).name()));
    return lines;
  }

  /** The effects that show on a check, with their rows. */
  Map<String, String> on(Check check) {
    Map<String, String> lines = new LinkedHashMap<>();
    base.effects().values().stream()
        .filter(e -> e.shows().containsKey(check.id()))
        .forEach(
            e ->
                lines.put("with effect " + e.id(), CardView.row(check, e.shows().get(check.id()))));
    return lines;
  }

  /**
   * The effects from which a cause's row on a check comes; empty if it does not come from effects.
   */
  String origin(Cause cause, Check check) {
    List<Effect> behind = base.effectRows().behind(cause, check);
    if (!behind.isEmpty()) {
      return "; by " + behind.stream().map(Effect::id).collect(Collectors.joining(", "));
    }
    return cause.leadsTo().isEmpty() ? "" : "; its own mark";
  }

  /** A chance as a figure and as the nearest word. */
  private static String chance(double chance) {
    return CardView.figure(chance) + ", " + LikelihoodWords.nearest(chance);
  }
}
