package yett.worksheet.earthing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.EarthRod;
import yett.calculation.Range;
import yett.calculation.Soil;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Resistance of one rod: ρ/(2 π L) (ln(4 L/a) - 1). Source: {@link EarthRod}, {@link Soil}. */
final class EarthRodSheet extends Worksheet {
  EarthRodSheet() {
    super(Subject.EARTHING, "earth-rod", "resistance of one earth rod");
  }

  @Override
  public List<Input> inputs() {
    return List.of(Rod.soil(), Rod.resistivity(), Rod.length(), Rod.diameter(), Rod.limit());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("resistivity-used", Unit.OHM_METRE, "soil resistivity"),
        Output.reading("resistance", Unit.OHM, "resistance of the rod"),
        Output.text("range", "in soils of that kind"),
        Output.reading("soil-for-limit", Unit.OHM_METRE, "soil that just does"));
  }

  @Override
  public String formula() {
    return "R = r/(2 pi L) (ln(4 L/a) - 1); r resistivity of the soil, L length in the soil, a"
        + " radius (half the diameter)";
  }

  @Override
  public String validity() {
    return "Uniform soil, rod far longer than thick, all of it in the soil. Soils of one name"
        + " differ a hundredfold, and one soil by half over the year: a figure from the"
        + " table is a guess, only a reading counts (earth-reading).";
  }

  @Override
  public String source() {
    return "H. B. Dwight 1936, in IEEE 142; MIL-HDBK-419A; soils from National Bureau of Standards"
        + " report 108 and a published earthing table; 8 ft, 5/8 in and 25 ohm from NEC"
        + " 250.52 and 250.53";
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
    double length = Rod.length(entries);
    double radius = Rod.radius(entries);
    double resistivity = Rod.resistivity(entries);
    Results results =
        new Results()
            .with("resistivity-used", resistivity, Unit.OHM_METRE)
            .with("resistance", EarthRod.single(resistivity, length, radius), Unit.OHM)
            .with(
                "soil-for-limit",
                EarthRod.resistivity(entries.in("limit", Unit.OHM), length, radius),
                Unit.OHM_METRE);
    if (!entries.has("resistivity")) {
      Range range = Rod.soil(entries).range();
      results.with(
          "range",
          tell(EarthRod.single(range.low(), length, radius), Unit.OHM)
              + " to "
              + tell(EarthRod.single(range.high(), length, radius), Unit.OHM));
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double resistance = results.in("resistance", Unit.OHM);
    double limit = entries.in("limit", Unit.OHM);
    return Meaning.of(
        resistance <= limit
            ? "One rod is likely to do: about "
                + tell(resistance, Unit.OHM)
                + " where "
                + tell(limit, Unit.OHM)
                + " is asked for. A reading has to show it."
            : "One rod is not likely to do: about "
                + tell(resistance, Unit.OHM)
                + " where "
                + tell(limit, Unit.OHM)
                + " is asked for. Plan a second one, six feet (1.8 m) away or more.");
  }
}
