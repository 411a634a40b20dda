package yett.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How one run of a case differs from another, in words.
 *
 * @param turn whether it went from right to wrong or back
 * @param outcome whether something different was concluded or done, not only asked or weighed
 * @param slight whether everything was asked, concluded and done as before and only chances differ,
 *     none by {@value #POINTS} or more
 */
public record Difference(
    String file, String name, Turn turn, boolean outcome, boolean slight, List<String> words) {
  /** Whether the result was as the case file says, before and now. */
  public enum Turn {
    WORSE("right before, wrong now"),
    BETTER("wrong before, right now"),
    NONE("");

    private final String words;

    Turn(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Least difference of a chance that a trainer is shown without asking; considered judgement. */
  static final double POINTS = 0.05;

  /** A smaller difference of chances is not visible to a person. */
  static final double LEAST_SHIFT = 0.01;

  /** In minutes, which are rounded to a tenth. */
  private static final double LEAST_MINUTES = 0.5;

  /** About the least that a person notices (Good). */
  static final double LEAST_DECIBANS = 1;

  private static final int MOST_EVIDENCE = 6;

  /** Empty if nothing changed that a person would notice. */
  static Optional<Difference> between(Account before, Account now) {
    return between(before, now, Additions.UNKNOWN);
  }

  /**
   * The same, with what caused the difference.
   *
   * @param fresh what only the rule base of the later run has
   */
  static Optional<Difference> between(Account before, Account now, Additions fresh) {
    List<String> outcome = new ArrayList<>();
    outcome.addAll(word("ends", before.ended(), now.ended()));
    outcome.addAll(word("stops", list(before.stops()), list(now.stops())));
    outcome.addAll(word("unsafe", list(before.unsafe()), list(now.unsafe())));
    outcome.addAll(first(before, now));
    outcome.addAll(word("repairs", list(before.repairs()), list(now.repairs())));
    List<String> words = new ArrayList<>(outcome);
    words.addAll(NewFirstCause.words(before, now, fresh));
    words.addAll(path(before.path(), now.path()));
    words.addAll(minutes(before.minutes(), now.minutes()));
    Turn turn = turn(before.right(), now.right());
    boolean slight =
        words.isEmpty() && turn == Turn.NONE && mostShift(before.ranking(), now.ranking()) < POINTS;
    words.addAll(shifts(before.ranking(), now.ranking()));
    if (words.isEmpty() && turn == Turn.NONE) {
      return Optional.empty();
    }
    words.addAll(evidence(before, now));
    return Optional.of(
        new Difference(
            now.file(), now.name(), turn, !outcome.isEmpty(), slight, List.copyOf(words)));
  }

  private static List<String> minutes(double before, double now) {
    return Math.abs(before - now) < LEAST_MINUTES
        ? List.of()
        : List.of(String.format(Locale.ROOT, "minutes: was %.1f, is %.1f", before, now));
  }

  private static Turn turn(Optional<Boolean> before, Optional<Boolean> now) {
    boolean was = before.orElse(true);
    boolean is = now.orElse(true);
    return was == is ? Turn.NONE : was ? Turn.WORSE : Turn.BETTER;
  }

  private static String list(List<String> words) {
    return words.isEmpty() ? "none" : String.join(", ", words);
  }

  private static List<String> word(String what, String before, String now) {
    return before.equals(now) ? List.of() : List.of(what + ": was " + before + ", is " + now);
  }

  private static List<String> first(Account before, Account now) {
    if (before.first().equals(now.first())) {
      return List.of();
    }
    return word("first cause", leading(before), leading(now));
  }

  private static String leading(Account account) {
    return account.first().map(c -> c + " " + percent(account.ranking().get(c))).orElse("none");
  }

  /** Where the two paths part, and how much longer the later one is. */
  private static List<String> path(List<String> before, List<String> now) {
    int same = 0;
    while (same < Math.min(before.size(), now.size()) && before.get(same).equals(now.get(same))) {
      same++;
    }
    if (same == before.size() && same == now.size()) {
      return List.of();
    }
    String was = same < before.size() ? before.get(same) : "the end";
    String is = same < now.size() ? now.get(same) : "the end";
    return List.of(
        String.format(
            Locale.ROOT,
            "step %d: was %s, is %s (%d steps before, %d now)",
            same + 1,
            was,
            is,
            before.size(),
            now.size()));
  }

  private static List<String> shifts(Map<String, Double> before, Map<String, Double> now) {
    Set<String> causes = new LinkedHashSet<>(before.keySet());
    causes.addAll(now.keySet());
    String words =
        causes.stream()
            .filter(c -> Math.abs(chance(before, c) - chance(now, c)) >= LEAST_SHIFT)
            .map(c -> c + " " + percent(chance(before, c)) + " to " + percent(chance(now, c)))
            .collect(Collectors.joining(", "));
    return words.isEmpty() ? List.of() : List.of("belief: " + words);
  }

  /** The largest difference in the chance of a cause. */
  static double mostShift(Map<String, Double> before, Map<String, Double> now) {
    Set<String> causes = new LinkedHashSet<>(before.keySet());
    causes.addAll(now.keySet());
    return causes.stream()
        .mapToDouble(c -> Math.abs(chance(before, c) - chance(now, c)))
        .max()
        .orElse(0);
  }

  private static double chance(Map<String, Double> ranking, String cause) {
    return ranking.getOrDefault(cause, 0.0);
  }

  private static String percent(double chance) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * chance);
  }

  private record Moved(String cause, String subject, String words, double before, double now) {
    double by() {
      return Math.abs(now - before);
    }

    String words(Account was, Account is) {
      return String.format(
          Locale.ROOT,
          "evidence for %s: %s, was %s, is %s",
          cause,
          (subject + " " + words).strip(),
          decibans(before, was),
          decibans(now, is));
    }

    private String decibans(double weight, Account account) {
      if (weight == 0) {
        boolean asked = account.path().contains(subject);
        return asked ? "under 0.5 dB" : "not weighed";
      }
      return Weighed.words(weight);
    }
  }

  /** The answers with different weights, the largest difference first. */
  private static List<String> evidence(Account before, Account now) {
    Map<Answer, Map<String, Double>> was = byAnswer(before);
    Map<Answer, Map<String, Double>> is = byAnswer(now);
    Set<Answer> answers = new LinkedHashSet<>(was.keySet());
    answers.addAll(is.keySet());
    Set<String> causes = before.inView();
    causes.retainAll(now.inView());
    List<Moved> moved = new ArrayList<>();
    for (Answer answer : answers) {
      for (String cause : causes) {
        double then = was.getOrDefault(answer, Map.of()).getOrDefault(cause, 0.0);
        double today = is.getOrDefault(answer, Map.of()).getOrDefault(cause, 0.0);
        moved.add(new Moved(cause, answer.subject(), answer.words(), then, today));
      }
    }
    return moved.stream()
        .filter(m -> m.by() >= LEAST_DECIBANS)
        .sorted(Comparator.comparingDouble(m -> -m.by()))
        .limit(MOST_EVIDENCE)
        .map(m -> m.words(before, now))
        .toList();
  }

  private record Answer(String subject, String words) {}

  private static Map<Answer, Map<String, Double>> byAnswer(Account account) {
    Map<Answer, Map<String, Double>> byAnswer = new LinkedHashMap<>();
    for (Weighed weighed : account.evidence()) {
      Answer answer = new Answer(weighed.subject(), weighed.words());
      Map<String, Double> sum = byAnswer.computeIfAbsent(answer, a -> new LinkedHashMap<>());
      weighed.decibans().forEach((cause, weight) -> sum.merge(cause, weight, Double::sum));
    }
    return byAnswer;
  }
}
