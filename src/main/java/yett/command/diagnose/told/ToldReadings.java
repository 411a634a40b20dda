package yett.command.diagnose.told;

import java.util.List;
import java.util.Locale;
import yett.command.diagnose.answer.SpokenReading;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.step.Step;
import yett.knowledge.Check;

/** Takes up readings that a person tells without being asked. */
record ToldReadings(Sitting sitting, ToldAndConfirmed takenUp) {
  /** How many checks are offered for a reading, so that they can be seen at a glance. */
  private static final int MOST = 5;

  /** Takes up a reading; of several none is picked out. Returns whether the words were one. */
  boolean taken(String words, Volunteered told) {
    List<SpokenReading> all = SpokenReading.all(words, sitting.base());
    List<String> several =
        all.stream().filter(SpokenReading::hasUnit).map(SpokenReading::typed).toList();
    if (several.size() > 1 && !told.isDanger(words)) {
      told.keep(words);
      sitting.say(
          "These are several readings: "
              + String.join(", ", several)
              + ". They are kept as a note. Tell one at a time, with what was measured.");
      return true;
    }
    return SpokenReading.best(all).filter(r -> !isSlip(r)).filter(this::read).isPresent();
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
   * Asks which check a reading belongs to; returns whether it was one of those that can have it.
   */
  private boolean read(SpokenReading reading) {
    List<String> checks = reading.checks().stream().map(Check::id).toList();
    List<String> meant =
        reading.words().isEmpty()
            ? checks
            : sitting.ears().tellings().hearReading(reading.words(), checks);
    if (meant.isEmpty() || sitting.moment().step() instanceof Step.MakeSafe) {
      return false;
    }
    List<String> open = takenUp.open(meant);
    if (open.size() > MOST) {
      String name = sitting.base().checks().get(open.get(0)).name().toLowerCase(Locale.ROOT);
      sitting.say("Say what was measured as well, such as: " + name + " " + reading.typed() + ".");
      return true;
    }
    new Choices(sitting)
        .confirm(open, id -> reading.shown(sitting.base().checks().get(id)))
        .map(sitting.base().checks()::get)
        .ifPresent(c -> reading.answer(c, sitting).ifPresent(a -> takenUp.reading(c.id(), a)));
    return true;
  }
}
