package yett.worksheet.feeder;

import java.util.List;
import java.util.Optional;
import yett.calculation.Conductor;
import yett.calculation.WireProtection;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * The smallest wire of a table whose voltage drop 2 I L R' is within a limit and that may carry the
 * current. Source: {@link Conductor}, {@link WireProtection}.
 */
final class FeederSize extends Worksheet {
  FeederSize() {
    super(
        Subject.FEEDER, "feeder-size", "smallest wire that carries a load and keeps within a loss");
    asks(
        Wire.supply(),
        Wire.current(),
        Wire.length(),
        Wire.limit(),
        choice(
                "table",
                "table of sizes",
                new Choice("awg", "American sizes (AWG)"),
                new Choice("mm2", "metric sizes (mm2)"))
            .usually("awg"),
        Wire.strands(),
        Wire.temperature(),
        Wire.breaker());
    tells(
        text("size", "smallest size").by(v -> named(v, smallest(v))),
        number("carries", Unit.AMPERE, "largest fuse for it")
            .by(v -> WireProtection.largest(smallest(v).get()))
            .given("drop"),
        text("for-voltage", "for the voltage alone").by(v -> named(v, enough(v))),
        number("drop", Unit.VOLT, "voltage lost with it")
            .by(v -> Wire.drop(v, smallest(v).get(), v.of("current")))
            .when(v -> smallest(v).isPresent()),
        number("share", Unit.PERCENT, "share of the supply")
            .by(v -> 100 * v.of("drop") / v.of("supply"))
            .given("drop"),
        text("next", "one size smaller")
            .by(
                v ->
                    Wire.allowed(smaller(v))
                        + " and would lose "
                        + NumberWords.told(
                            100 * Wire.drop(v, smaller(v), v.of("current")) / v.of("supply"),
                            Unit.PERCENT))
            .when(v -> smallest(v).map(sizes(v)::indexOf).orElse(0) > 0));
    formula(
        "the smallest size with 2 I L R' <= limit that a fuse of I may protect, or"
            + " the breaker that is there; I current, L length one way, R' resistance"
            + " per length at the wire's temperature");
    validity(
        "18 to 1/0 AWG and 0.75 to 50 mm2, copper; direct current, or one phase at 50 or 60 Hz up"
            + " to about 4 AWG (25 mm2). The current is a floor for ordinary laying: bundles, hot"
            + " places and loads that never rest ask for more.");
    source(
        Wire.SOURCE
            + "; "
            + Wire.FLOOR
            + "; the advised 3 % is an informational note to NEC 210.19");
    lastWord(Wire.DECIDES);
    notes(Wire.TOO_THIN);
    says(
        when(
            v -> enough(v).isEmpty(),
            "No wire of the table keeps within {limit}: feed a higher voltage and step it down at"
                + " the gate, or shorten the run."),
        when(
            v -> !v.has("drop"),
            "No wire of the table carries so much: it takes a larger one or a smaller fuse."),
        when(
            v -> v.text("size").equals(v.text("for-voltage")),
            "{size} will do, with {share} lost at {current typed}; a motor that starts draws more"
                + " for a second, so leave room."),
        otherwise(
            "For the voltage alone {for-voltage} would do, but so thin a wire may not be laid for"
                + " this: take {size} at least, with {share} lost at {current typed}."));
  }

  private static List<Conductor> sizes(Values v) {
    return Wire.sizes(v.chose("table", "awg"), v.choice("strands").id());
  }

  /** The largest acceptable voltage drop (V). */
  private static double limit(Values v) {
    return v.fraction("limit") * v.of("supply");
  }

  private static Optional<Conductor> enough(Values v) {
    return Conductor.smallest(
        sizes(v), v.of("current"), v.of("length"), v.of("wire-temperature"), limit(v));
  }

  private static Optional<Conductor> smallest(Values v) {
    return WireProtection.smallest(
        sizes(v),
        v.of("supply"),
        v.of("current"),
        Wire.carried(v),
        v.of("length"),
        v.of("wire-temperature"),
        limit(v));
  }

  private static Conductor smaller(Values v) {
    return sizes(v).get(sizes(v).indexOf(smallest(v).get()) - 1);
  }

  private static String named(Values v, Optional<Conductor> wire) {
    List<Conductor> sizes = sizes(v);
    return wire.map(Conductor::size)
        .orElseGet(() -> "none up to " + sizes.get(sizes.size() - 1).size());
  }
}
