package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.RuleBase;

/**
 * The effects that somebody who writes a card picks from a list, by number or id, and what follows
 * from them. The numbers run through all effects by area.
 */
final class EffectChoice {
  static final String LEADS_TO = "leads-to";

  /** An effect that is named alone is there nearly as long as the cause is. */
  private static final String ALONE = "nearly always";

  private static final int MOST_COMPLAINTS = 4;
  private static final int MOST_CHECKS = 5;
  private static final int MOST_SHARING = 6;

  private final RuleBase base;
  private final List<Effect> effects;

  EffectChoice(RuleBase base) {
    this.base = base;
    this.effects =
        base.effects().values().stream()
            .sorted(Comparator.comparing(Effect::area).thenComparing(Effect::id))
            .toList();
  }

  /** Whether there is anything to pick from. */
  boolean any() {
    return !effects.isEmpty();
  }

  /**
   * @param area whose effects are laid out at once; the others are looked up
   */
  Question question(String ask, String area) {
    return Question.of(LEADS_TO, ask + " Such as: 3 always, 5 sometimes", this::complaint)
        .after(laidOut(area))
        .naming(Vocabulary.both(known(), Vocabulary.chances()))
        .usual("");
  }

  private List<Known> known() {
    return IntStream.range(0, effects.size())
        .mapToObj(
            i -> {
              Effect effect = effects.get(i);
              return new Known(effect.id(), effect.area() + " " + (i + 1) + ", " + effect.name());
            })
        .toList();
  }

  private List<String> laidOut(String area) {
    List<String> lines = new ArrayList<>();
    Map<String, List<Integer>> byArea = new LinkedHashMap<>();
    for (int i = 0; i < effects.size(); i++) {
      byArea.computeIfAbsent(effects.get(i).area(), a -> new ArrayList<>()).add(i);
    }
    List<Integer> near = Optional.ofNullable(byArea.remove(area)).orElse(List.of());
    near.forEach(
        i -> lines.add((i + 1) + " " + effects.get(i).id() + ": " + effects.get(i).name()));
    String others =
        byArea.entrySet().stream()
            .map(e -> (e.getKey().isEmpty() ? "no area" : e.getKey()) + numbers(e.getValue()))
            .collect(Collectors.joining(", "));
    if (!others.isEmpty()) {
      lines.add(
          (near.isEmpty() ? "Effects by area: " : "Other areas: ")
              + others
              + ". By number or id; ? lists all, ? AREA or ? WORD some.");
    }
    return lines;
  }

  private static String numbers(List<Integer> places) {
    int first = places.get(0) + 1;
    int last = places.get(places.size() - 1) + 1;
    return " " + first + (last > first ? " to " + last : "");
  }

  private Optional<String> complaint(String answer) {
    for (String name : RowAnswer.parts(answer, ALONE).keySet()) {
      if (name.matches("\\d+") && !base.effects().containsKey(named(name))) {
        return Optional.of("There is no effect " + name + ": there are " + effects.size() + ".");
      }
    }
    return Asked.chances(ids(answer), "effect", base.effects().keySet());
  }

  private String named(String word) {
    int number = word.matches("\\d{1,4}") ? Integer.parseInt(word) : 0;
    return number >= 1 && number <= effects.size() ? effects.get(number - 1).id() : word;
  }

  /** The same answer with ids for numbers and a chance behind each. */
  private String ids(String answer) {
    return RowAnswer.parts(answer, ALONE).entrySet().stream()
        .map(part -> named(part.getKey()) + " " + part.getValue())
        .collect(Collectors.joining(", "));
  }

  /** Effects with their chances, as far as they were answered; nothing if none was picked. */
  Map<String, Double> picked(Map<String, String> answers) {
    Map<String, Double> picked = new LinkedHashMap<>();
    RowAnswer.parts(ids(answers.getOrDefault(LEADS_TO, "")))
        .forEach((id, word) -> RowAnswer.chance(word).ifPresent(c -> picked.put(id, c)));
    picked.keySet().retainAll(base.effects().keySet());
    return picked;
  }

  /** The field of the card; nothing if none was picked. */
  String yaml(Map<String, String> answers) {
    String answer = ids(answers.getOrDefault(LEADS_TO, ""));
    return answer.isEmpty() ? "" : LEADS_TO + ": " + RowAnswer.yaml(answer, List.of()) + "\n";
  }

  /** What the picked effects show, by check. */
  Map<String, double[]> rows(Map<String, String> answers) {
    return base.effectRows().rows(picked(answers), base.checks());
  }

  /** The most telling of what follows: what people say, and what checks show. */
  List<String> implied(Map<String, String> answers) {
    Map<String, double[]> rows = rows(answers);
    List<String> lines = new ArrayList<>();
    String said = told(rows, c -> c.kind() == Check.Kind.COMPLAINT, MOST_COMPLAINTS);
    String seen = told(rows, c -> c.kind() == Check.Kind.CHECK && !c.danger(), MOST_CHECKS);
    lines.add(said.isEmpty() ? "" : "So people say: " + said + ".");
    lines.add(seen.isEmpty() ? "" : "So checks show: " + seen + ".");
    lines.removeIf(String::isEmpty);
    return lines;
  }

  private String told(Map<String, double[]> rows, Predicate<Check> kind, int most) {
    return rows.keySet().stream()
        .map(base.checks()::get)
        .filter(kind)
        .sorted(
            Comparator.comparingDouble(c -> -Neighbours.distance(rows.get(c.id()), c.otherwise())))
        .limit(most)
        .map(c -> told(c, rows.get(c.id())))
        .collect(Collectors.joining("; "));
  }

  /** The outcome that is most above what a sound gate shows. */
  private static String told(Check check, double[] row) {
    int most =
        IntStream.range(0, row.length)
            .boxed()
            .max(Comparator.comparingDouble(o -> row[o] - check.otherwise()[o]))
            .orElseThrow();
    String outcome = check.kind() == Check.Kind.COMPLAINT ? "" : " " + outcome(check, most);
    return String.format(
        Locale.ROOT,
        "%s%s %.2f (sound gate %.2f)",
        check.id(),
        outcome,
        row[most],
        check.otherwise()[most]);
  }

  private static String outcome(Check check, int outcome) {
    return check.outcomes().get(outcome).id();
  }

  /**
   * Complaints that come of them more often than not, the likeliest first.
   *
   * @param atLeastOne the likeliest of all where none comes so often
   */
  List<String> complaints(Map<String, String> answers, boolean atLeastOne) {
    Map<String, Double> said = new LinkedHashMap<>();
    rows(answers)
        .forEach(
            (id, row) -> {
              Check check = base.checks().get(id);
              if (check.kind() == Check.Kind.COMPLAINT && !check.danger()) {
                said.put(id, row[check.indexOf(Check.SAID)]);
              }
            });
    List<String> ids =
        said.keySet().stream()
            .sorted(Comparator.comparingDouble((String id) -> -said.get(id)))
            .toList();
    long often = said.values().stream().filter(chance -> chance >= 0.5).count();
    return ids.stream().limit(Math.max(often, atLeastOne ? 1 : 0)).toList();
  }

  /** Checks of which another outcome than the ordinary one is likeliest, each with that. */
  Map<String, String> telling(Map<String, String> answers) {
    Map<String, String> telling = new LinkedHashMap<>();
    rows(answers)
        .forEach(
            (id, row) -> {
              Check check = base.checks().get(id);
              int most =
                  IntStream.range(0, row.length)
                      .boxed()
                      .max(Comparator.comparingDouble(o -> row[o]))
                      .orElseThrow();
              if (check.kind() == Check.Kind.CHECK && !check.danger() && most > 0) {
                telling.put(id, outcome(check, most));
              }
            });
    return telling;
  }

  /** The causes that have most of them in common, in a line; nothing if none has any. */
  List<String> sharing(Map<String, String> answers) {
    Map<String, Double> picked = picked(answers);
    List<String> ids =
        base.causes().values().stream()
            .filter(c -> shared(c, picked) > 0)
            .sorted(Comparator.comparingDouble((Cause c) -> -shared(c, picked)))
            .limit(MOST_SHARING)
            .map(Cause::id)
            .toList();
    return ids.isEmpty()
        ? List.of()
        : List.of("The same comes of: " + String.join(", ", ids) + ".");
  }

  private static double shared(Cause cause, Map<String, Double> picked) {
    return picked.entrySet().stream()
        .mapToDouble(e -> Math.min(e.getValue(), cause.leadsTo().getOrDefault(e.getKey(), 0.0)))
        .sum();
  }
}
