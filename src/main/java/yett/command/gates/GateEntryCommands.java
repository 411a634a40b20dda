package yett.command.gates;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.Completions;
import yett.command.common.GateNames;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.wording.GateWords;

/** {@code gates add} and {@code gates describe}: enter a gate as installed, without a case. */
public record GateEntryCommands(Desk desk, Console console) {
  private static final String FORM =
      " Such as: opening=\"6 m\" support=cantilever batteries=none. What you leave out"
          + " is assumed as usual.";

  private static final String ADD = "Usage: gates add \"NAME\" QUESTION=ANSWER..." + FORM;

  private static final String DESCRIBE =
      "Usage: gates describe \"NAME\" QUESTION=ANSWER... Earlier answers stay unless given again."
          + FORM;

  @Command(
      name = {"gates", "add"},
      description = "describe a gate before its first case",
      help = ADD)
  public void add(@Arguments List<String> words) {
    UsageException.when(words.size() < 2, ADD);
    String name = words.get(0).strip();
    if (name.isEmpty() || !GateNames.isName(name)) {
      throw new UsageException(GateNames.refusal(name));
    }
    UsageException.when(
        name.contains("="),
        "The name of the gate comes first, and has no \"=\": that is for the answers. " + ADD);
    if (new Gates(desk, console).names().contains(name)) {
      throw new UsageException(
          "There is a gate \"" + name + "\" already. Change it with: gates describe.");
    }
    keep(name, Map.of(), words.subList(1, words.size()));
  }

  @Command(
      name = {"gates", "describe"},
      description = "change what is known of a gate",
      help = DESCRIBE,
      completionProvider = Completions.GATES)
  public void describe(@Arguments List<String> words) {
    UsageException.when(words.size() < 2, DESCRIBE);
    String name = new Gates(desk, console).exactly(words.get(0));
    GateMemory memory = new GateMemory(desk.casebook(), desk.clock());
    Map<String, String> before = desk.casebook().site(name).map(memory::now).orElse(Map.of());
    keep(name, before, words.subList(1, words.size()));
  }

  private void keep(String name, Map<String, String> before, List<String> told) {
    Map<String, String> answers = new LinkedHashMap<>(before);
    answers.putAll(GateAnswers.of(told, desk.base()));
    if (!new GateMemory(desk.casebook(), desk.clock()).keep(name, answers)) {
      throw new UsageException(
          "It could not be kept: the casebook cannot be reached. Try again when it can.");
    }
    console.say(name + ": " + new GateWords(desk.base()).line(answers) + ".");
    console.say(GateAnswers.told(answers, desk.base()));
  }
}
