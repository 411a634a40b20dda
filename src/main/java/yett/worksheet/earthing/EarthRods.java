package yett.worksheet.earthing;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.calculation.EarthRod;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Resistance of equal rods joined together, from one of them. Source: {@link EarthRod}. */
final class EarthRods extends Worksheet {
  EarthRods() {
    super(Subject.EARTHING, "earth-rods", "resistance of several rods joined");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.whole("rods", "number of rods").usually("2").possible(2, 24),
        Input.reading("spacing", Unit.METRE, "distance from rod to rod")
            .usually("6 ft")
            .possible(0.1, 100),
        Input.reading("one-rod", Unit.OHM, "resistance of one rod, if measured")
            .mayBeLeftOut()
            .possible(0.1, 100000),
        Rod.soil(),
        Rod.resistivity(),
        Rod.length(),
        Rod.diameter(),
        Rod.limit());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("single", Unit.OHM, "one rod"),
        Output.reading("together", Unit.OHM, "all together"),
        Output.reading("share", Unit.PERCENT, "of one rod"),
        Output.text("needed", "rods for the limit"));
  }

  @Override
  public String formula() {
    return "two rods: R1 (1 + M/S)/2, S = 2 (ln(4 L/a) - 1), M = 2 arsinh(2 L/s) - sqrt(4 + (s/L)2)"
        + " + s/L; s spacing, L length, a radius; more rods: R1 F/n, F from 1.29 (3) to 2.16 (24)";
  }

  @Override
  public String validity() {
    return "Equal rods in uniform soil. For three and more the spacing is about the length or more;"
        + " closer ones help less than this says. Rods never come down to R1/n.";
  }

  @Override
  public String source() {
    return "mean potential of evenly fed rods (Dwight), whose series IEEE 142 prints; multiplying"
        + " factors of IEEE 142 from memory; two rods 6 ft apart at least by NEC"
        + " 250.53(A)(3), from memory";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Rod.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Rod.LIVE_EARTH);
  }

  @Override
  protected Results work(Entries entries) {
    double single =
        entries.has("one-rod")
            ? entries.in("one-rod", Unit.OHM)
            : EarthRod.single(Rod.resistivity(entries), Rod.length(entries), Rod.radius(entries));
    double share = share(entries, entries.whole("rods"));
    return new Results()
        .with("single", single, Unit.OHM)
        .with("together", single * share, Unit.OHM)
        .with("share", 100 * share, Unit.PERCENT)
        .with("needed", needed(entries, single));
  }

  private static double share(Entries entries, int rods) {
    return rods == 2
        ? EarthRod.pairOverSingle(
            Rod.length(entries), Rod.radius(entries), entries.in("spacing", Unit.METRE))
        : EarthRod.severalOverSingle(rods);
  }

  private static String needed(Entries entries, double single) {
    for (int rods = 1; rods <= 24; rods++) {
      if (single * (rods == 1 ? 1 : share(entries, rods)) <= entries.in("limit", Unit.OHM)) {
        return Integer.toString(rods);
      }
    }
    return "more than 24";
  }

  @Override
  protected List<String> remarks(Entries entries, Results results) {
    double spacing = entries.in("spacing", Unit.METRE);
    List<String> remarks = new ArrayList<>();
    if (spacing < Rod.LEAST_SPACING * (1 - 1e-9)) {
      remarks.add(
          "Rods "
              + entries.shown("spacing")
              + " apart stand closer than the 6 ft (1.8 m) that the NEC asks for; they share the"
              + " soil, and the second hardly helps.");
    }
    if (entries.whole("rods") > 2 && spacing < Rod.length(entries)) {
      remarks.add(
          "Rods closer than their length share the soil; together they will have more than this.");
    }
    return remarks;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double together = results.in("together", Unit.OHM);
    double limit = entries.in("limit", Unit.OHM);
    String share =
        "Together they have " + percent(results.in("share", Unit.PERCENT) / 100) + " of one rod";
    return Meaning.of(
        together <= limit
            ? share
                + ", "
                + tell(together, Unit.OHM)
                + ": within the "
                + tell(limit, Unit.OHM)
                + "."
            : share
                + ", "
                + tell(together, Unit.OHM)
                + ", still over "
                + tell(limit, Unit.OHM)
                + ": deeper rods reach moister soil and help more than further ones beside them.");
  }
}
