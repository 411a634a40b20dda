package yett.command.knowledge;

import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.Known;
import yett.bench.Vocabulary;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.command.diagnose.StepViews;
import yett.console.Block;

/** {@code knowledge find}: ids of cards by the words of their names. */
public final class KnowledgeFindVerb extends Verb {
  private final Workplace place;

  public KnowledgeFindVerb(Workplace place) {
    super(
        "knowledge find",
        "look up the ids of causes, checks, repairs and the rest",
        "Usage: knowledge find [WORD...]. Lists ids with what they stand for, by kind: those with"
            + " all of the words (their beginnings will do) in id or name, or, where there are"
            + " none, with any; without a word everything.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    String typed = String.join(" ", words(context));
    Map<String, List<Known>> all = new Vocabulary(place.desk().base()).all();
    List<Known> found =
        Known.with(typed, all.values().stream().flatMap(List::stream).distinct().toList());
    all.forEach((kind, known) -> show(kind, known.stream().filter(found::contains).toList()));
    if (found.isEmpty()) {
      place
          .output()
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
      place.console().show(Block.heading(StepViews.capital(kind)), KnownViews.rows(known));
    }
  }
}
