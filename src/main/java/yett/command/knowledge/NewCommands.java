package yett.command.knowledge;

import java.nio.file.Path;
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
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

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
    UsageException.when(words.size() < 2, NEW);
    Path folder = Path.of(words.get(1));
    UsageException.when(
        !NewFiles.kinds().contains(words.get(0)),
        "There is no kind "
            + Words.quoted(words.get(0))
            + " to write. "
            + Names.advice(words.get(0), NewFiles.kinds()));
    new FirstFolder(folder).ready(console);
    NewFiles bench =
        new NewFiles(
            folder, desk.choice().source(folder).files(), KnowledgeSource.folder(folder).files());
    NewCard card = bench.card(words.get(0)).orElseThrow();
    Map<String, String> given = GivenAnswers.of(words.subList(2, words.size()));
    if (!console.interactive()) {
      Map<String, String> answers = GivenAnswers.complete(card, given);
      SortedMap<String, String> files = card.files(answers);
      ExitException.unless(sound(bench, files), Sysexits.DATA);
      card.questions(answers)
          .forEach(q -> q.told().apply(answers.getOrDefault(q.key(), "")).forEach(console::say));
      write(bench, files, answers);
      return;
    }
    Draft draft = new Draft(folder, words.get(0));
    if (words.get(0).equals("cause")) {
      console.say("Evidence is in dB: +10 dB is ten times as likely, -10 dB a tenth.");
    }
    NewCardForm form = new NewCardForm(console, card, draft, given);
    Optional<Map<String, String>> answers = form.fill();
    while (answers.isPresent() && !sound(bench, card.files(answers.get()))) {
      console.say("To correct an answer, type back until its question comes.");
      answers = form.askAgain();
    }
    if (answers.isEmpty()) {
      throw new ExitException(Sysexits.NO_INPUT);
    }
    write(bench, card.files(answers.get()), answers.get());
    draft.drop();
  }

  /** {@code help knowledge new KIND}: lists the answers for a kind of card by their names. */
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

  private boolean sound(NewFiles bench, SortedMap<String, String> files) {
    List<Problem> problems = bench.problems(files);
    if (!problems.isEmpty()) {
      problems.forEach(p -> output.tell(ProblemText.of(p, bench.named(files))));
      output.tell("Nothing was written.");
    }
    return problems.isEmpty();
  }

  private void write(NewFiles bench, SortedMap<String, String> told, Map<String, String> answers) {
    SortedMap<String, String> files = bench.coherent(told, answers, this::ready);
    bench.write(files).forEach(path -> output.print("Written: " + path));
    bench.advice(files, answers).forEach(console::say);
    console.say("Look through it in your editor, then: knowledge check, and knowledge test.");
  }

  /** A rule base with its rules; empty as long as nobody has trusted them. */
  private Optional<Expertise> ready(RuleBase base) {
    return desk.ruleBases().untrusted(base).isEmpty()
        ? Optional.of(desk.ruleBases().open(base))
        : Optional.empty();
  }
}
