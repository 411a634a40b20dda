package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.command.diagnose.StepViews;
import yett.console.Block;
import yett.console.Progress;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.trial.CasesBeside;
import yett.trial.Comparison;
import yett.trial.Difference;

/** {@code knowledge compare}: two rule bases told apart by what they ask and conclude. */
public final class KnowledgeCompareVerb extends Verb {
  private final Workplace place;

  public KnowledgeCompareVerb(Workplace place) {
    super(
        "knowledge compare",
        "tell two rule bases apart by what they ask and conclude",
        "Usage: knowledge compare [FIRST] SECOND [--only PART] [--sums] [--near]. Runs the cases beside the"
            + " cards of the two folders under each, and shows by case where they part: the"
            + " question asked, the first cause, the belief, the repairs, the minutes; then the"
            + " sums. Without FIRST, SECOND is held against the rule base in use. An add-on stands"
            + " for the rule base in use with the add-on laid over it. Cases in which all was asked,"
            + " concluded and done as before, and no chance moved by 5 points, are only counted;"
            + " --near shows them as well.",
        value("only", "a part: the beginning of a path such as chain/, or the name of one case"),
        flag("sums", "the sums only"),
        flag("near", "also cases in which chances moved a little and nothing else"));
    this.place = place;
  }

  /** A rule base, its cases, and its name in messages. */
  private record Side(Expertise expertise, CasesBeside cases) {}

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    if (words.isEmpty() || words.size() > 2) {
      throw new UsageException(getHelp());
    }
    String only = option(context, "only", "");
    KnowledgeSource last = place.desk().choice().source(Path.of(words.get(words.size() - 1)));
    Side first =
        side(
            words.size() == 2
                ? place.desk().choice().source(Path.of(words.get(0)))
                : place.desk().choice().source(),
            only);
    Side second = side(last, only);
    show(compare(first, second), has(context, "sums"), has(context, "near"));
    return first.cases().problems().isEmpty() && second.cases().problems().isEmpty() ? OK : DATA;
  }

  private Side side(KnowledgeSource source, String only) {
    Expertise expertise = place.desk().ruleBases().open(source);
    CasesBeside cases = CasesBeside.of(source.files(), expertise.base(), only);
    cases.problems().forEach(p -> place.output().tell(p.toString()));
    return new Side(expertise, cases);
  }

  private Comparison compare(Side first, Side second) {
    int runs = first.cases().cases().size() + second.cases().cases().size();
    try (Progress progress = place.console().start("Replaying", runs)) {
      return Comparison.of(
          first.expertise(), first.cases(), second.expertise(), second.cases(), progress::step);
    }
  }

  private void show(Comparison comparison, boolean sumsOnly, boolean near) {
    List<Block> blocks = new ArrayList<>();
    long slight = comparison.differences().stream().filter(Difference::slight).count();
    if (!sumsOnly) {
      comparison.differences().stream()
          .filter(d -> near || !d.slight())
          .forEach(d -> blocks.addAll(Differences.blocks(d)));
    }
    blocks.add(Block.heading("All cases of both"));
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("First", comparison.first().words()));
    rows.add(Block.row("Second", comparison.second().words()));
    comparison.sums().forEach(s -> rows.add(row(s)));
    rows.add(
        Block.row(
            "Only a chance moved, by less than 5 points",
            slight + " cases" + (slight > 0 && !near ? "; --near shows them" : "")));
    comparison.cards().forEach(c -> rows.add(row(c)));
    blocks.add(new Block.Rows(rows));
    if (!comparison.alone().isEmpty()) {
      blocks.add(Block.paragraph("Not compared: " + String.join(", ", comparison.alone()) + "."));
    }
    place.console().show(blocks);
  }

  /** "what: how much" in two columns. */
  private static Block.Row row(String words) {
    String[] parts = words.split(": ", 2);
    return Block.row(StepViews.capital(parts[0]), parts[1]);
  }
}
