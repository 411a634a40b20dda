package yett.worksheet.feeder;

import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.Conductor;
import yett.calculation.WireProtection;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * The smallest wire of a table whose loss 2 I L R' stays within a limit and that carries the
 * current. Source: {@link Conductor}, {@link WireProtection}.
 */
final class FeederSize extends Worksheet {
  FeederSize() {
    super(
        Subject.FEEDER, "feeder-size", "smallest wire that carries a load and keeps within a loss");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("supply", Unit.VOLT, "voltage where the wire begins").possible(1, 690),
        Input.reading("current", Unit.AMPERE, "current under load").possible(0.001, 400),
        Wire.length(),
        Input.reading("limit", Unit.PERCENT, "largest loss wanted")
            .usually("3 %")
            .possible(0.1, 50),
        Input.choice(
                "table",
                "table of sizes",
                new Choice("awg", "American sizes (AWG)"),
                new Choice("mm2", "metric sizes (mm2)"))
            .usually("awg"),
        Wire.strands(),
        Wire.temperature(),
        Wire.breaker());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.text("size", "smallest size"),
        Output.reading("carries", Unit.AMPERE, "fuse it may stand behind"),
        Output.text("for-voltage", "for the voltage alone"),
        Output.reading("drop", Unit.VOLT, "voltage lost with it"),
        Output.reading("share", Unit.PERCENT, "share of the supply"),
        Output.text("next", "one size smaller"));
  }

  @Override
  public String formula() {
    return "the smallest size with 2 I L R' <= limit that may stand behind a fuse of I, or behind the"
        + " breaker that is there; I current, L length one way, R' resistance per length at the"
        + " wire's temperature";
  }

  @Override
  public String validity() {
    return "18 to 1/0 AWG and 0.75 to 50 mm2, copper; direct current, or one phase at 50 or 60 Hz up"
        + " to about 4 AWG (25 mm2). The current is a floor for ordinary laying: bundles, hot places"
        + " and loads that never rest ask for more.";
  }

  @Override
  public String source() {
    return Wire.SOURCE
        + "; "
        + Wire.FLOOR
        + "; the advised 3 % is an informational note to NEC 210.19";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Wire.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Wire.TOO_THIN);
  }

  @Override
  protected Results work(Entries entries) {
    List<Conductor> sizes =
        Wire.sizes(entries.choice("table").id().equals("awg"), entries.choice("strands").id());
    double supply = entries.in("supply", Unit.VOLT);
    double limit = entries.fraction("limit") * supply;
    double current = entries.in("current", Unit.AMPERE);
    double length = entries.in("length", Unit.METRE);
    double temperature = entries.in("wire-temperature", Unit.CELSIUS);
    Optional<Conductor> enough = Conductor.smallest(sizes, current, length, temperature, limit);
    Results results =
        new Results().with("for-voltage", enough.map(Conductor::size).orElseGet(() -> none(sizes)));
    Optional<Conductor> smallest =
        WireProtection.smallest(
            sizes, supply, current, Wire.carried(entries, current), length, temperature, limit);
    if (smallest.isEmpty()) {
      return results.with("size", none(sizes));
    }
    double drop = drop(smallest.get(), entries);
    int index = sizes.indexOf(smallest.get());
    if (index > 0) {
      Conductor next = sizes.get(index - 1);
      results.with(
          "next", Wire.allowed(next) + " and would lose " + percent(drop(next, entries) / supply));
    }
    return results
        .with("size", smallest.get().size())
        .with("carries", WireProtection.largest(smallest.get()), Unit.AMPERE)
        .with("drop", drop, Unit.VOLT)
        .with("share", 100 * drop / supply, Unit.PERCENT);
  }

  private static String none(List<Conductor> sizes) {
    return "none up to " + sizes.get(sizes.size() - 1).size();
  }

  private static double drop(Conductor wire, Entries entries) {
    return wire.drop(
        entries.in("current", Unit.AMPERE),
        entries.in("length", Unit.METRE),
        entries.in("wire-temperature", Unit.CELSIUS));
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    String size = results.text("size").orElseThrow();
    String forVoltage = results.text("for-voltage").orElseThrow();
    if (forVoltage.startsWith("none")) {
      return Meaning.of(
          "No wire of the table keeps within "
              + percent(entries.fraction("limit"))
              + ": feed a higher voltage and step it down at the gate, or shorten the run.");
    }
    if (!results.has("drop")) {
      return Meaning.of(
          "No wire of the table carries so much: it takes a larger one or a smaller fuse.");
    }
    String lost = percent(results.in("share", Unit.PERCENT) / 100) + " lost at ";
    return size.equals(forVoltage)
        ? Meaning.of(
            size
                + " will do, with "
                + lost
                + entries.shown("current")
                + "; a motor that starts draws more for a second, so leave room.")
        : Meaning.of(
            "For the voltage alone "
                + forVoltage
                + " would do, but so thin a wire may not be laid for this: take "
                + size
                + " at least, with "
                + lost
                + entries.shown("current")
                + ".");
  }
}
