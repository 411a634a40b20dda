package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.bench.CardView;
import yett.bench.CausePage;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.NewFile;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.trial.CasesBeside;

/** {@code knowledge show}: shows one card with its figures, on the screen or as a page. */
public record CardCommands(Desk desk, Console console, StandardStreams output) {
  private static final String SHOW =
      "Usage: knowledge show ID [FOLDER] [--html FILE]. Likelihoods are shown as"
          + " figures, with the rows of all files together. For a cause: what it leads to,"
          + " what it shows and through which effect, what removes it and what looks like it."
          + " For an effect: what causes it, what shows it and what it leads to. --html"
          + " writes everything known of a cause as a page to print. \"knowledge show words\""
          + " lists the words for likelihoods.";

  @Command(
      name = {"knowledge", "show"},
      description = "show a cause, effect, check or repair with its figures",
      help = SHOW,
      completionProvider = Completions.CARDS)
  public void show(
      @Arguments List<String> words,
      @Option(longName = "html", description = "write all of a cause as a page to this new file")
          String html) {
    UsageException.when(words.isEmpty() || words.size() > 2, SHOW);
    if (words.get(0).equals("words")) {
      show(LikelihoodWords.all());
      return;
    }
    KnowledgeSource source =
        words.size() == 1 ? desk.choice().source() : desk.choice().source(Path.of(words.get(1)));
    RuleBase base = words.size() == 1 ? desk.base() : RuleBase.read(source);
    Map<String, String> lines = CardView.of(words.get(0), base);
    if (lines.isEmpty()) {
      output.tell(
          "There is no card "
              + Words.quoted(words.get(0))
              + ". "
              + Names.advice(words.get(0), CardView.ids(base))
              + " \"knowledge find WORD\" looks up ids.");
      throw new ExitException(Sysexits.NO_INPUT);
    }
    if (html == null) {
      show(lines);
    } else {
      page(words.get(0), source, base, html);
    }
  }

  private void page(String id, KnowledgeSource source, RuleBase base, String html) {
    if (!base.causes().containsKey(id)) {
      throw new UsageException("Only a cause has a page, and \"" + id + "\" is none. " + SHOW);
    }
    Path file = NewFile.named(html);
    CasesBeside beside = CasesBeside.of(source.files(), base, "");
    beside.problems().forEach(p -> output.tell(p.toString()));
    String paper = desk.firm().letterhead().paper();
    NewFile.write(file, CausePage.of(id, base, beside.cases(), paper), output);
  }

  private void show(Map<String, ?> lines) {
    List<Block.Row> rows =
        lines.entrySet().stream()
            .map(e -> Block.row(e.getKey(), String.valueOf(e.getValue())))
            .toList();
    console.show(new Block.Rows(rows));
  }
}
