package yett.worksheet.sensing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.EdgeResistor;
import yett.calculation.Range;
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
 * What a contact edge with an end resistor reads, and what a wrong reading means. Source: {@link
 * EdgeResistor}.
 */
final class EdgeCheck extends Worksheet {
  EdgeCheck() {
    super(Subject.SENSING, "edge-resistor", "what an idle contact edge ought to read");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("resistor", Unit.KILOHM, "end resistor of the edge")
            .usually("8.2 kohm")
            .possible(0.1, 1000),
        Input.reading("tolerance", Unit.PERCENT, "its tolerance").usually("5 %").possible(0.1, 50),
        Input.reading("leads", Unit.OHM, "resistance of the leads")
            .usually("1 ohm")
            .possible(0, 1000),
        Input.reading("measured", Unit.KILOHM, "idle reading, edge disconnected")
            .mayBeLeftOut()
            .possible(0, 100000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("low", Unit.KILOHM, "lowest that is right"),
        Output.reading("high", Unit.KILOHM, "highest that is right"),
        Output.reading("two-parallel", Unit.KILOHM, "two side by side"),
        Output.reading("two-series", Unit.KILOHM, "two in a row"),
        Output.reading("leak", Unit.KILOHM, "leak across the edge"),
        Output.reading("extra", Unit.KILOHM, "too much in the wire"));
  }

  @Override
  public String formula() {
    return "R (1 - t) to R (1 + t), and the leads; side by side R/2, in a row 2 R; leak R M/(R - M)"
        + " for a reading M below R, extra M - R above it";
  }

  @Override
  public String validity() {
    return "Direct current, edge disconnected from its switching unit and not pressed. The unit's"
        + " own window may be wider or narrower: its data sheet says.";
  }

  @Override
  public String source() {
    return "Ohm's law; 8.2 kohm published for closed-circuit edges, 10 kohm common practice in"
        + " North America; in"
        + " service down to 5.4 kohm for 8.2 kohm from an edge data sheet, a tenth over by considered"
        + " judgement";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The edge's and the switching unit's instructions say which resistor belongs there; edges"
            + " are tested after ISO 13856-2, UL 325 or EN 12453.");
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.warning(
            "A gate whose edge is disconnected or bridged does not feel a person. Crushing. Keep it"
                + " switched off and signed meanwhile, never bridge an edge to make it run, and"
                + " prove the edge before you leave."));
  }

  @Override
  protected Results work(Entries entries) {
    double resistor = entries.in("resistor", Unit.OHM);
    double leads = entries.in("leads", Unit.OHM);
    Range window = EdgeResistor.window(resistor, entries.fraction("tolerance"), leads);
    Results results =
        new Results()
            .with("low", window.low(), Unit.OHM)
            .with("high", window.high(), Unit.OHM)
            .with("two-parallel", EdgeResistor.parallel(resistor, resistor) + leads, Unit.OHM)
            .with("two-series", 2 * resistor + leads, Unit.OHM);
    if (entries.has("measured")) {
      double measured = entries.in("measured", Unit.OHM);
      if (measured > window.high()) {
        results.with("extra", measured - leads - resistor, Unit.OHM);
      } else if (measured < window.low() && measured > leads) {
        results.with("leak", EdgeResistor.leak(resistor, measured - leads), Unit.OHM);
      }
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double low = results.in("low", Unit.KILOHM);
    double high = results.in("high", Unit.KILOHM);
    String window =
        "Idle it reads "
            + tell(low, Unit.KILOHM)
            + " to "
            + tell(high, Unit.KILOHM)
            + ", pressed near 0, with a broken wire nothing.";
    if (!entries.has("measured")) {
      return Meaning.of(window);
    }
    double measured = entries.in("measured", Unit.KILOHM);
    double half = results.in("two-parallel", Unit.KILOHM);
    double twice = results.in("two-series", Unit.KILOHM);
    double tolerance = entries.fraction("tolerance");
    if (measured >= low && measured <= high) {
      return Meaning.of(
          window,
          tell(measured, Unit.KILOHM) + " is right; press it all along to see that it falls to 0.");
    }
    if (Math.abs(measured / half - 1) <= tolerance) {
      return Meaning.of(
          window, "Two edges side by side, each with its resistor: wire them in a row with one.");
    }
    if (Math.abs(measured / twice - 1) <= tolerance) {
      return Meaning.of(
          window, "Two edges in a row, both with a resistor: only the last one may have it.");
    }
    Range sound = EdgeResistor.sound(entries.in("resistor", Unit.OHM));
    if (sound.contains(1000 * measured)) {
      return Meaning.of(
          window,
          "Still good, as "
              + tell(sound.low() / 1000, Unit.KILOHM)
              + " to "
              + tell(sound.high() / 1000, Unit.KILOHM)
              + " are in service; but "
              + (measured < low
                  ? "some water or dirt leaks across it: dry its ends and look again."
                  : "a joint in it is no longer tight."));
    }
    return Meaning.of(
        window,
        measured < 0.05 * low
            ? "It reads as pressed: something leans on it, or its wires touch."
            : measured < low
                ? "Water or dirt leaks across it; it may read as pressed when it gets wetter."
                : measured > 20 * high
                    ? "The wire is broken, or the resistor is missing."
                    : "A corroded joint, or another resistor than thought.");
  }
}
