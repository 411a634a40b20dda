package yett.worksheet.travel;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.calculation.Marker;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Where the marker is with the gate closed and open, and whether it stays clear of sprocket and
 * idlers. Source: {@link Marker}.
 */
final class MarkerPlace extends Worksheet {
  MarkerPlace() {
    super(Subject.TRAVEL, "marker-place", "where the marker sits, and whether it stays clear");
    asks(
        reading("run", Unit.METRE, "gate closed: from the far bracket to the first idler")
            .possible(0.3, 40),
        reading("marker", Unit.METRE, "from the far bracket to the marker, along the chain")
            .possible(0, 60),
        TravelInputs.opening(),
        reading("wheels", Unit.MILLIMETRE, "chain from the first idler to the last")
            .usually("300 mm")
            .possible(20, 3000),
        reading(
                "sensor",
                Unit.MILLIMETRE,
                "from the first idler to the sensor, along the chain; before it negative")
            .usually("150 mm")
            .possible(-3000, 3000),
        reading("keep-clear", Unit.MILLIMETRE, "room to keep from the wheels at rest")
            .usually("50 mm")
            .possible(0, 1000));
    tells(
        text("closed", "gate closed, it sits").by(v -> place(v, marker(v).whenClosed())),
        text("open", "gate open, it sits").by(v -> place(v, marker(v).whenOpen())),
        number("at-sensor", Unit.METRE, "passes the sensor at")
            .by(v -> atSensor(v).get())
            .when(v -> atSensor(v).isPresent()),
        number("wheels-from", Unit.METRE, "runs onto wheels at")
            .by(v -> marker(v).onWheels().get().low())
            .when(v -> marker(v).onWheels().isPresent()),
        number("wheels-to", Unit.METRE, "leaves the wheels at")
            .by(v -> marker(v).onWheels().get().high())
            .given("wheels-from"),
        number("clearance", Unit.MILLIMETRE, "nearest to the wheels")
            .by(Unit.METRE, v -> marker(v).clearance()));
    works(phrase("at-rest").by(MarkerPlace::nearAtRest));
    formula(
        "place = d - (r - m), counted from the first idler towards the last; d leaf open by, r run"
            + " with the gate closed, m marker from the far bracket; at the sensor d = q + r - m");
    validity(
        "Tape along the chain, from the bracket at the leading edge. Slack moves it by a few"
            + " centimetres. Where the leaf goes past its limits on the stops, it goes that much"
            + " further.");
    source(TravelInputs.GEOMETRY);
    lastWord(
        "Where the marker belongs, and whether it may run over the wheels, is stated in"
            + " the maker's drawing or the record of the gate.");
    notes(Cautions.CHAIN);
    says(
        when(
            v -> v.has("at-sensor"),
            "The marker passes the sensor when the leaf is {at-sensor} open, of {opening}."),
        otherwise(
            "The marker never passes the sensor between closed and open: the controller cannot find"
                + " its position again. Move the marker."));
    says(
        when(
            v -> v.has("wheels-from"),
            "It runs over the wheels from {wheels-from} to {wheels-to} open: only a marker flat on"
                + " the side of its link, clear of teeth, idlers and sensor, may do that."),
        otherwise("It never comes nearer to the wheels than {clearance}."));
    says(
        when(
            v -> !v.text("at-rest").isEmpty(),
            "With the gate {at-rest} it rests nearer than {keep-clear} to the wheels, or on them:"
                + " move it, or a little coasting jams it."));
  }

  private static Marker marker(Values v) {
    return new Marker(v.of("run"), v.of("marker"), v.metres("wheels"), v.of("opening"));
  }

  private static Optional<Double> atSensor(Values v) {
    return marker(v).openAt(v.metres("sensor"));
  }

  private static String place(Values v, double place) {
    double wheels = v.metres("wheels");
    if (place < 0) {
      return NumberWords.told(-place, Unit.METRE) + " before the first idler";
    }
    return place > wheels
        ? NumberWords.told(place - wheels, Unit.METRE) + " behind the last idler"
        : "on the wheels, " + NumberWords.told(place, Unit.METRE) + " from the first idler";
  }

  /** When the marker rests too near to the wheels: closed, open, both or never. */
  private static String nearAtRest(Values v) {
    double keep = v.metres("keep-clear");
    Stream<String> closed = Stream.of("closed").filter(c -> marker(v).clearanceClosed() < keep);
    Stream<String> open = Stream.of("open").filter(o -> marker(v).clearanceOpen() < keep);
    return Stream.concat(closed, open).collect(Collectors.joining(" and "));
  }
}
