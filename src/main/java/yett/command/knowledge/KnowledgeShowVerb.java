package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.CardView;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;

/** {@code knowledge show}: a card with its figures, as the program understands it. */
public final class KnowledgeShowVerb extends Verb {
  private final Workplace place;

  public KnowledgeShowVerb(Workplace place) {
    super(
        "knowledge show",
        "show a cause, check or repair with its figures",
        "Usage: knowledge show ID [FOLDER]. Words for likelihoods are shown as the figures that"
            + " they stand for, rows of all files together; of a cause what it shows, what removes"
            + " it and what looks like it. \"knowledge show words\" tells the words.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    if (words.isEmpty() || words.size() > 2) {
      throw new UsageException(getHelp());
    }
    if (words.get(0).equals("words")) {
      show(LikelihoodWords.all());
      return OK;
    }
    KnowledgeSource source =
        words.size() == 1
            ? place.desk().choice().source()
            : place.desk().choice().source(Path.of(words.get(1)));
    RuleBase base = RuleBase.read(source);
    Map<String, String> lines = CardView.of(words.get(0), base);
    if (lines.isEmpty()) {
      place
          .output()
          .tell(
              "There is no card \""
                  + Words.shortened(words.get(0))
                  + "\". "
                  + Names.advice(words.get(0), CardView.ids(base))
                  + " \"knowledge find WORD\" looks up ids.");
      return NO_INPUT;
    }
    show(lines);
    return OK;
  }

  private void show(Map<String, ?> lines) {
    List<Block.Row> rows =
        lines.entrySet().stream()
            .map(e -> Block.row(e.getKey(), String.valueOf(e.getValue())))
            .toList();
    place.console().show(new Block.Rows(rows));
  }
}
