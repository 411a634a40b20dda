package yett.worksheet.travel;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.metres;

import java.util.List;
import java.util.Optional;
import yett.calculation.Marker;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Where the marker sits with the gate closed and open, and whether it stays clear of sprocket and
 * idlers. Source: {@link Marker}.
 */
final class MarkerPlace extends Worksheet {
  MarkerPlace() {
    super(Subject.TRAVEL, "marker-place", "where the marker sits, and whether it stays clear");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("run", Unit.METRE, "gate closed: from the far bracket to the first idler")
            .possible(0.3, 40),
        Input.reading("marker", Unit.METRE, "from the far bracket to the marker, along the chain")
            .possible(0, 60),
        Ways.opening(),
        Input.reading("wheels", Unit.MILLIMETRE, "chain from the first idler to the last")
            .usually("300 mm")
            .possible(20, 3000),
        Input.reading(
                "sensor",
                Unit.MILLIMETRE,
                "from the first idler to the sensor, along the chain; before it negative")
            .usually("150 mm")
            .possible(-3000, 3000),
        Input.reading("keep-clear", Unit.MILLIMETRE, "room to keep from the wheels at rest")
            .usually("50 mm")
            .possible(0, 1000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.text("closed", "gate closed, it sits"),
        Output.text("open", "gate open, it sits"),
        Output.reading("at-sensor", Unit.METRE, "passes the sensor at"),
        Output.reading("wheels-from", Unit.METRE, "runs onto wheels at"),
        Output.reading("wheels-to", Unit.METRE, "leaves the wheels at"),
        Output.reading("clearance", Unit.MILLIMETRE, "nearest to the wheels"));
  }

  @Override
  public String formula() {
    return "place = d - (r - m), counted from the first idler towards the last; d leaf open by, r run"
        + " with the gate closed, m marker from the far bracket; at the sensor d = q + r - m";
  }

  @Override
  public String validity() {
    return "Tape along the chain, from the bracket at the leading edge. Slack moves it by a few"
        + " centimetres. Where the leaf goes past its limits on the stops, it goes that much further.";
  }

  @Override
  public String source() {
    return Ways.GEOMETRY;
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Where the marker belongs, and whether it may run over the wheels, is for the maker's"
            + " drawing or the record of the gate.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.CHAIN);
  }

  private static Marker marker(Entries entries) {
    return new Marker(
        entries.in("run", Unit.METRE),
        entries.in("marker", Unit.METRE),
        entries.in("wheels", Unit.METRE),
        entries.in("opening", Unit.METRE));
  }

  @Override
  protected Results work(Entries entries) {
    Marker marker = marker(entries);
    Results results =
        new Results()
            .with("closed", place(marker.whenClosed(), entries))
            .with("open", place(marker.whenOpen(), entries))
            .with("clearance", marker.clearance(), Unit.METRE);
    marker
        .openAt(entries.in("sensor", Unit.METRE))
        .ifPresent(open -> results.with("at-sensor", open, Unit.METRE));
    marker
        .onWheels()
        .ifPresent(
            range ->
                results
                    .with("wheels-from", range.low(), Unit.METRE)
                    .with("wheels-to", range.high(), Unit.METRE));
    return results;
  }

  private static String place(double place, Entries entries) {
    double wheels = entries.in("wheels", Unit.METRE);
    if (place < 0) {
      return metres(-place) + " before the first idler";
    }
    return place > wheels
        ? metres(place - wheels) + " behind the last idler"
        : "on the wheels, " + metres(place) + " from the first idler";
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Marker marker = marker(entries);
    double keep = entries.in("keep-clear", Unit.METRE);
    Meaning meaning = Meaning.of(sensorSentence(entries, results), wheelSentence(marker));
    boolean closed = marker.clearanceClosed() < keep;
    boolean open = marker.clearanceOpen() < keep;
    if (closed || open) {
      return meaning.and(
          "With the gate "
              + (closed && open ? "closed and open" : closed ? "closed" : "open")
              + " it rests nearer than "
              + both(1000 * keep, Unit.MILLIMETRE, Unit.INCH)
              + " to the wheels, or on them: move it, or a little coasting jams it.");
    }
    return meaning;
  }

  private static String sensorSentence(Entries entries, Results results) {
    return results.has("at-sensor")
        ? "The marker passes the sensor when the leaf is "
            + metres(results.in("at-sensor", Unit.METRE))
            + " open, of "
            + metres(entries.in("opening", Unit.METRE))
            + "."
        : "The marker never passes the sensor between closed and open: the controller cannot find"
            + " its position again. Move the marker.";
  }

  private static String wheelSentence(Marker marker) {
    Optional<Range> over = marker.onWheels();
    return over.isPresent()
        ? "It runs over the wheels from "
            + metres(over.get().low())
            + " to "
            + metres(over.get().high())
            + " open: only a marker flat on the side of its link, clear of teeth, idlers and sensor,"
            + " may do that."
        : "It never comes nearer to the wheels than "
            + both(1000 * marker.clearance(), Unit.MILLIMETRE, Unit.INCH)
            + ".";
  }
}
