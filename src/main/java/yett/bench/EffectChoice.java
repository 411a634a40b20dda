package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.knowledge.Effect;
import yett.knowledge.RuleBase;

/**
 * Lets the author of a card choose effects from a list, by number or id, and works out what follows
 * from them. The effects of all areas are numbered through.
 */
final class EffectChoice {
  static final String LEADS_TO = "leads-to";

  /** The chance of an effect that is named without one. */
  private static final String ALONE = "nearly always";

  private final RuleBase base;
  private final List<Effect> effects;

  EffectChoice(RuleBase base) {
    this.base = base;
    this.effects =
        base.effects().values().stream()
            .sorted(Comparator.comparing(Effect::area).thenComparing(Effect::id))
            .toList();
  }

  /** Whether there are effects to choose from. */
  boolean any() {
    return !effects.isEmpty();
  }

  /**
   * @param area whose effects are listed at once; the others are shown on request
   */
  Question question(String ask, String area) {
    return Question.of(LEADS_TO, ask + " Such as: 3 always, 5 sometimes", this::complaint)
        .after(laidOut(area))
        .naming(Vocabulary.both(known(), Vocabulary.chances()))
        .usual("");
  }

  private List<Candidate> known() {
    return IntStream.range(0, effects.size())
        .mapToObj(
            i -> {
              Effect effect = effects.get(i);
              return new Candidate(
                  effect.id(), effect.area() + " " + (i + 1) + ", " + effect.name());
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
    return CardQuestions.chances(ids(answer), "effect", base.effects().keySet());
  }

  private String named(String word) {
    int number = word.matches("\\d{1,4}") ? Integer.parseInt(word) : 0;
    return number >= 1 && number <= effects.size() ? effects.get(number - 1).id() : word;
  }

  /** The answer with ids instead of numbers and a chance after each. */
  private String ids(String answer) {
    return RowAnswer.parts(answer, ALONE).entrySet().stream()
        .map(part -> named(part.getKey()) + " " + part.getValue())
        .collect(Collectors.joining(", "));
  }

  /** The chosen effects with their chances; empty if none was chosen. */
  Map<String, Double> picked(Map<String, String> answers) {
    Map<String, Double> picked = new LinkedHashMap<>();
    RowAnswer.parts(ids(answers.getOrDefault(LEADS_TO, "")))
        .forEach((id, word) -> RowAnswer.chance(word).ifPresent(c -> picked.put(id, c)));
    picked.keySet().retainAll(base.effects().keySet());
    return picked;
  }

  /** The field of the card; empty if no effect was chosen. */
  String yaml(Map<String, String> answers) {
    String answer = ids(answers.getOrDefault(LEADS_TO, ""));
    return answer.isEmpty() ? "" : LEADS_TO + ": " + RowText.of(RowAnswer.parts(answer)) + "\n";
  }

  /** What follows from the chosen effects. */
  SignsByEffects implied(Map<String, String> answers) {
    return new SignsByEffects(base, picked(answers));
  }
}
