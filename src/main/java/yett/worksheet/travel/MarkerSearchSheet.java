package yett.worksheet.travel;

import static yett.worksheet.Tell.metres;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.MarkerSearch;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** How far the leaf creeps to find its reference. Source: {@link MarkerSearch}. */
final class MarkerSearchSheet extends Worksheet {
  private static final Choice OPEN = new Choice("open", "towards open first");
  private static final Choice CLOSED = new Choice("closed", "towards closed first");

  MarkerSearchSheet() {
    super(Subject.TRAVEL, "marker-search", "how far the leaf creeps to find its reference");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Ways.opening(),
        Input.reading(
                "at-sensor",
                Unit.METRE,
                "how far open the leaf is as the marker passes the sensor (marker-place)")
            .possible(0, 40),
        Input.choice("first", "which way the search begins", OPEN, CLOSED).usually("open"),
        Input.reading("creep", Unit.METRE_PER_SECOND, "speed of the search")
            .usually("0.1 m/s")
            .possible(0.005, 1),
        Input.reading("stands", Unit.METRE, "how far open the leaf stands now")
            .possible(0, 40)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("longest", Unit.METRE, "longest search"),
        Output.reading("longest-time", Unit.SECOND, "that takes"),
        Output.reading("from-here", Unit.METRE, "search from here"),
        Output.reading("time-from-here", Unit.SECOND, "this takes"));
  }

  @Override
  public String formula() {
    return "straight to the marker if the search begins towards it, else to the end and back; longest"
        + " of: other end to the marker, twice from the marker to the end it runs to first; time ="
        + " way/creep";
  }

  @Override
  public String validity() {
    return "A search at one speed that turns at once. Without a marker on the way it runs to the"
        + " stops at both ends and gives up.";
  }

  @Override
  public String source() {
    return Ways.GEOMETRY + "; creep of 0.1 m/s common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Ways.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.warning(
            "After a loss of both supplies the leaf moves without knowing where it is. Crushing at"
                + " either end. Give the supplies back only with nobody in its way, somebody at the"
                + " stop button, and both end stops sound."));
  }

  private static MarkerSearch search(Entries entries) {
    double opening = entries.in("opening", Unit.METRE);
    double marker = entries.in("at-sensor", Unit.METRE);
    if (marker > opening) {
      throw new InputException(
          "at-sensor: "
              + metres(marker)
              + " is beyond the opening of "
              + metres(opening)
              + "; such a marker never passes the sensor. marker-place tells where it does.");
    }
    return new MarkerSearch(opening, marker, entries.choice("first").equals(OPEN));
  }

  @Override
  protected Results work(Entries entries) {
    MarkerSearch search = search(entries);
    double creep = entries.in("creep", Unit.METRE_PER_SECOND);
    Results results =
        new Results()
            .with("longest", search.longest(), Unit.METRE)
            .with("longest-time", search.longest() / creep, Unit.SECOND);
    if (entries.has("stands")) {
      double stands = entries.in("stands", Unit.METRE);
      if (stands > search.opening()) {
        throw new InputException("stands: the leaf cannot be further open than the opening.");
      }
      results
          .with("from-here", search.from(stands), Unit.METRE)
          .with("time-from-here", search.from(stands) / creep, Unit.SECOND);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Meaning meaning =
        Meaning.of(
            "Give it "
                + tell(results.in("longest-time", Unit.SECOND), Unit.SECOND)
                + ": after "
                + metres(results.in("longest", Unit.METRE))
                + " of creeping without a change to full speed the marker was not seen; look at"
                + " marker, gap and sensor.");
    return results.has("from-here")
        ? meaning.and(
            "From where it stands the marker should pass after "
                + metres(results.in("from-here", Unit.METRE))
                + ", "
                + tell(results.in("time-from-here", Unit.SECOND), Unit.SECOND)
                + ".")
        : meaning;
  }
}
