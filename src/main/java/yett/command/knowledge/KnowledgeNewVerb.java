package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.Draft;
import yett.bench.NewCard;
import yett.bench.NewFiles;
import yett.bench.Question;
import yett.command.common.ProblemText;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.Console;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Names;
import yett.knowledge.Problem;

/** {@code knowledge new}: asks a few questions and writes a card with a test case beside it. */
public final class KnowledgeNewVerb extends Verb {
  private final Workplace place;

  public KnowledgeNewVerb(Workplace place) {
    super(
        "knowledge new",
        "write a new cause, check, repair or case",
        "Usage: knowledge new cause|check|repair|case FOLDER [key=value...]. Asks what the card"
            + " needs and writes it into the folder of the rule base; a cause with its rows against"
            + " the causes that it must be told from, and a test case beside it. Answers may be"
            + " given as key=value (\"help knowledge new cause\" lists the keys); without a terminal"
            + " all that have no usual answer must be. Nothing that is there is overwritten.");
    this.place = place;
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
            folder,
            place.desk().choice().source(folder).files(),
            KnowledgeSource.folder(folder).files());
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
    if (!place.console().interactive()) {
      Map<String, String> answers = take(card, given);
      SortedMap<String, String> files = card.files(answers);
      return sound(bench, files) ? write(bench, files, answers) : DATA;
    }
    Draft draft = new Draft(folder, words.get(0));
    NewCardForm form = new NewCardForm(place.console(), card, draft, given);
    Optional<Map<String, String>> answers = form.fill();
    while (answers.isPresent() && !sound(bench, card.files(answers.get()))) {
      say("What is wrong can be mended here: back, until its question comes.");
      answers = form.askAgain();
    }
    if (answers.isEmpty()) {
      return NO_INPUT;
    }
    ExitStatus status = write(bench, card.files(answers.get()), answers.get());
    draft.drop();
    return status;
  }

  /** What {@code help} tells: of a kind, all answers by their names. */
  @Override
  public void help(List<String> about, Console console) {
    Optional<NewCard> card =
        about.size() == 1 ? NewFiles.card(about.get(0), place.desk().base()) : Optional.empty();
    if (card.isEmpty()) {
      super.help(about, console);
      return;
    }
    console.show(
        Block.paragraph(getHelp()),
        Block.heading("Answers about a " + about.get(0) + ", in their order"),
        new Block.Rows(card.get().outline().stream().map(KnowledgeNewVerb::row).toList()));
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
            "\"" + Words.shortened(word) + "\" is no answer; write it as key=value.");
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
      problems.forEach(p -> place.output().tell(ProblemText.of(p, bench.named(files))));
      place.output().tell("Nothing was written.");
    }
    return problems.isEmpty();
  }

  private ExitStatus write(
      NewFiles bench, SortedMap<String, String> files, Map<String, String> answers) {
    bench.write(files).forEach(path -> place.output().print("Written: " + path));
    bench.advice(files, answers).forEach(this::say);
    say("Look through it in your editor, then: knowledge check, and knowledge test.");
    return OK;
  }

  private void say(String words) {
    place.console().show(Block.paragraph(words));
  }
}
