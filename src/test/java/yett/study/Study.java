package yett.study;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.interview.course.Expertise;
import yett.knowledge.RuleBase;
import yett.rules.RuleCache;
import yett.testing.Shipped;

/**
 * Runs the study and writes its numbers into docs/study.md and its figures beside it. Results are
 * kept case by case in target/study: what was played is not played again.
 *
 * <pre>
 * mvn -Pstudy test-compile exec:exec [-Dcases=1000] [-Dmissing=300] [-Dbaseline=500] [-Dminutes=600]
 * </pre>
 */
final class Study {
  private static final Path PAGE = Path.of("docs/study.md");
  private static final Path FIGURES = Path.of("docs/figures");
  private static final Path RESULTS = Path.of("target/study");
  private static final String DRAWN = "drawn from the model";
  private static final String PHYSICAL = "physical gate";
  private static final String MISSING = "missing card";
  private static final String HANDED_OVER = "physical gate with a first inspection";
  private static final String YETT = "Yett";

  private final String madeWith;
  private final RuleBase base;
  private final Bench bench;
  private final Results results;
  private final Ledger ledger;

  private Study(String commit) throws IOException {
    base = Shipped.BASE;
    RuleCache cache = new RuleCache(Path.of("target/rule-cache"));
    bench = new Bench(Expertise.of(base, cache), cache);
    results = new Results(base.planning());
    String program = MadeWith.program();
    ledger = new Ledger(RESULTS, MadeWith.ruleBase(base) + "-" + program);
    madeWith =
        Text.words(
            "rule base `%s`, program `%s`, commit `%s`", MadeWith.ruleBase(base), program, commit);
  }

  /**
   * Usage: Study CASES MISSING SEED MINUTES COMMIT BASELINE: cases of each kind, cases with a
   * missing card, number of the first case, minutes after which no new case is begun, commit, and
   * gates that are played without and with the readings of their first inspection.
   */
  public static void main(String[] args) throws IOException {
    Study study = new Study(args[4]);
    long seed = Long.parseLong(args[2]);
    List<Tasks.Task> tasks =
        new ArrayList<>(study.tasks(Integer.parseInt(args[0]), Integer.parseInt(args[1]), seed));
    for (int i = 0; i < Integer.parseInt(args[5]); i++) {
      long number = seed + i;
      tasks.add(new Tasks.Task(HANDED_OVER, number, () -> study.bench.handedOver(number)));
    }
    Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(args[3])));
    new Tasks(study.ledger, System.out).play(tasks, end);
    study.write(System.out);
  }

  /** Each number under all policies and of all kinds before the next: wherever it is broken off. */
  private List<Tasks.Task> tasks(int cases, int missing, long seed) {
    List<Tasks.Task> tasks = new ArrayList<>();
    int played = 0;
    for (int i = 0; i < cases; i++) {
      long number = seed + i;
      tasks.add(
          new Tasks.Task(
              DRAWN, number, () -> bench.play(bench.drawn(number), bench.policies(number))));
      tasks.add(
          new Tasks.Task(
              PHYSICAL, number, () -> bench.play(bench.physical(number), bench.policies(number))));
      for (; played < (i + 1L) * missing / cases; played++) {
        long one = seed + played;
        tasks.add(new Tasks.Task(MISSING, one, () -> bench.withoutCard(one)));
      }
    }
    return tasks;
  }

  private void write(PrintStream out) throws IOException {
    Map<String, List<Played>> handedOver = ledger.of(HANDED_OVER);
    if (!handedOver.isEmpty()) {
      Files.writeString(
          PAGE,
          Page.with(
              Files.readString(PAGE),
              "first inspection",
              HandedOver.table(base, handedOver) + "\n" + madeWith + "."),
          StandardCharsets.UTF_8);
    }
    Map<String, Map<String, List<Played>>> kinds = new LinkedHashMap<>();
    Map<String, List<Played>> yett = new LinkedHashMap<>();
    Map<String, Scores> leading = new LinkedHashMap<>();
    for (String kind : List.of(DRAWN, PHYSICAL)) {
      Map<String, List<Played>> played = ledger.of(kind);
      if (played.isEmpty()) {
        out.println("Nothing was played; the page stays as it is.");
        return;
      }
      kinds.put(kind, played);
      yett.put(kind, played.get(YETT));
      leading.put(kind, Calibration.leading(played.get(YETT)));
    }
    List<Missing.Case> without = missing(YETT);
    Missing missing = new Missing(without, missing(Bench.AS_RARE));
    List<String> words = new ArrayList<>();
    kinds.forEach((kind, played) -> words.add(results.standsOut(kind, played)));
    words.add(Calibration.standsOut(leading));
    words.add(missing.standsOut());

    String page = Files.readString(PAGE);
    page = Page.with(page, "size", size(kinds, without.size()));
    page = Page.with(page, "what stands out", String.join("\n", words));
    for (Map.Entry<String, Map<String, List<Played>>> kind : kinds.entrySet()) {
      page = Page.with(page, kind.getKey(), results.table(kind.getValue()));
    }
    page = Page.with(page, "reliability", Calibration.reliability(leading));
    page = Page.with(page, "Brier", Calibration.brier(yett));
    page = Page.with(page, "missing cards", missing.table());
    Files.writeString(PAGE, page, StandardCharsets.UTF_8);
    figures(kinds, leading);
  }

  private List<Missing.Case> missing(String whose) {
    List<Missing.Case> cases = new ArrayList<>();
    ledger
        .of(MISSING, whose)
        .forEach((n, p) -> cases.add(new Missing.Case(base.causes().get(bench.missing(n)), p)));
    return cases;
  }

  private String size(Map<String, Map<String, List<Played>>> kinds, int missing) {
    return Text.words(
        "%,d faults drawn from the model and %,d of the physical gate, each under %d policies; %,d"
            + " with a card missing, under Yett; %s.",
        kinds.get(DRAWN).get(YETT).size(),
        kinds.get(PHYSICAL).get(YETT).size(),
        kinds.get(DRAWN).size(),
        missing,
        madeWith);
  }

  private void figures(Map<String, Map<String, List<Played>>> kinds, Map<String, Scores> leading)
      throws IOException {
    Files.createDirectories(FIGURES);
    Files.writeString(
        FIGURES.resolve("study-minutes.svg"),
        Charts.bars(
            "Minutes to cure by policy",
            Charts.each(kinds, byPolicy -> Charts.each(byPolicy, results::inAll))));
    Files.writeString(
        FIGURES.resolve("study-reliability.svg"),
        Charts.reliability("Reliability of the leading cause", leading));
  }
}
