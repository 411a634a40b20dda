package yett.command.knowledge;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.bench.Candidate;
import yett.bench.MeaningIndex;
import yett.bench.QuestionList;
import yett.bench.Vocabulary;
import yett.command.common.CommandHelp;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** {@code knowledge}: finds and shows cards. */
public record KnowledgeCommands(Desk desk, Console console, StandardStreams output) {
  private static final String KNOWLEDGE =
      "Usage: knowledge COMMAND ... . Without a COMMAND it lists them; docs/trainer.md"
          + " shows how they are used together. \"knowledge FOLDER\" at a terminal stays at"
          + " work in that folder: at its prompt the word knowledge and the folder may be"
          + " left out, and what one command made ready is there for the next.";

  private static final String FIND =
      "Usage: knowledge find [WORD...]. Lists ids with what they stand for, by kind: those with"
          + " all of the words (their beginnings will do) in id or name, or, where there are"
          + " none, with some, those with the most and the rarest words first; then those that are meant by them in other words, by their answers"
          + " or steps; without a word everything.";

  private static final String QUESTIONS =
      "Usage: knowledge questions [FOLDER]. Lists all that a case file can answer, with ids,"
          + " outcomes in words and the names of causes, and nothing of likelihoods: for people who"
          + " write cases without sight of the cards (docs/field-set.md).";

  private static final int MOST_MEANT = 10;

  @Command(
      name = "knowledge",
      description = "what a trainer can do with a rule base",
      help = KNOWLEDGE)
  public void knowledge(CommandContext context) {
    console.show(
        CommandHelp.rows(CommandHelp.under("knowledge", context.commandRegistry())),
        Block.paragraph("help knowledge COMMAND shows how to use one."));
  }

  @Command(
      name = {"knowledge", "find"},
      description = "look up the ids of causes, effects, checks, repairs and the rest",
      help = FIND)
  public void find(@Arguments List<String> words) {
    String typed = String.join(" ", words);
    Map<String, List<Candidate>> all = new Vocabulary(desk.base()).all();
    List<Candidate> found =
        Candidate.with(typed, all.values().stream().flatMap(List::stream).distinct().toList());
    all.forEach((kind, known) -> show(kind, found.stream().filter(known::contains).toList()));
    List<Candidate> meant = words.isEmpty() ? List.of() : meant(typed, all, found);
    show("also by what is meant", meant);
    if (found.isEmpty() && meant.isEmpty()) {
      output.tell(
          "Nothing has " + Words.quoted(typed) + " in id or name. Try another word, or none.");
      throw new ExitException(Sysexits.NO_INPUT);
    }
  }

  /** Cards found by other words, answers or steps but not by their name. */
  private List<Candidate> meant(
      String typed, Map<String, List<Candidate>> all, List<Candidate> found) {
    List<String> ids = new MeaningIndex(desk.base()).of(typed);
    return all.values().stream()
        .flatMap(List::stream)
        .distinct()
        .filter(k -> ids.contains(k.id()) && !found.contains(k))
        .sorted(Comparator.comparingInt(k -> ids.indexOf(k.id())))
        .limit(MOST_MEANT)
        .toList();
  }

  @Command(
      name = {"knowledge", "questions"},
      description = "list all questions with their outcomes, without likelihoods",
      help = QUESTIONS,
      completionProvider = Completions.FILES)
  public void questions(@Arguments List<String> words) {
    UsageException.when(words.size() > 1, QUESTIONS);
    RuleBase base =
        words.isEmpty() ? desk.base() : RuleBase.read(desk.choice().source(Path.of(words.get(0))));
    QuestionList.of(base).forEach(this::show);
  }

  private void show(String kind, List<Candidate> known) {
    if (!known.isEmpty()) {
      console.show(Block.heading(Wording.capital(kind)), KnownViews.rows(known));
    }
  }
}
