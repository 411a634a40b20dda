package yett.command.diagnose.work;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.knowledge.Repair;

/**
 * Asks whether a repair was done and, if it could not be done, why. The reason is kept as it was
 * typed, for whoever comes next: a missing part may be on their van.
 */
record DoneOrNot(Sitting sitting, PromptRequests wishes, Questions questions) {
  private static final Pattern CANNOT =
      Pattern.compile(
          "(?:cannot|can't|can not|not possible)(?:[\\s,;:.-]+(.*))?|unknown|later",
          Pattern.CASE_INSENSITIVE);

  /** Words after "cannot" that give no reason. */
  private static final Set<String> NO_REASON = Set.of("tell", "say", "do it", "be done");

  private static final String DONE = "done";

  void ask(Repair repair) {
    Optional<String> line =
        questions.meant(
            "\"done\" when it is done, \"cannot\" if it cannot be done here",
            DoneOrNot::said,
            "Type done, or cannot if the part, the time or the permission is missing.");
    if (line.isEmpty()) {
      return;
    }
    if (line.get().equals(DONE)) {
      sitting.record(new Event.Repaired(repair.id(), true));
    } else {
      refuse(repair, reason(line.get()));
    }
  }

  /** "done", or the whole line of a refusal. */
  private static Optional<String> said(String line) {
    String text = line.strip();
    if (text.matches("(?i)" + DONE + "[.!,]?")) {
      return Optional.of(DONE);
    }
    return CANNOT.matcher(text).matches() ? Optional.of(text) : Optional.empty();
  }

  private static String reason(String refusal) {
    Matcher matcher = CANNOT.matcher(refusal);
    String why = matcher.matches() && matcher.group(1) != null ? matcher.group(1).strip() : "";
    return NO_REASON.contains(why.toLowerCase(Locale.ROOT)) ? "" : why;
  }

  /** Asks for the reason. Whoever leaves instead has refused all the same. */
  private String reasonFor(Repair repair) {
    try {
      return sitting.line("Why not? A few words, or Enter").strip();
    } catch (CaseLeftException e) {
      sitting.record(new Event.Repaired(repair.id(), false));
      throw e;
    }
  }

  private void refuse(Repair repair, String said) {
    String why = said.isEmpty() ? reasonFor(repair) : said;
    Optional<Words.Wish> wish =
        said.isEmpty() ? Words.wish(why).filter(w -> !w.takesWords()) : Optional.empty();
    if (wish.equals(Optional.of(Words.Wish.BACK))) {
      return; // the repair comes again
    }
    sitting.record(new Event.Repaired(repair.id(), false, wish.isPresent() ? "" : why));
    if (wish.isPresent()) {
      wishes.grant(why);
    } else {
      wishes.volunteered().hearDanger(why);
    }
  }
}
