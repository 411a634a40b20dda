package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.replay.AsTold;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;
import yett.rules.Conclusion;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.Senseless;
import yett.rules.Judgement;

/**
 * Takes out of written cases what cannot be together at one gate. Each look is put into a case as
 * it is likeliest by itself; so one may say that the leaf does not move and another how fast it
 * moves. The rules know which looks then make no sense and which answers contradict each other.
 * What the author named stays.
 */
final class Coherent {
  private final RuleBase base;
  private final Interview interview;
  private final Set<String> named;

  private Coherent(Interview interview, Set<String> named) {
    this.base = interview.expertise().base();
    this.interview = interview;
    this.named = named;
  }

  /**
   * @param expertise with the new cards
   * @param text of a case file
   * @param named by case, the checks whose answers the author named
   */
  static String of(Expertise expertise, String text, Map<String, Set<String>> named) {
    List<String> cases = new ArrayList<>();
    try (Interview interview = expertise.newInterviewWithoutConflicts()) {
      for (String one : text.split("(?m)^---\n")) {
        cases.add(new Coherent(interview, named(one, named)).cleared(one));
      }
    }
    return String.join("---\n", cases);
  }

  private static Set<String> named(String text, Map<String, Set<String>> named) {
    return named.entrySet().stream()
        .filter(e -> text.contains("case: " + e.getKey() + "\n"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(Set.of());
  }

  private String cleared(String text) {
    String left = text;
    while (true) {
      Optional<String> check = inTheWay(left);
      if (check.isEmpty()) {
        return left;
      }
      left = without(left, check.get());
    }
  }

  private static String without(String text, String check) {
    return text.replaceFirst("(?m)^  " + check + ": .*\n", "")
        .replaceFirst("(?m)^answers:\n(?!  )", "");
  }

  /** An answer that does not fit the others and that the author did not name. */
  private Optional<String> inTheWay(String text) {
    List<RecordedCase> read = CaseFile.read("new.case.yaml", text, base).cases();
    if (read.size() != 1) {
      return Optional.empty(); // its problems are told elsewhere
    }
    RecordedCase recorded = read.get(0);
    List<Entry> entries = AsTold.entries(recorded, base);
    Judgement judgement = interview.judgement(entries);
    Set<String> senseless = senseless(judgement, recorded);
    List<String> offered = offered(recorded, entries);
    return offered.stream()
        .filter(senseless::contains)
        .findFirst()
        .or(() -> contradicting(judgement, entries, offered))
        .or(() -> makingSenseless(senseless, text, offered));
  }

  private Set<String> senseless(Judgement judgement, RecordedCase recorded) {
    return judgement.conclusions().stream()
        .filter(Senseless.class::isInstance)
        .map(Conclusion::about)
        .map(about -> about.split(" ")[0])
        .filter(recorded.answers()::containsKey)
        .collect(Collectors.toSet());
  }

  /** The answers that the author did not name, the least likely first. */
  private List<String> offered(RecordedCase recorded, List<Entry> entries) {
    Map<String, Double> chances = new HashMap<>();
    for (Entry entry : entries) {
      if (entry.event() instanceof Event.Answered answered && !named.contains(answered.check())) {
        chances.put(answered.check(), chance(recorded, answered));
      }
    }
    return chances.keySet().stream()
        .sorted(Comparator.<String>comparingDouble(chances::get).thenComparing(c -> c))
        .toList();
  }

  private double chance(RecordedCase recorded, Event.Answered answered) {
    Check check = base.checks().get(answered.check());
    return recorded.truth().orElse(List.of()).stream()
        .filter(check.likelihood()::containsKey)
        .mapToDouble(
            cause ->
                answered
                    .answer()
                    .choice()
                    .map(o -> check.likelihood().get(cause)[check.indexOf(o)])
                    .orElse(1.0))
        .max()
        .orElse(0);
  }

  private static Optional<String> contradicting(
      Judgement judgement, List<Entry> entries, List<String> offered) {
    Set<String> checks = new HashSet<>();
    for (Conclusion conclusion : judgement.conclusions()) {
      if (conclusion instanceof Contradiction both) {
        entries.stream()
            .filter(e -> e.number() == both.first() || e.number() == both.second())
            .map(Entry::event)
            .filter(Event.Answered.class::isInstance)
            .forEach(e -> checks.add(((Event.Answered) e).check()));
      }
    }
    return offered.stream().filter(checks::contains).findFirst();
  }

  /** An answer because of which one that the author named would make no sense. */
  private Optional<String> makingSenseless(
      Set<String> senseless, String text, List<String> offered) {
    if (senseless.isEmpty()) {
      return Optional.empty();
    }
    return offered.stream()
        .filter(
            check -> {
              RecordedCase less =
                  CaseFile.read("new.case.yaml", without(text, check), base).cases().get(0);
              Judgement judgement = interview.judgement(AsTold.entries(less, base));
              return senseless(judgement, less).size() < senseless.size();
            })
        .findFirst();
  }
}
