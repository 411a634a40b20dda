package yett.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import yett.knowledge.AddOn;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/** Names the cards that a change adds, removes and alters. */
record ChangedCards(RuleBase before, RuleBase now) {
  /** Cards that only the later rule base has. */
  List<String> added() {
    return only(now, before);
  }

  /** Cards that only the earlier rule base has. */
  List<String> gone() {
    return only(before, now);
  }

  /** What add-ons of the later rule base switch off and those of the earlier one do not. */
  List<String> switchedOff() {
    return switchedOff(now, before);
  }

  /** What add-ons of the earlier rule base switched off and those of the later one do not. */
  List<String> switchedOn() {
    return switchedOff(before, now);
  }

  private static List<String> switchedOff(RuleBase here, RuleBase there) {
    List<String> off = new ArrayList<>(off(here));
    off.removeAll(off(there));
    return off;
  }

  private static List<String> off(RuleBase base) {
    return base.addOns().stream().map(AddOn::switchesOff).flatMap(List::stream).toList();
  }

  private static List<String> only(RuleBase here, RuleBase there) {
    List<String> words = new ArrayList<>();
    words.addAll(only("cause", here.causes(), there.causes(), Cause::name));
    words.addAll(only("effect", here.effects(), there.effects(), Effect::name));
    words.addAll(only("check", here.checks(), there.checks(), Check::ask));
    words.addAll(only("repair", here.repairs(), there.repairs(), Repair::name));
    words.addAll(only("history", here.histories(), there.histories(), h -> h.name()));
    words.addAll(only("site question", here.siteQuestions(), there.siteQuestions(), q -> q.name()));
    words.addAll(only("set-up", here.setUps(), there.setUps(), s -> s.name()));
    words.addAll(only("stop", here.stops(), there.stops(), s -> s.name()));
    words.addAll(only("rules", RuleFiles.rules(here), RuleFiles.rules(there), text -> ""));
    words.addAll(only("table", RuleFiles.tables(here), RuleFiles.tables(there), text -> ""));
    return words;
  }

  private static <C> List<String> only(
      String kind, Map<String, C> here, Map<String, C> there, Function<C, String> name) {
    return here.keySet().stream()
        .filter(id -> !there.containsKey(id))
        .map(id -> (kind + " " + id + ": " + name.apply(here.get(id))).replaceFirst(": $", ""))
        .toList();
  }

  /** Cards of both that differ. */
  List<String> altered() {
    List<String> words = new ArrayList<>();
    words.addAll(altered("cause", before.causes(), now.causes(), Cause::name));
    words.addAll(altered("repair", before.repairs(), now.repairs(), Repair::name));
    now.checks().values().stream().map(this::altered).flatMap(Optional::stream).forEach(words::add);
    words.addAll(altered("rules", RuleFiles.rules(before), RuleFiles.rules(now), text -> ""));
    words.addAll(altered("table", RuleFiles.tables(before), RuleFiles.tables(now), text -> ""));
    return words;
  }

  private static <C> List<String> altered(
      String kind, Map<String, C> before, Map<String, C> now, Function<C, String> name) {
    return now.keySet().stream()
        .filter(id -> before.containsKey(id) && !before.get(id).equals(now.get(id)))
        .map(id -> (kind + " " + id + ": " + name.apply(now.get(id))).replaceFirst(": $", ""))
        .toList();
  }

  /**
   * How a check differs. Only rows of causes that both rule bases know are compared, because a new
   * cause has its own line already.
   */
  private Optional<String> altered(Check check) {
    Check was = before.checks().get(check.id());
    if (was == null) {
      return Optional.empty();
    }
    Set<String> both = new TreeSet<>(was.likelihood().keySet());
    both.addAll(check.likelihood().keySet());
    both.removeIf(c -> !before.causes().containsKey(c) || !now.causes().containsKey(c));
    Set<String> rows = new LinkedHashSet<>();
    if (!Arrays.equals(was.otherwise(), check.otherwise())) {
      rows.add("a sound gate");
    }
    both.stream()
        .filter(c -> !Arrays.equals(was.likelihood().get(c), check.likelihood().get(c)))
        .forEach(rows::add);
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of("check " + check.id() + ": rows of " + String.join(", ", rows));
  }
}
