package yett.command.call;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.moment.Moment;
import yett.interview.state.CallLog;
import yett.interview.step.Step;

/**
 * Waits until the caller has done what a danger asks for. The desk types what it did meanwhile, too
 * ("ambulance called 19:42", "told them to stay back"): that is kept as its own, and no danger is
 * heard in it, only in what else the line says.
 */
record StepsDone(Sitting sitting, PromptRequests wishes) {
  private static final Pattern DONE =
      Pattern.compile(
          "(?i)(?:(?:yes|ok|okay|all|it['’]?s|that['’]?s|they['’]?ve|they have)[ ,]+)*done(?: now)?"
              + "(?:[.,;:! ]+(?<more>(?!nothing|none|no).*))?");

  /** What takes a "done" back: the steps hold only when all of them are done. */
  private static final Pattern PARTLY =
      Pattern.compile(
          "(?i)\\b(?:but|except|only|almost|nearly|half|part(?:ly)?|cannot|can['’]?t|couldn['’]?t"
              + "|could not|unable|first|second|third|not (?:all|yet|everything|the))\\b");

  /** "Fire" alone is none: "the fire is coming closer" is what the caller sees. */
  private static final String HELP =
      "\\b(?:ambulances?|fire (?:service|brigade|engine|department|crew)s?|fire ?fighters?|firemen"
          + "|police|paramedics?|emergency (?:services?|number)|brigade|999|112|911"
          + "|network operator|electricity company)\\b";

  private static final Pattern HELP_ALONE =
      Pattern.compile("(?i)(?:the |an )?" + HELP + "(?: too| as well)?");

  private static final Pattern HELP_CALLED =
      Pattern.compile(
          "(?i)\\b(?:called|rang|rung|phoned|dialled|alerted|informed)\\b.*"
              + HELP
              + "|"
              + HELP
              + ".*(?:\\b(?:called|rung|phoned|dialled|alerted|informed|coming|on (?:its|their|the)"
              + " way|arrived|is there|are there|is here|are here)\\b|\\d{1,2}[:.]\\d\\d)");

  private static final Pattern NOT_YET =
      Pattern.compile("(?i)\\b(?:not|nobody|no one|never|should|n['’]?t)\\b|n['’]t\\b");

  private static final Pattern BY_DESK =
      Pattern.compile(
          "(?i)(?:(?:i|we)(?:['’]?ve| have)? )?(?:told(?! me\\b)|asked|read|warned|advised|informed|sent)\\b.*");

  /** Where something else begins; a time such as 19:42 stays whole. */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;!]+\\s*|[:.](?!\\d)\\s*|\\s+(?:and|but|while|because)\\s+(?!not to )");

  void ask(Step.MakeSafe step) {
    while (true) {
      Moment before = sitting.moment();
      String line =
          sitting.line("\"done\" when it is done; \"correct\" if the answer was wrong").strip();
      Matcher done = DONE.matcher(line);
      if (done.matches() && !PARTLY.matcher(line).find()) {
        String more = done.group("more") == null ? "" : done.group("more").strip();
        keepDeed(more);
        sitting.record(step.done());
        wishes.volunteered().hearDanger(besides(more));
        return;
      }
      if (isDeed(line)) {
        keepDeed(line);
        sitting.say("Kept: " + line + ".");
        wishes.volunteered().hearDanger(besides(line));
      } else if (!wishes.grantOrHear(line)) {
        sitting.say("People first. Type done when these steps are done.");
      }
      if (isOtherStep(before)) {
        return;
      }
    }
  }

  /** Whether something else comes first now, such as another danger. */
  private boolean isOtherStep(Moment before) {
    return !sitting.moment().step().equals(before.step());
  }

  /** What a line says besides the desk's own deeds. */
  private static String besides(String line) {
    return NEXT.splitAsStream(line)
        .filter(part -> !isDeed(part) && !HELP_ALONE.matcher(part).matches())
        .collect(Collectors.joining(", "));
  }

  /** Whether a line says of some helpers that they were called or come, whatever else it says. */
  static boolean saysWhoCame(String line) {
    return HELP_CALLED.matcher(line).find();
  }

  private static boolean isHelp(String line) {
    return HELP_CALLED.matcher(line).find() && !NOT_YET.matcher(line).find();
  }

  private static boolean isDeed(String line) {
    return isHelp(line) || BY_DESK.matcher(line).matches();
  }

  private void keepDeed(String words) {
    if (words.isEmpty()) {
      return;
    }
    if (isHelp(words)) {
      keepHelp(sitting, words);
    } else {
      sitting.record(new Event.Noted(words));
    }
  }

  /** Keeps who was called for help, after what was kept of it before. */
  static void keepHelp(Sitting sitting, String words) {
    String before = helpCalled(sitting).orElse("");
    if (!before.contains(words)) {
      String all = before.isEmpty() ? words : before + "; " + words;
      sitting.record(new Event.Tended(Tending.HELP_CALLED, all));
    }
  }

  static Optional<String> helpCalled(Sitting sitting) {
    return CallLog.of(sitting.moment().entries())
        .last(Tending.HELP_CALLED)
        .map(Event.Tended::words)
        .filter(w -> !w.isEmpty());
  }
}
