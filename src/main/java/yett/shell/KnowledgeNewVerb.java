package yett.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.NewCard;
import yett.bench.NewFiles;
import yett.bench.Question;
import yett.console.Block;
import yett.console.Input;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Names;
import yett.knowledge.Problem;

/** {@code knowledge new}: asks a few questions and writes a card with a test case beside it. */
final class KnowledgeNewVerb extends Verb {
  private final Desk desk;

  KnowledgeNewVerb(Desk desk) {
    super(
        "knowledge new",
        "write a new cause, check, repair or case",
        "Usage: knowledge new cause|check|repair|case FOLDER [key=value...]. Asks what the card"
            + " needs and writes it into the folder of the rule base; a cause with its rows against"
            + " the causes that it must be told from, and a test case beside it. Answers may be"
            + " given as key=value; without a terminal all that have no usual answer must be."
            + " Nothing that is there is overwritten.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    if (words.size() < 2) {
      throw new UsageException(getHelp());
    }
    Path folder = Path.of(words.get(1));
    NewFiles bench =
        new NewFiles(
            folder, desk.chosen().source(folder).files(), KnowledgeSource.folder(folder).files());
    NewCard card =
        bench
            .card(words.get(0))
            .orElseThrow(
                () ->
                    new UsageException(
                        "There is no kind \""
                            + Words.shortened(words.get(0))
                            + "\" to write. "
                            + Names.advice(words.get(0), NewFiles.kinds())));
    Map<String, String> given = given(words.subList(2, words.size()));
    Optional<Map<String, String>> answers =
        desk.console().interactive() ? ask(card, given) : take(card, given);
    return answers.isEmpty() ? NO_INPUT : write(bench, card.files(answers.get()), answers.get());
  }

  private static Map<String, String> given(List<String> words) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      String[] parts = word.split("=", 2);
      if (parts.length < 2) {
        throw new UsageException(
            "\"" + Words.shortened(word) + "\" is no answer; write it as key=value.");
      }
      given.put(parts[0], parts[1].strip());
    }
    return given;
  }

  /** Without a terminal: what was given, and the usual for the rest. */
  private Optional<Map<String, String>> take(NewCard card, Map<String, String> given) {
    Map<String, String> answers = new LinkedHashMap<>();
    List<String> complaints = new ArrayList<>();
    for (Optional<Question> next = next(card, answers);
        next.isPresent();
        next = next(card, answers)) {
      Question question = next.get();
      Optional<String> answer = Optional.ofNullable(given.get(question.key())).or(question::usual);
      answer
          .flatMap(a -> question.complaint().apply(a))
          .ifPresent(c -> complaints.add(question.key() + ": " + c));
      if (answer.isEmpty()) {
        complaints.add(question.key() + "=… is missing: " + question.ask());
      }
      answers.put(question.key(), answer.orElse(""));
    }
    complaints.addAll(unknown(given, answers));
    if (complaints.isEmpty()) {
      return Optional.of(answers);
    }
    throw new UsageException(String.join("\n", complaints));
  }

  private static List<String> unknown(Map<String, String> given, Map<String, String> answers) {
    return given.keySet().stream()
        .filter(key -> !answers.containsKey(key))
        .map(key -> "\"" + key + "\" is not asked here. " + Names.advice(key, answers.keySet()))
        .toList();
  }

  private static Optional<Question> next(NewCard card, Map<String, String> answers) {
    return card.questions(answers).stream().filter(q -> !answers.containsKey(q.key())).findFirst();
  }

  /** At a terminal; empty if the person ended it. */
  private Optional<Map<String, String>> ask(NewCard card, Map<String, String> given) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (Optional<Question> next = next(card, answers);
        next.isPresent();
        next = next(card, answers)) {
      Question question = next.get();
      String first = given.getOrDefault(question.key(), "");
      Optional<String> answer =
          !first.isEmpty() && question.complaint().apply(first).isEmpty()
              ? Optional.of(first)
              : ask(question);
      if (answer.isEmpty()) {
        say("Nothing was written.");
        return Optional.empty();
      }
      answers.put(question.key(), answer.get());
    }
    return Optional.of(answers);
  }

  private Optional<String> ask(Question question) {
    if (!question.before().isEmpty()) {
      desk.console().show(Block.blank());
      question.before().forEach(this::say);
    }
    String usual =
        question
            .usual()
            .map(u -> u.isEmpty() ? " (Enter for none)" : " (Enter: " + u + ")")
            .orElse("");
    while (true) {
      Input input = desk.console().ask(question.ask() + usual + "> ", question.suggestions());
      if (!(input instanceof Input.Line line)) {
        return Optional.empty();
      }
      String text = line.text().strip();
      String answer = text.isEmpty() ? question.usual().orElse("") : text;
      if (text.equals("?")) {
        say(
            question.suggestions().isEmpty()
                ? "Answer in your own words."
                : "Known: " + String.join(", ", question.suggestions()) + ".");
        continue;
      }
      Optional<String> complaint = question.complaint().apply(answer);
      if (complaint.isEmpty()) {
        return Optional.of(answer);
      }
      say(complaint.get());
    }
  }

  private ExitStatus write(
      NewFiles bench, SortedMap<String, String> files, Map<String, String> answers) {
    List<Problem> problems = bench.problems(files);
    if (!problems.isEmpty()) {
      problems.forEach(p -> System.err.println(ProblemText.of(p, bench.named(files))));
      System.err.println("Nothing was written.");
      return DATA;
    }
    bench.write(files).forEach(path -> System.out.println("Written: " + path));
    bench.advice(files, answers).forEach(this::say);
    say("Look through it in your editor, then: knowledge check, and knowledge test.");
    return OK;
  }

  private void say(String words) {
    desk.console().show(Block.paragraph(words));
  }
}
