package yett.study;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.function.LongFunction;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.rules.RuleCache;

/**
 * Runs the study and writes its numbers into docs/study.md and its figures beside it:
 *
 * <pre>mvn -Pstudy test-compile exec:exec [-Dcases=1000] [-Dseed=1]</pre>
 */
final class Study {
  private static final Path PAGE = Path.of("docs/study.md");
  private static final Path FIGURES = Path.of("docs/figures");
  private static final int DECILES = 10;
  private static final String DRAWN = "drawn from the model";
  private static final String PHYSICAL = "physical gate";

  private final Bench bench;
  private final Results results;
  private final RuleBase base;
  private final PrintStream out;

  Study(PrintStream out) {
    this.out = out;
    base = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));
    RuleCache cache = new RuleCache(Path.of("target/rule-cache"));
    bench = new Bench(Expertise.of(base, cache), cache);
    results = new Results(base.planning());
  }

  /** Usage: Study CASES SEED LEFT-OUT: cases of each kind, and cases for each missing card. */
  public static void main(String[] args) throws IOException {
    int cases = Integer.parseInt(args[0]);
    long seed = Long.parseLong(args[1]);
    int leftOut = Integer.parseInt(args[2]);
    new Study(System.out).run(cases, seed, leftOut);
  }

  void run(int cases, long seed, int leftOut) throws IOException {
    Map<String, Map<String, List<Played>>> kinds = new LinkedHashMap<>();
    kinds.put(DRAWN, play(DRAWN, bench::drawn, seed, cases));
    kinds.put(PHYSICAL, play(PHYSICAL, bench::physical, seed, cases));
    Map<String, List<Played>> missing = new LinkedHashMap<>();
    for (String cause : bench.removable()) {
      missing.put(cause, bench.without(cause, seed, leftOut));
      out.println("without the card of " + cause);
    }
    write(kinds, missing, cases, seed);
  }

  private Map<String, List<Played>> play(
      String kind, LongFunction<FaultyGate> gates, long seed, int cases) {
    return bench.play(gates, seed, cases, progress(kind, cases));
  }

  private IntConsumer progress(String kind, int cases) {
    int step = Math.max(1, cases / 50);
    return done -> {
      if (done % step == 0) {
        out.println(kind + ": " + done + " of " + cases);
      }
    };
  }

  private void write(
      Map<String, Map<String, List<Played>>> kinds,
      Map<String, List<Played>> missing,
      int cases,
      long seed)
      throws IOException {
    String page = Files.readString(PAGE);
    page =
        Page.with(
            page,
            "size",
            Results.words(
                "%,d simulated faults of each kind, seeds %d to %d, each under %d policies; rule base"
                    + " `%s`.",
                cases,
                seed,
                seed + cases - 1,
                kinds.get(DRAWN).size(),
                base.fingerprint().substring(0, 12)));
    for (Map.Entry<String, Map<String, List<Played>>> kind : kinds.entrySet()) {
      String name = kind.getKey();
      List<Played> yett = kind.getValue().get("Yett");
      page = Page.with(page, name + ", effort", results.effort(kind.getValue()));
      page = Page.with(page, name + ", success", results.success(kind.getValue()));
      page = Page.with(page, name + ", by size", results.bySize(kind.getValue()));
      page = Page.with(page, name + ", leading", Results.reliability(scores(yett)));
      page = Page.with(page, name + ", every cause", Results.reliability(all(yett)));
    }
    page = Page.with(page, "missing cards", Results.leftOut(missing));
    Files.writeString(PAGE, page, StandardCharsets.UTF_8);
    figures(kinds);
  }

  private static Scores scores(List<Played> yett) {
    return Scores.of(Results.leading(yett), DECILES);
  }

  private static Scores all(List<Played> yett) {
    return Scores.of(Results.everyCause(yett), DECILES);
  }

  private void figures(Map<String, Map<String, List<Played>>> kinds) throws IOException {
    Files.createDirectories(FIGURES);
    Files.writeString(
        FIGURES.resolve("study-minutes.svg"),
        Charts.bars(
            "Minutes to cure by policy",
            Charts.each(kinds, byPolicy -> Charts.each(byPolicy, results::charged))));
    Files.writeString(
        FIGURES.resolve("study-reliability.svg"),
        Charts.reliability(
            "Reliability of the leading cause",
            Charts.each(kinds, byPolicy -> scores(byPolicy.get("Yett")))));
  }
}
