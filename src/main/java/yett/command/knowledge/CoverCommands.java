package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.belief.Lookalikes;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.Coverage;
import yett.replay.RecordedCase;
import yett.trial.Delicate;

/** {@code knowledge cover}: which cards no case tries, and which causes no check tells apart. */
public record CoverCommands(Desk desk, Console console, StandardStreams output) {
  private static final int MOST = 20;

  private static final String COVER =
      "Usage: knowledge cover [FILE...]. Runs the cases of the files (of a folder, all that end"
          + " in .case.yaml or .case.json) and names causes, checks, repairs and proofs that none"
          + " of them reaches, as far as they are near the causes that the cases are about or come"
          + " from an add-on, those first; the numbers on which their conclusions rest most; then"
          + " pairs of causes that no check tells apart well and no one repair removes together."
          + " Without a file, such pairs of the whole rule base.";

  @Command(
      name = {"knowledge", "cover"},
      description = "show what no case tries and which causes no check tells apart",
      help = COVER,
      completionProvider = Completions.FILES)
  public void cover(@Arguments List<String> words) {
    List<Path> files = CaseFile.among(words.stream().map(Path::of).toList());
    RuleBase base = desk.trial().base();
    List<CaseFile> read = files.stream().map(f -> CaseFile.read(f, base)).toList();
    Set<String> mine = mine(base);
    if (files.isEmpty()) {
      lookalikes(Coverage.lookalikes(base));
    } else {
      List<RecordedCase> cases = read.stream().flatMap(f -> f.cases().stream()).toList();
      Delicate.Study study = study(cases);
      Set<String> about = new HashSet<>(Coverage.about(cases, study.replayed()));
      show(Coverage.of(base, study.replayed()).near(base, about, mine), mine);
      numbers(study.numbers());
      about.addAll(mine);
      lookalikes(
          Coverage.lookalikes(base).stream()
              .filter(p -> about.contains(p.one()) || about.contains(p.other()))
              .toList());
    }
    List<Problem> problems = read.stream().flatMap(f -> f.problems().stream()).toList();
    problems.forEach(p -> output.tell(p.toString()));
    ExitException.unless(problems.isEmpty(), Sysexits.DATA);
  }

  private Delicate.Study study(List<RecordedCase> cases) {
    try (Progress progress = console.start("Replaying", cases.size())) {
      return Delicate.among(desk.trial(), cases, progress::step);
    }
  }

  private void numbers(List<Delicate> numbers) {
    console.show(Block.blank(), Block.heading("Numbers that deserve care"));
    List<Block.Row> rows =
        numbers.stream().limit(MOST).map(n -> Block.row(name(n), words(n))).toList();
    console.show(
        new Block.Rows(rows),
        Block.paragraph(
            "How far the right cause moves, before the first repair, when the odds of the"
                + " number are off: 0.5 means half a deciban for each deciban. \"Could turn\":"
                + " half or twice these odds would put another cause first."));
  }

  private static String name(Delicate number) {
    String row = number.cause().isEmpty() ? "otherwise" : number.cause();
    return number.check() + ", " + row + ", " + number.outcome();
  }

  private static String words(Delicate number) {
    String cases = number.cases() == 1 ? "1 case" : number.cases() + " cases";
    return String.format(
        Locale.ROOT,
        "%.2f on average over %s, %.2f in %s%s",
        number.sum() / number.cases(),
        cases,
        number.most(),
        number.mostIn().isEmpty() ? "none" : number.mostIn(),
        number.turns().isEmpty() ? "" : "; could turn " + String.join(", ", number.turns()));
  }

  /** Ids of the cards that add-ons bring. */
  private static Set<String> mine(RuleBase base) {
    return base.addOns().stream()
        .flatMap(a -> Stream.concat(a.adds().stream(), a.replaces().stream()))
        .map(card -> card.substring(card.indexOf(' ') + 1))
        .collect(Collectors.toSet());
  }

  private void show(Coverage coverage, Set<String> mine) {
    show("Causes that come first in no case", coverage.causes(), mine);
    show("Checks that no case is asked", coverage.checks(), mine);
    show("Repairs that no case leads to", coverage.repairs(), mine);
    show("Proofs that no case is asked", coverage.proofs(), mine);
  }

  /** Shows the cards of add-ons separately, before the others. */
  private void show(String what, List<String> ids, Set<String> mine) {
    List<String> own = ids.stream().filter(mine::contains).toList();
    if (!own.isEmpty()) {
      show(what + ", of your own", own);
    }
    show(
        what + (own.isEmpty() ? "" : ", of the others"),
        ids.stream().filter(id -> !mine.contains(id)).toList());
  }

  /** Shows the first ids only, because nobody reads a list of a hundred. */
  private void show(String what, List<String> ids) {
    List<String> some = new ArrayList<>(ids.stream().limit(MOST).toList());
    if (ids.size() > MOST) {
      some.add("and " + (ids.size() - MOST) + " more");
    }
    all(what, some);
  }

  private void all(String what, List<String> ids) {
    console.say(what + ": " + (ids.isEmpty() ? "none." : String.join(", ", ids) + "."));
  }

  private void lookalikes(List<Lookalikes.Pair> pairs) {
    all(
        "Pairs of causes that no check tells apart well and no one repair removes together",
        pairs.stream().map(CoverCommands::words).toList());
  }

  private static String words(Lookalikes.Pair pair) {
    String best =
        pair.check().isEmpty()
            ? "no check at all"
            : String.format(
                Locale.ROOT, "at best %s, %.0f %%", pair.check(), 100 * pair.distance());
    return pair.one() + " and " + pair.other() + " (" + best + ")";
  }
}
