package yett.command.diagnose;

import java.util.List;
import java.util.function.Consumer;
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
    return heard.dangerThings().stream()
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
    int so =
        sitting.until(
            dangers.size() == 1
                ? "Is this true? yes, or 0 if not"
                : "Is any of these true? Its number, or 0 if not",
            line ->
                dangers.size() == 1 && line.equalsIgnoreCase("yes")
                    ? Prompt.Reading.of(1)
                    : line.equals("0") || line.equalsIgnoreCase("no")
                        ? Prompt.Reading.of(0)
                        : Prompt.number(line, dangers.size())
                            .map(Prompt.Reading::of)
                            .orElse(
                                line.isEmpty() || Volunteered.isPrompted(line)
                                    ? Prompt.Reading.again(
                                        "Look first; then say whether it is true.")
                                    : Prompt.Reading.of(-1)));
    if (so > 0) {
      Thing danger = dangers.get(so - 1);
      sitting.record(takenUp.chosen(danger));
    } else if (so < 0) {
      keep.accept(words);
      sitting.record(new Event.DangersAgain()); // not clear: the whole list comes again
    }
    return so != 0;
  }
}
