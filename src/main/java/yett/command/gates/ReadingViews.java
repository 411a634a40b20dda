package yett.command.gates;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import yett.console.Block;
import yett.figures.GateHistory.Reading;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Expectation;
import yett.rules.Judgement;
import yett.wording.TrendWords;
import yett.wording.UsualRangeWords;

/** Shows the readings at a gate over time, one line for each. */
record ReadingViews(RuleBase base, int width) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;
  private static final int NEWEST = 12;
  private static final int LONGEST = 44;
  private static final int SHORTEST = 10;

  /** Width of margin, date and the blanks between, in characters. */
  private static final int TAKEN = 18;

  /**
   * @param usual the ranges that the rules expect at this gate
   * @param earlier earlier readings, with the baselines
   * @param trends how the readings have changed since
   */
  List<Block> blocks(
      List<List<Reading>> readings,
      Judgement usual,
      List<Event.Earlier> earlier,
      TrendWords trends) {
    List<Block> blocks = new ArrayList<>();
    for (List<Reading> of : readings) {
      Check check = base.checks().get(of.get(0).check());
      if (check != null && check.measured()) {
        blocks.addAll(one(check, of, usual.expectation(check.id()), baseline(check, earlier)));
        trends
            .of(check)
            .ifPresent(
                t ->
                    blocks.add(
                        blocks.size() - 1,
                        Block.paragraph(
                            "Trend: "
                                + t
                                + trends.warning(check).map(w -> "; " + w).orElse("")
                                + ".")));
      }
    }
    return blocks;
  }

  /** The baseline of a check, and how far the reading is from it now. */
  private static Optional<String> baseline(Check check, List<Event.Earlier> earlier) {
    return earlier.stream()
        .filter(e -> e.baseline() && e.check().equals(check.id()))
        .findFirst()
        .map(
            e ->
                "Baseline: "
                    + check.measures().orElseThrow().showRead(e.value())
                    + " on "
                    + DAY.format(e.at().atZone(ZoneId.systemDefault())));
  }

  private List<Block> one(
      Check check, List<Reading> all, Optional<Expectation> usual, Optional<String> baseline) {
    Measures measures = check.measures().orElseThrow();
    List<Reading> readings = all.subList(Math.max(0, all.size() - NEWEST), all.size());
    double low = usual.map(Expectation::low).orElse(Double.NaN);
    double high = usual.map(Expectation::high).orElse(Double.NaN);
    double[] ends =
        DoubleStream.concat(
                readings.stream().mapToDouble(Reading::value),
                usual.isPresent() ? DoubleStream.of(low, high) : DoubleStream.empty())
            .filter(Double::isFinite)
            .toArray();
    Strip strip =
        new Strip(
            DoubleStream.of(ends).min().orElse(0),
            DoubleStream.of(ends).max().orElse(0),
            low,
            high);
    List<String> shown = readings.stream().map(r -> measures.showRead(r.value())).toList();
    int longest = shown.stream().mapToInt(String::length).max().orElse(0);
    int columns = Math.min(LONGEST, width - TAKEN - longest);
    List<Block.Row> rows = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      String value = unbroken(shown.get(i));
      String pad = "\u00a0".repeat(longest - value.length() + 2);
      rows.add(
          Block.row(
              DAY.format(readings.get(i).at().atZone(ZoneId.systemDefault())),
              columns < SHORTEST || ends.length < 2 || strip.from() == strip.to()
                  ? value
                  : value + pad + strip.draw(readings.get(i).value(), columns)));
    }
    return Stream.of(
            Optional.of(Block.paragraph(check.ask())),
            usual.map(
                e ->
                    Block.paragraph(
                        "Usual here: " + UsualRangeWords.words(measures, low, high) + ".")),
            baseline.map(
                b ->
                    Block.paragraph(
                        b + "; last: " + measures.showRead(all.get(all.size() - 1).value()) + ".")),
            Optional.of(all.size() - readings.size())
                .filter(n -> n > 0)
                .map(n -> Block.paragraph("Not shown: " + n + " earlier.")),
            Optional.of((Block) new Block.Rows(rows)),
            Optional.of(Block.blank()))
        .flatMap(Optional::stream)
        .toList();
  }

  private static String unbroken(String words) {
    return words.replace(' ', '\u00a0');
  }
}
