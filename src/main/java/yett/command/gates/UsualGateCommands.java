package yett.command.gates;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.GateWords;

/** {@code gates usual}: sets what is assumed of a gate until somebody says otherwise. */
public record UsualGateCommands(Desk desk, Console console) {
  private static final String AS_SHIPPED = "as-shipped";

  private static final String USUAL =
      "Usage: gates usual [QUESTION=ANSWER... | as-shipped]. Sets, on this computer,"
          + " what is assumed of a gate where nobody has said otherwise. For example, where"
          + " most gates have limit switches and no batteries: gates usual"
          + " limits-by=switches batteries=none supply-volts=230. A word that is not a question is"
          + " answered with the list of questions. Choose once, before the first gate: for"
          + " gates already known, what nobody has entered changes as well. Cases written for"
          + " replay and practice keep the usual gate of the rule base.";

  @Command(
      name = {"gates", "usual"},
      description = "what is assumed of a gate here",
      help = USUAL)
  public void usual(@Arguments List<String> words) {
    if (words.contains(AS_SHIPPED)) {
      UsageException.when(words.size() > 1, USUAL);
      desk.takeAsUsual(Map.of());
    } else if (!words.isEmpty()) {
      Map<String, String> usual = new LinkedHashMap<>(desk.usualGate());
      usual.putAll(GateAnswers.of(words, desk.base()));
      desk.takeAsUsual(usual);
    }
    show();
  }

  private void show() {
    RuleBase base = desk.base();
    console.say(
        "Assumed where nobody has said otherwise: " + new GateWords(base).line(Map.of()) + ".");
    Map<String, String> chosen = desk.usualGate();
    if (chosen.isEmpty()) {
      console.say(
          "All of it is as in the rule base. Choose what most gates here have: help gates"
              + " usual.");
      return;
    }
    chosen.forEach(
        (question, answer) -> console.say(said(base.siteQuestions().get(question), answer)));
  }

  private static String said(SiteQuestion question, String answer) {
    return question.name() + ": " + question.said(answer) + " (chosen here)";
  }
}
