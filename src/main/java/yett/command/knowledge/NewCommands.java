package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.bench.Draft;
import yett.bench.NewCard;
import yett.bench.NewFiles;
import yett.bench.Question;
import yett.command.common.CommandHelp;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.ProblemText;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Names;
import yett.knowledge.Problem;

/** {@code knowledge new}: asks a few questions and writes a card with a test case beside it. */
public record NewCommands(Desk desk, Console console, StandardStreams output) {
  private static final String NEW =
      "Usage: knowledge new cause|effect|check|repair|case FOLDER [key=value...]. Asks what the"
          + " card"
          + " needs and writes it into the folder of the rule base; a cause with its rows against"
          + " the causes that it must be told from, and a test case beside it. Answers may be"
          + " given as key=value (\"help knowledge new cause\" lists the keys); without a terminal"
          + " all that have no usual answer must be. Nothing that is there is overwritten.";

  @Command(
      name = {"knowledge", "new"},
      description = "write a new cause, effect, check, repair or case",
      help = NEW,
      completionProvider = Completions.FILES)
  public void create(@Arguments List<String> words) {
    if (words.size() < 2) {
      throw new UsageException(NEW);
    }
    Path folder = Path.of(words.get(1));
    NewFiles bench =
        new NewFiles(
            folder, desk.choice().source(folder).files(), KnowledgeSource.folder(folder).files());
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
    if (!console.interactive()) {
      Map<String, String> answers = take(card, given);
      SortedMap<String, String> files = card.files(answers);
      ExitException.unless(sound(bench, files), Sysexits.DATA);
      card.questions(answers)
          .forEach(q -> q.told().apply(answers.getOrDefault(q.key(), "")).forEach(this::say));
      write(bench, files, answers);
      return;
    }
    Draft draft = new Draft(folder, words.get(0));
    NewCardForm form = new NewCardForm(console, card, draft, given);
    Optional<Map<String, String>> answers = form.fill();
    while (answers.isPresent() && !sound(bench, card.files(answers.get()))) {
      say("What is wrong can be mended here: back, until its question comes.");
      answers = form.askAgain();
    }
    if (answers.isEmpty()) {
      throw new ExitException(Sysexits.NO_INPUT);
    }
    write(bench, card.files(answers.get()), answers.get());
    draft.drop();
  }

  /** Of a kind, all answers by their names. */
  @Command(
      name = {"help", "knowledge", "new"},
      description = "the answers about a new card",
      help = "Usage: help knowledge new cause|effect|check|repair|case")
  public void help(CommandContext context, @Arguments List<String> about) {
    Optional<NewCard> card =
        about.size() == 1 ? NewFiles.card(about.get(0), desk.base()) : Optional.empty();
    if (card.isPresent()) {
      console.show(
          Block.paragraph(NEW),
          Block.heading("Answers about a new " + about.get(0) + ", in their order"),
          new Block.Rows(card.get().outline().stream().map(NewCommands::row).toList()));
    } else {
      console.show(CommandHelp.of("knowledge new", about, context.commandRegistry()));
    }
  }

  private static Block.Row row(Question question) {
    String usual =
        question
            .usual()
            .map(u -> u.isEmpty() ? " (may be left out)" : " (else " + u + ")")
            .orElse("");
    return Block.row(question.key(), question.ask() + usual);
  }

  private static Map<String, String> given(List<String> words) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      String[] parts = word.split("=", 2);
      if (parts.length < 2) {
        throw new UsageException(
            "\"" + Words.shortened(word) + "\" is not an answer; write it as key=value.");
      }
      given.put(parts[0], parts[1].strip());
    }
    return given;
  }

  /** Without a terminal: what was given, and the usual for the rest. */
  private Map<String, String> take(NewCard card, Map<String, String> given) {
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
      return answers;
    }
    complaints.add(
        "\"knowledge find WORD\" looks up ids, \"help knowledge new KIND\" lists the keys.");
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

  private boolean sound(NewFiles bench, SortedMap<String, String> files) {
    List<Problem> problems = bench.problems(files);
    if (!problems.isEmpty()) {
      problems.forEach(p -> output.tell(ProblemText.of(p, bench.named(files))));
      output.tell("Nothing was written.");
    }
    return problems.isEmpty();
  }

  private void write(NewFiles bench, SortedMap<String, String> files, Map<String, String> answers) {
    bench.write(files).forEach(path -> output.print("Written: " + path));
    bench.advice(files, answers).forEach(this::say);
    say("Look through it in your editor, then: knowledge check, and knowledge test.");
  }

  private void say(String words) {
    console.show(Block.paragraph(words));
  }
}
