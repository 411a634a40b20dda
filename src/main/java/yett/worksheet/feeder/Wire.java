package yett.worksheet.feeder;

import static yett.worksheet.Statement.when;

import java.util.List;
import java.util.stream.Stream;
import yett.calculation.Conductor;
import yett.calculation.WireProtection;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Note;
import yett.worksheet.NumberWords;
import yett.worksheet.Output;
import yett.worksheet.Statement;
import yett.worksheet.Values;

/** The inputs for the wire. */
final class Wire {
  static final String SOURCE =
      "NEC (NFPA 70) chapter 9 table 8, uncoated copper at 75 degC, with its note for other"
          + " temperatures; IEC 60228, plain copper, maximum at 20 degC";
  static final String FLOOR =
      "NEC 240.4(D) for 18 to 10 AWG; larger ones by the 60 degC column of NEC table 310.16, mm2 by"
          + " IEC 60364-5-52 (two loaded wires, PVC, conduit on a wall), least sizes over 50 V 14"
          + " AWG and 1.5 mm2, all three from memory";
  static final Note TOO_THIN =
      Note.warning(
          "A wire that is too thin for its fuse or breaker overheats before that trips. Fire. Fit"
              + " no larger one to stop nuisance trips, and lay no thinner wire behind the one that"
              + " is there.");
  static final String DECIDES =
      "What current a wire may carry, its breaker and its way are for the local code and a licensed"
          + " electrician; they may ask for a larger wire than the voltage does.";

  private static final double COLDEST = -40;
  private static final double HOTTEST = 100;

  private Wire() {}

  static Input length() {
    return Input.reading("length", Unit.METRE, "length of the wire, one way").possible(0.1, 5000);
  }

  static Input size() {
    List<Choice> sizes =
        Stream.concat(Conductor.AWG_STRANDED.stream(), Conductor.IEC_CLASS_2.stream())
            .map(c -> Choice.wire(c.size()))
            .toList();
    return Input.choice("size", "size of the wire, copper", sizes);
  }

  static Input strands() {
    return Input.choice(
            "strands",
            "how the wire is made",
            new Choice("stranded", "stranded (IEC class 2)"),
            new Choice("solid", "solid (IEC class 1)"),
            new Choice("flexible", "flexible (IEC class 5)"))
        .usually("stranded");
  }

  static Input breaker() {
    return Input.reading("breaker", Unit.AMPERE, "fuse or breaker before the wire")
        .mayBeLeftOut()
        .possible(0.5, 1000);
  }

  static Input supply() {
    return Input.reading("supply", Unit.VOLT, "voltage where the wire begins").possible(1, 690);
  }

  static Input current() {
    return Input.reading("current", Unit.AMPERE, "current under load").possible(0.001, 400);
  }

  static Input limit() {
    return Input.reading("limit", Unit.PERCENT, "largest loss wanted")
        .usually("3 %")
        .possible(0.1, 50);
  }

  /** The current (A) that the wire has to carry: the load, or the rating of its breaker. */
  static double carried(Values v) {
    return v.has("breaker") ? Math.max(v.of("current"), v.of("breaker")) : v.of("current");
  }

  /** Voltage drop (V) in both wires. */
  static double drop(Values v, Conductor wire, double current) {
    return wire.drop(current, v.of("length"), v.of("wire-temperature"));
  }

  /** The largest fuse or breaker for a wire, as text for a sentence. */
  static String allowed(Conductor wire) {
    return wire.size()
        + " may be fused at "
        + NumberWords.told(WireProtection.largest(wire), Unit.AMPERE)
        + " at most";
  }

  static Output allowed() {
    return new Output.Wording("allowed", "").by(v -> allowed(chosen(v)));
  }

  /** Statements for a wire too thin for what it has to carry, whatever its voltage drop. */
  static Statement[] tooThin() {
    return new Statement[] {
      when(
              v -> !WireProtection.carries(chosen(v), v.of("carried")),
              "Too thin for {carried}, however little it loses: {allowed}.")
          .warning(TOO_THIN),
      when(
              v -> !WireProtection.mayBeLaid(chosen(v), v.of("supply")),
              "{size} is thinner than any wire that is laid for more than 50 V.")
          .warning(TOO_THIN)
    };
  }

  static Input temperature() {
    return Input.reading(
            "wire-temperature", Unit.CELSIUS, "temperature of the wire; warmer loses more")
        .usually("75 degC")
        .possible(COLDEST, HOTTEST);
  }

  static Conductor chosen(Values v) {
    String size = v.text("size");
    String strands = v.choice("strands").id();
    return sizes(size.endsWith("AWG"), strands).stream()
        .filter(c -> c.size().equals(size))
        .findFirst()
        .orElseThrow(
            () ->
                new InputException(
                    "The tables have no "
                        + strands
                        + " wire of "
                        + size
                        + ". Try strands=stranded."));
  }

  /** All sizes of a series, from the smallest. */
  static List<Conductor> sizes(boolean american, String strands) {
    List<Conductor> sizes =
        switch (strands) {
          case "stranded" -> american ? Conductor.AWG_STRANDED : Conductor.IEC_CLASS_2;
          case "solid" -> american ? Conductor.AWG_SOLID : Conductor.IEC_CLASS_1;
          default -> american ? List.<Conductor>of() : Conductor.IEC_CLASS_5;
        };
    if (sizes.isEmpty()) {
      throw new InputException(
          "The tables have no "
              + strands
              + (american ? " wire in AWG" : " wire in mm2")
              + ". Try strands=stranded.");
    }
    return sizes;
  }
}
