package yett.command.diagnose.told;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Spoken;
import yett.saying.DangerSayings.Danger;
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
    List<Thing> told = toldBy(complaints);
    if (told.isEmpty()) {
      return false; // the usual case, and what was said need not be heard again
    }
    Set<Thing> asked = sitting.ears().tellings().dangers(sitting.moment().state().told().said());
    List<Thing> dangers = told.stream().filter(t -> !asked.contains(t)).toList();
    return !dangers.isEmpty() && ask(dangers, "", said -> {});
  }

  /** The same of complaints that came after a repair: what was denied before may be so now. */
  boolean askAnewOf(Collection<String> complaints) {
    List<Thing> told = toldBy(complaints);
    return !told.isEmpty() && ask(told, "", said -> {});
  }

  private List<Thing> toldBy(Collection<String> complaints) {
    Spoken spoken = sitting.base().telephone().spoken();
    return open(
        complaints.stream()
            .flatMap(c -> spoken.dangers("complaint", c).entrySet().stream())
            .map(d -> new Thing(Thing.Kind.DANGER, d.getKey(), d.getValue()))
            .distinct()
            .toList());
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
    List<Danger> named = dangers.stream().map(this::danger).toList();
    sitting.show(
        Block.paragraph("That may mean danger:"),
        Block.numbered(named.stream().map(d -> Wording.capital(d.outcome().text())).toList()));
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
      List<Danger> picked = so.get().stream().sorted().map(n -> named.get(n - 1)).toList();
      sitting.record(
          GraverForm.of(picked).stream().map(d -> takenUp.chosen(d.thing())).toArray(Event[]::new));
    }
    return !so.get().isEmpty();
  }

  private Danger danger(Thing thing) {
    Check check = sitting.base().checks().get(thing.card());
    return new Danger(check, check.outcomes().get(check.indexOf(thing.outcome())));
  }

  /** Which are true, none or some; the inner value is empty if the line does not say. */
  private static Prompt.Reading<Optional<Set<Integer>>> answer(String line, int most) {
    if (most == 1 && line.equalsIgnoreCase("yes")) {
      return Prompt.Reading.of(Optional.of(Set.of(1)));
    }
    if (line.equals("0") || line.equalsIgnoreCase("no")) {
      return Prompt.Reading.of(Optional.of(Set.of()));
    }
    if (line.isEmpty() || Words.isPrompted(line)) {
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
