package yett.command.call;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.WorksAgain;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.saying.Heard;

/**
 * Takes up what a caller says of the gate where the name is asked for. What may be both, such as
 * "Burns" or "Motor works", is asked about.
 */
record SaidForName(Sitting sitting, PromptRequests wishes) {
  /** Least weight of words that may be more than a name. */
  private static final double MAY_BE = 0.55;

  /** The same of a few words that sound like danger; "the north yard" does, faintly. */
  private static final double MAY_BE_DANGER = 0.5;

  private static final int FEW_WORDS = 5;

  /** First name and surname as they are written, "Ann Fell"; nobody writes a danger so. */
  private static final Pattern NAME =
      Pattern.compile("\\p{Lu}[\\p{L}'\u2019-]+(?: \\p{Lu}[\\p{L}'\u2019-]+){1,2}");

  /** From here on, several words are no name. */
  private static final double SURE = 0.8;

  /**
   * What is left of a line.
   *
   * @param details the name, the number and the place
   * @param danger whether the words told of one, which comes first now
   * @param toHear words that are taken up as at any other prompt
   */
  record Rest(String details, boolean danger, Optional<String> toHear) {}

  Rest take(String line) {
    WhoLine who = WhoLine.of(line, this::isSaid);
    String words = String.join(", ", who.said());
    if (words.isEmpty()) {
      return new Rest(line, false, Optional.empty());
    }
    if (wishes.volunteered().hearDanger(words)) {
      sitting.record(new Event.Said(words));
      return new Rest(who.details(), true, Optional.empty());
    }
    if (!isAboutGate(who.said(), words)) {
      return new Rest(line, false, Optional.empty());
    }
    if (isAgain(words) || !(sitting.moment().step() instanceof Step.AskSite)) {
      return new Rest(who.details(), false, Optional.of(words));
    }
    sitting.record(new Event.Said(words)); // the complaints, which come next, are found by it
    sitting.say("Kept as the caller's words: " + Words.quoted(words) + ".");
    return new Rest(who.details(), false, Optional.empty());
  }

  private boolean isSaid(String words) {
    if (NAME.matcher(words.strip()).matches()) {
      return false;
    }
    boolean danger =
        heard(words).dangers().stream().anyMatch(d -> !isFew(words) || d.weight() >= MAY_BE_DANGER);
    return danger || finding(words) >= MAY_BE || isAgain(words);
  }

  /** Words that only sounded like danger are a name if they are few, "Burns". */
  private boolean isAboutGate(List<String> said, String words) {
    double most = said.stream().mapToDouble(this::finding).max().orElse(0);
    if (isAgain(words) || most >= SURE && words.contains(" ")) {
      return true;
    }
    boolean name = most < MAY_BE && isFew(words);
    return !name
        && sitting.yes(
            "Is " + Words.quoted(words) + " said of the gate? yes; no if it is a name or a place");
  }

  private static boolean isFew(String words) {
    return words.split("\\s+").length <= FEW_WORDS;
  }

  private boolean isAgain(String words) {
    return new WorksAgain(sitting).tellsOfIt(words);
  }

  private Heard heard(String words) {
    return sitting.ears().tellings().hear(words);
  }

  private double finding(String words) {
    return heard(words).findings().stream().mapToDouble(Heard.Found::weight).max().orElse(0);
  }
}
