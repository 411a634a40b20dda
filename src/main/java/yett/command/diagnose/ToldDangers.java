package yett.command.diagnose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.command.common.Prompt;
import yett.console.Block;
import yett.interview.Event;
import yett.knowledge.Check;
import yett.saying.Heard;
import yett.saying.Thing;
import yett.wording.Wording;

/** Asks about dangers that somebody mentions in passing, before anything else. */
record ToldDangers(Sitting sitting, ToldAndConfirmed takenUp) {
  /**
   * Dangers that the words may mean, without those already reported and those that make no sense
   * here.
   */
  List<Thing> among(Heard heard) {
    return open(heard.dangerThings());
  }

  /**
   * Asks about the dangers of which complaints tell. What the caller's own words meant was asked
   * about by its name when they were said.
   */
  boolean askOf(Collection<String> complaints) {
    Map<String, Map<String, String>> tellsOf =
        sitting.base().telephone().spoken().tellsOf().getOrDefault("complaint", Map.of());
    Set<Thing> asked = new HashSet<>();
    sitting
        .moment()
        .state()
        .told()
        .said()
        .forEach(said -> asked.addAll(sitting.ears().tellings().hear(said).dangerThings()));
    List<Thing> told = new ArrayList<>();
    complaints.forEach(
        c ->
            tellsOf
                .getOrDefault(c, Map.of())
                .forEach((k, o) -> told.add(new Thing(Thing.Kind.DANGER, k, o))));
    List<Thing> dangers = open(told.stream().filter(t -> !asked.contains(t)).distinct().toList());
    return !dangers.isEmpty() && ask(dangers, "", said -> {});
  }

  private List<Thing> open(List<Thing> dangers) {
    return dangers.stream()
        .filter(t -> !sitting.moment().judgement().unavailable().contains(t.card()))
        .filter(t -> !isReported(t))
        .toList();
  }

  /**
   * Whether this very danger is already reported and in force; then it is not asked about again.
   */
  private boolean isReported(Thing danger) {
    return sitting
        .moment()
        .state()
        .latest(danger.card())
        .filter(a -> a.answer().is(danger.outcome()))
        .filter(
            a ->
                sitting.moment().judgement().stops().stream().anyMatch(s -> s.event() == a.event()))
        .isPresent();
  }

  /**
   * Asks whether one of them is so. Returns true if one is, or if it is not clear and the whole
   * list will be asked again.
   *
   * @param keep stores the words if they do not make it clear
   */
  boolean ask(List<Thing> dangers, String words, Consumer<String> keep) {
    List<Check.Outcome> outcomes =
        dangers.stream()
            .map(
                t -> {
                  Check check = sitting.base().checks().get(t.card());
                  return check.outcomes().get(check.indexOf(t.outcome()));
                })
            .toList();
    sitting.show(
        Block.paragraph("That may mean danger:"),
        Block.numbered(outcomes.stream().map(o -> Wording.capital(o.text())).toList()));
    Optional<Set<Integer>> so =
        sitting.until(
            dangers.size() == 1
                ? "Is this true? yes, or 0 if not"
                : "Which of these are true? Numbers, or 0 if none",
            line -> answer(line, dangers.size()));
    if (so.isEmpty()) {
      keep.accept(words);
      sitting.record(new Event.DangersAgain()); // not clear: the whole list comes again
      return true;
    }
    if (!so.get().isEmpty()) {
      keep.accept(words);
      Set<String> taken = new HashSet<>(); // of two forms of one danger, the graver
      sitting.record(
          IntStream.range(0, dangers.size())
              .filter(i -> so.get().contains(i + 1))
              .mapToObj(dangers::get)
              .sorted(Comparator.comparingInt(this::form))
              .filter(d -> taken.add(d.card()))
              .map(takenUp::chosen)
              .toArray(Event[]::new));
    }
    return !so.get().isEmpty();
  }

  private int form(Thing danger) {
    return sitting.base().checks().get(danger.card()).indexOf(danger.outcome());
  }

  /** Which are true, none or some; the inner value is empty if the line does not say. */
  private static Prompt.Reading<Optional<Set<Integer>>> answer(String line, int most) {
    if (most == 1 && line.equalsIgnoreCase("yes")) {
      return Prompt.Reading.of(Optional.of(Set.of(1)));
    }
    if (line.equals("0") || line.equalsIgnoreCase("no")) {
      return Prompt.Reading.of(Optional.of(Set.of()));
    }
    if (line.isEmpty() || Volunteered.isPrompted(line)) {
      return Prompt.Reading.again("Look first; then say whether it is true.");
    }
    List<Optional<Integer>> numbers =
        Arrays.stream(line.split("[\\s,;]+")).map(n -> Prompt.number(n, most)).toList();
    return Prompt.Reading.of(
        numbers.stream().allMatch(Optional::isPresent)
            ? Optional.of(numbers.stream().map(Optional::orElseThrow).collect(Collectors.toSet()))
            : Optional.empty());
  }
}
