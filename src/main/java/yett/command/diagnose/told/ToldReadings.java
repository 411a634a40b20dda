package yett.command.diagnose.told;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.command.diagnose.answer.SpokenReading;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;

/** Takes up readings that a person tells without being asked. */
record ToldReadings(Sitting sitting, ToldAndConfirmed takenUp) {
  /** How many checks are offered for a reading, so that they can be seen at a glance. */
  private static final int MOST = 5;

  /**
   * Takes up a reading; of several none is picked out. Returns what else the words tell, which may
   * be nothing; empty if they tell no reading.
   */
  Optional<String> taken(String words, Volunteered told) {
    List<SpokenReading> all = SpokenReading.all(words, sitting.base());
    List<String> several =
        all.stream().filter(SpokenReading::hasUnit).map(SpokenReading::typed).toList();
    if (several.size() > 1 && !told.isDanger(words)) {
      told.keep(words);
      sitting.say(
          "These are several readings: "
              + String.join(", ", several)
              + ". They are kept as a note. Tell one at a time, with what was measured.");
      return Optional.of("");
    }
    return SpokenReading.best(all).filter(r -> !isSlip(r)).flatMap(r -> read(words, r));
  }

  /**
   * A bare reading that the question asks for is meant for it, even if nothing can read so much.
   */
  private boolean isSlip(SpokenReading reading) {
    return sitting.moment().step() instanceof Step.Ask ask
        && ask.check().measured()
        && reading.words().isEmpty()
        && reading.checks().stream()
            .map(c -> c.measures().get().quantity())
            .anyMatch(ask.check().measures().get().quantity()::equals);
  }

  /**
   * Asks which check a reading belongs to; returns what else was told, or empty if no check can
   * have it.
   */
  private Optional<String> read(String words, SpokenReading reading) {
    SpokenReading.Context context = reading.in(words);
    List<String> checks = reading.checks().stream().map(Check::id).toList();
    List<String> meant =
        context.named().isEmpty()
            ? checks
            : sitting.ears().tellings().hearReading(context.named(), checks);
    if (meant.isEmpty() || sitting.moment().step() instanceof Step.MakeSafe) {
      return Optional.empty();
    }
    List<String> open = takenUp.open(meant);
    if (open.size() > MOST) {
      String name = sitting.base().checks().get(open.get(0)).name().toLowerCase(Locale.ROOT);
      sitting.say("Say what was measured as well, such as: " + name + " " + reading.typed() + ".");
      return Optional.of("");
    }
    Optional<Check> check =
        new Choices(sitting)
            .confirm(open, id -> reading.shown(sitting.base().checks().get(id)))
            .map(sitting.base().checks()::get);
    check
        .flatMap(c -> reading.answer(c, sitting))
        .ifPresent(a -> takenUp.reading(check.get().id(), a));
    if (check.isEmpty() && sitting.moment().state().role() != Role.CALLER) {
      sitting.record(new Event.Noted(words));
      sitting.say("Your words are kept as a note.");
    }
    return Optional.of(context.rest());
  }
}
