package yett.practice;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.Replayed;
import yett.wording.Wording;

/** Tells the steps of a run in sentences, with the words of the cards in place of ids. */
public record StepTold(RuleBase base) {
  private static final Pattern QUOTED_ID = Pattern.compile("\"([a-z0-9-]+)\"");

  public String words(Replayed.Taken step) {
    return switch (step.kind()) {
      case "enter" -> "Set up: " + step.asked();
      case "leave" -> "Leave again: " + step.asked();
      case "repair" -> "Mend: " + step.asked();
      case "make-safe" -> "Make safe: " + step.asked();
      case "retest" -> step.asked() + " " + tried(step.answer());
      case "look-round" ->
          step.asked()
              + ": "
              + step.looks().stream()
                  .map(l -> name(l.check()) + " - " + answer(l.check(), l.answer()))
                  .collect(Collectors.joining("; "));
      default -> (step.asked() + " " + answer(step.id(), step.answer())).strip();
    };
  }

  /** An answer in the words of its card; a reading as it is. */
  public String answer(String id, String answer) {
    Check check = base.checks().get(id);
    return check != null && check.indexOf(answer) >= 0
        ? Wording.meaning(check, answer)
        : switch (answer) {
          case "cannot-tell" -> "it cannot be told";
          case "does-not-apply" -> "does not apply";
          default -> answer;
        };
  }

  /** The reason of a step, with the names of cards in place of their ids. */
  public String reason(Replayed.Why why) {
    return QUOTED_ID
        .matcher(why.words())
        .replaceAll(id -> Matcher.quoteReplacement("\"" + card(id.group(1)) + "\""));
  }

  private String card(String id) {
    Check check = base.checks().get(id);
    Repair repair = base.repairs().get(id);
    return check != null ? check.ask() : repair != null ? repair.name() : id;
  }

  private String name(String id) {
    Check check = base.checks().get(id);
    return Wording.spaced(check == null ? id : check.name());
  }

  private static String tried(String answer) {
    return switch (answer) {
      case "cured" -> "yes";
      case "fails", "fails as before" -> "no";
      case "cannot-tell" -> "it cannot be told";
      default -> "no; " + answer.replace('-', ' ');
    };
  }
}
