package yett.shell;

import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.Known;
import yett.bench.Vocabulary;
import yett.console.Block;

/** {@code knowledge find}: ids of cards by the words of their names. */
final class KnowledgeFindVerb extends Verb {
  private final Desk desk;

  KnowledgeFindVerb(Desk desk) {
    super(
        "knowledge find",
        "look up the ids of causes, checks, repairs and the rest",
        "Usage: knowledge find [WORD...]. Lists ids with what they stand for, by kind: those with"
            + " all of the words (their beginnings will do) in id or name, or, where there are"
            + " none, with any; without a word everything.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    String typed = String.join(" ", words(context));
    Map<String, List<Known>> all = new Vocabulary(desk.base()).all();
    List<Known> found =
        Known.with(typed, all.values().stream().flatMap(List::stream).distinct().toList());
    all.forEach((kind, known) -> show(kind, known.stream().filter(found::contains).toList()));
    if (found.isEmpty()) {
      desk.output()
          .tell(
              "Nothing has \""
                  + Words.shortened(typed)
                  + "\" in id or name. Try another word, or none.");
      return NO_INPUT;
    }
    return OK;
  }

  private void show(String kind, List<Known> known) {
    if (!known.isEmpty()) {
      desk.console().show(Block.heading(StepViews.capital(kind)), KnownViews.rows(known));
    }
  }
}
