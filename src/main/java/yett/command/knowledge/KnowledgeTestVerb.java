package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.Progress;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.trial.AcceptedRun;
import yett.trial.CasesBeside;
import yett.trial.Difference;
import yett.trial.Tested;

/** {@code knowledge test}: the cases beside the cards, held against the last accepted run. */
public final class KnowledgeTestVerb extends Verb {
  private final Workplace place;

  public KnowledgeTestVerb(Workplace place) {
    super(
        "knowledge test",
        "run the cases beside the cards and tell what changed",
        "Usage: knowledge test FOLDER [--only PART] [--accept]. Runs the cases beside the cards of"
            + " the folder and shows those that differ from the run that was accepted last, and"
            + " why. The accepted run is the file "
            + AcceptedRun.FILE
            + " in the folder; keep it under version control. The exit status is 1 if anything"
            + " differs, or, while nothing was accepted yet, if a case does not come out as its"
            + " file says.",
        value("only", "a part: the beginning of a path such as chain/, or the name of one case"),
        flag("accept", "accept this run: from now on it is what others are held against"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    Path folder = Path.of(words(context).get(0));
    String only = option(context, "only", "");
    KnowledgeSource source = place.desk().choice().source(folder);
    Expertise expertise = place.desk().ruleBases().open(source);
    CasesBeside beside = CasesBeside.of(source.files(), expertise.base(), only);
    beside.problems().forEach(p -> place.output().tell(p.toString()));
    if (beside.cases().isEmpty()) {
      place
          .output()
          .tell(
              only.isEmpty()
                  ? "There is no case beside these cards. A case is a file such as new.case.yaml."
                  : "No case's path begins with \"" + only + "\", nor is one named so.");
      return beside.problems().isEmpty() ? NO_INPUT : DATA;
    }
    Tested test = run(expertise, folder, beside, only.isEmpty());
    show(test);
    if (!beside.skipped().isEmpty()) {
      say(
          "Not run, for they speak of what is switched off: "
              + String.join(", ", beside.skipped())
              + ".");
    }
    boolean accept = has(context, "accept");
    if (accept && beside.problems().isEmpty()) {
      test.accept().run();
      say("Accepted; kept in " + folder.resolve(AcceptedRun.FILE) + ".");
    }
    if (!beside.problems().isEmpty()) {
      return DATA;
    }
    boolean good = accept ? test.unsafe().isEmpty() : test.good();
    return good ? OK : DIFFERENT;
  }

  private Tested run(Expertise expertise, Path folder, CasesBeside beside, boolean whole) {
    try (Progress progress = place.console().start("Replaying", beside.cases().size())) {
      return Tested.run(expertise, folder, beside.cases(), whole, progress::step);
    }
  }

  private void show(Tested test) {
    test.changed().forEach(this::show);
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("Cases", test.score().words()));
    if (test.accepted()) {
      rows.add(Block.row("Changed", test.changed().size() + " against the accepted run"));
      row(rows, "New", test.fresh());
      row(rows, "Gone", test.gone());
    } else {
      rows.add(
          Block.row(
              "Accepted",
              "no run yet, so there is nothing to hold this one against: cases are only judged by"
                  + " what their files say. With --accept before you change a card, every later run"
                  + " tells what changed"));
    }
    row(rows, "Not as their file says", test.wrong());
    row(rows, "UNSAFE", test.unsafe());
    place.console().show(Block.blank(), new Block.Rows(rows));
  }

  private static void row(List<Block.Row> rows, String name, List<String> words) {
    if (!words.isEmpty()) {
      rows.add(Block.row(name, String.join(", ", words)));
    }
  }

  private void show(Difference difference) {
    place.console().show(Differences.blocks(difference));
  }

  private void say(String words) {
    place.console().show(Block.paragraph(words));
  }
}
