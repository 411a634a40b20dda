package yett.worksheet.feeder;

import static yett.worksheet.Tell.metres;
import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Conductor;
import yett.calculation.WireProtection;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Voltage lost in a pair of wires: V = 2 I L R', with current I (A), length one way L (m) and
 * resistance per length R' (ohm/m) at the wire's temperature. Source: {@link Conductor}.
 */
final class FeederDrop extends Worksheet {
  FeederDrop() {
    super(Subject.FEEDER, "feeder-drop", "voltage lost in a pair of wires");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("supply", Unit.VOLT, "voltage where the wire begins").possible(1, 690),
        Input.reading("current", Unit.AMPERE, "current under load").possible(0.001, 400),
        Wire.length(),
        Wire.size(),
        Wire.strands(),
        Wire.temperature(),
        Wire.breaker(),
        Input.reading("limit", Unit.PERCENT, "largest loss wanted")
            .usually("3 %")
            .possible(0.1, 50));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("drop", Unit.VOLT, "voltage lost"),
        Output.reading("share", Unit.PERCENT, "share of the supply"),
        Output.reading("left", Unit.VOLT, "left at the end"),
        Output.reading("resistance", Unit.OHM, "resistance of both wires"),
        Output.reading("longest", Unit.METRE, "longest run at the limit"),
        Output.reading("carries", Unit.AMPERE, "fuse it may stand behind"));
  }

  @Override
  public String formula() {
    return "V = 2 I L R', R' = R'ref (1 + a (T - Tref)); I current, L length one way, R' resistance"
        + " per length, T temperature of the wire, a = 0.00323/K at 75 degC (AWG) or 0.00393/K at"
        + " 20 degC (mm2)";
  }

  @Override
  public String validity() {
    return "Direct current, or one phase at 50 or 60 Hz up to about 4 AWG (25 mm2), where reactance"
        + " is small; copper; wire only, without joints.";
  }

  @Override
  public String source() {
    return Wire.SOURCE
        + "; fuse by "
        + Wire.FLOOR
        + "; the advised 3 % (5 % with the branch behind it) is an informational note to NEC 210.19"
        + " and 215.2, and common practice on 24 V";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Wire.DECIDES);
  }

  @Override
  protected Results work(Entries entries) {
    Conductor wire = Wire.chosen(entries);
    double supply = entries.in("supply", Unit.VOLT);
    double current = entries.in("current", Unit.AMPERE);
    double length = entries.in("length", Unit.METRE);
    double temperature = entries.in("wire-temperature", Unit.CELSIUS);
    double drop = wire.drop(current, length, temperature);
    Results results = new Results();
    if (drop < supply) {
      results.with("left", supply - drop, Unit.VOLT);
    }
    return results
        .with("drop", drop, Unit.VOLT)
        .with("share", 100 * drop / supply, Unit.PERCENT)
        .with("resistance", drop / current, Unit.OHM)
        .with(
            "longest",
            wire.longestRun(current, temperature, entries.fraction("limit") * supply),
            Unit.METRE)
        .with("carries", WireProtection.largest(wire), Unit.AMPERE);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    return Wire.thickEnough(
        Wire.chosen(entries),
        entries.in("supply", Unit.VOLT),
        Wire.carried(entries, entries.in("current", Unit.AMPERE)),
        lost(entries, results));
  }

  private static Meaning lost(Entries entries, Results results) {
    double share = results.in("share", Unit.PERCENT) / 100;
    String reach =
        entries.choice("size").words()
            + " keeps within "
            + percent(entries.fraction("limit"))
            + " up to "
            + metres(results.in("longest", Unit.METRE))
            + ".";
    if (!results.has("left")) {
      return Meaning.of(
          "This wire cannot carry that current over this length at all: it would take more than"
              + " the whole voltage.",
          reach);
    }
    String left =
        "Under this load expect "
            + tell(results.in("left", Unit.VOLT), Unit.VOLT)
            + " at the end; a reading clearly below that speaks for a bad joint rather than for"
            + " the wire.";
    return share > entries.fraction("limit")
        ? Meaning.of(
            "The wire is too thin or too long: it loses " + percent(share) + ". " + reach, left)
        : Meaning.of("Its loss is small enough: " + percent(share) + " at this load.", left);
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.warning(
            "Mains can kill. Only an electrician reads voltage at open mains terminals, and joins"
                + " or changes a feeder."));
  }
}
