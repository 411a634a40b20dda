package yett.command.diagnose.danger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.saying.DangerSayings.Danger;
import yett.saying.Thing;
import yett.wording.Wording;

/**
 * Finds what a case already knows of dangers before they are asked about: what was said, and what
 * was reported.
 */
record KnownDangers(Sitting sitting) {
  private static final int MOST_TOLD = 4;

  /**
   * Dangers that words may mean.
   *
   * @param words all of them, in one line
   */
  record Told(List<Danger> dangers, String words) {}

  /** "Over, the fire brigade says so" is over; "over there it still smokes" is not. */
  private static final Pattern OVER =
      Pattern.compile("(?i)(?<word>over|mistake)(?: now)?(?:[.!]|[,;:.!]\\s*(?<more>.+))?");

  /**
   * Dangers that the words may mean that were said since these dangers were last asked about; all
   * words if they never were.
   */
  Told told(Step.AskDangers step, List<Danger> dangers) {
    CaseState state = sitting.moment().state();
    long asked =
        step.dangers().stream()
            .flatMap(c -> state.latest(c.id()).stream())
            .mapToLong(CaseState.Answered::event)
            .max()
            .orElse(0);
    List<String> all =
        Entry.valid(sitting.moment().entries()).stream()
            .filter(e -> e.number() > asked && e.event() instanceof Event.Said)
            .map(e -> ((Event.Said) e.event()).words())
            .toList();
    Set<Thing> meant = sitting.ears().tellings().dangers(all);
    return new Told(
        dangers.stream().filter(d -> meant.contains(d.thing())).limit(MOST_TOLD).toList(),
        String.join(", ", all));
  }

  /**
   * Dangers that were reported in this case, are now answered with "none", and have not been
   * repaired since. A gate that does not move at present may still move by itself. The person has
   * to type a word to say that the danger is over or never was; one key is not enough. Whether
   * their word ends it is decided by the rules. What never was is corrected, whoever says so.
   */
  Kept kept(Step.AskDangers step, Map<String, Answer> answers) {
    CaseState state = sitting.moment().state();
    List<Danger> reported =
        step.dangers().stream()
            .filter(c -> answers.get(c.id()).is(c.outcomes().get(0).id()))
            .flatMap(c -> c.outcomes().stream().skip(1).map(o -> new Danger(c, o)))
            .filter(
                d ->
                    state
                        .answer(d.check().id())
                        .filter(a -> a.answer().is(d.outcome().id()) && stops(a.event()))
                        .isPresent())
            .toList();
    if (reported.isEmpty()) {
      return new Kept(List.of(), List.of(), List.of(), List.of(), false);
    }
    sitting.show(
        Block.paragraph("Reported in this case, and nothing has been repaired since:"),
        Block.numbered(reported.stream().map(d -> Wording.capital(d.outcome().text())).toList()));
    return untilClear(reported);
  }

  /**
   * Reported dangers after the list was answered.
   *
   * @param stand those that still apply
   * @param over those that are said to be over
   * @param mistaken those that never were: they were picked by mistake
   * @param words that were typed instead of, or behind, the word that answers it
   * @param others whether these words tell of a danger that was not reported
   */
  record Kept(
      List<Danger> stand,
      List<Danger> over,
      List<Danger> mistaken,
      List<String> words,
      boolean others) {}

  /** Only Enter and the word answer it; other words are kept, and it is asked again. */
  private Kept untilClear(List<Danger> reported) {
    List<String> words = new ArrayList<>();
    while (true) {
      String line =
          sitting
              .line(
                  "Enter if it still applies; over if it is over for good; mistake if it never was")
              .strip();
      Matcher over = OVER.matcher(line);
      if (over.matches()) {
        Optional.ofNullable(over.group("more")).ifPresent(words::add);
        boolean never = over.group("word").equalsIgnoreCase("mistake");
        return new Kept(
            List.of(),
            never ? List.of() : reported,
            never ? reported : List.of(),
            words,
            tellOfOthers(words, reported));
      }
      if (line.isEmpty()) {
        return new Kept(reported, List.of(), List.of(), words, tellOfOthers(words, reported));
      }
      words.add(line);
      sitting.say(
          "Kept: "
              + Words.quoted(line)
              + ". That does not say whether it is over: type over if it is, mistake if it never"
              + " was, or press Enter.");
    }
  }

  private boolean tellOfOthers(List<String> words, List<Danger> reported) {
    return sitting.ears().tellings().dangers(words).stream()
        .anyMatch(t -> reported.stream().noneMatch(d -> d.thing().equals(t)));
  }

  /**
   * Whether the answer to this event stops the work now. After an accident, where the scene is
   * kept, another question decides that.
   */
  private boolean stops(long event) {
    return sitting.moment().judgement().stops().stream()
        .filter(s -> s.event() == event)
        .anyMatch(s -> !sitting.base().stops().get(s.stop()).inquiry());
  }
}
