package yett.worksheet.travel;

import yett.calculation.MarkerSearch;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** How far the leaf creeps to find its reference. Source: {@link MarkerSearch}. */
final class MarkerSearchSheet extends Worksheet {
  MarkerSearchSheet() {
    super(Subject.TRAVEL, "marker-search", "how far the leaf creeps to find its reference");
    asks(
        TravelInputs.opening(),
        reading(
                "at-sensor",
                Unit.METRE,
                "how far open the leaf is as the marker passes the sensor (marker-place)")
            .possible(0, 40),
        choice(
                "first",
                "which way the search begins",
                new Choice("open", "towards open first"),
                new Choice("closed", "towards closed first"))
            .usually("open"),
        reading("creep", Unit.METRE_PER_SECOND, "speed of the search")
            .usually("0.1 m/s")
            .possible(0.005, 1),
        reading("stands", Unit.METRE, "how far open the leaf stands now")
            .possible(0, 40)
            .mayBeLeftOut());
    refuses(
        v -> v.of("at-sensor") > v.of("opening"),
        "at-sensor: {at-sensor} is beyond the opening of {opening}; such a marker never"
            + " passes the sensor. marker-place shows where it does.");
    refuses(
        v -> v.has("stands") && v.of("stands") > v.of("opening"),
        "stands: the leaf cannot be further open than the opening.");
    tells(
        number("longest", Unit.METRE, "longest search").by(v -> search(v).longest()),
        number("longest-time", Unit.SECOND, "that takes").by(v -> v.of("longest") / v.of("creep")),
        number("from-here", Unit.METRE, "search from here")
            .by(v -> search(v).from(v.of("stands")))
            .given("stands"),
        number("time-from-here", Unit.SECOND, "this takes")
            .by(v -> v.of("from-here") / v.of("creep"))
            .given("stands"));
    formula(
        "straight to the marker if the search begins towards it, else to the end and back; longest"
            + " of: other end to the marker, twice from the marker to the end it runs to first;"
            + " time = way/creep");
    validity(
        "A search at one speed that turns at once. Without a marker on the way it runs to the stops"
            + " at both ends and gives up.");
    source(TravelInputs.GEOMETRY + "; creep of 0.1 m/s common practice");
    lastWord(TravelInputs.DECIDES);
    notes(
        Note.warning(
            "After a loss of both supplies the leaf moves without knowing where it is. Crushing at"
                + " either end. Give the supplies back only with nobody in its way, somebody at the"
                + " stop button, and both end stops sound."));
    says(
        "Give it {longest-time}: after {longest} of creeping without a change to full speed the"
            + " marker was not seen; look at marker, gap and sensor.");
    says(
        when(
            v -> v.has("stands"),
            "From where it stands the marker should pass after {from-here}, {time-from-here}."));
  }

  private static MarkerSearch search(Values v) {
    return new MarkerSearch(v.of("opening"), v.of("at-sensor"), v.chose("first", "open"));
  }
}
