package yett.worksheet.earthing;

import yett.calculation.EarthRod;
import yett.calculation.Soil;
import yett.quantity.Unit;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Resistance of one rod: ρ/(2 π L) (ln(4 L/a) - 1). Source: {@link EarthRod}, {@link Soil}. */
final class EarthRodSheet extends Worksheet {
  EarthRodSheet() {
    super(Subject.EARTHING, "earth-rod", "resistance of one earth rod");
    asks(Rod.soil(), Rod.resistivity(), Rod.length(), Rod.diameter(), Rod.limit());
    refuses(Rod::isThick, Rod.TOO_THICK);
    refuses(v -> !v.has("resistivity") && !v.has("soil"), Rod.WHICH_SOIL);
    tells(
        number("resistivity-used", Unit.OHM_METRE, "soil resistivity").by(Rod::resistivity),
        number("resistance", Unit.OHM, "resistance of the rod")
            .by(v -> Rod.single(v, v.of("resistivity-used"))),
        text("range", "in soils of that kind")
            .by(
                v ->
                    NumberWords.told(Rod.single(v, Rod.soil(v).range().low()), Unit.OHM)
                        + " to "
                        + NumberWords.told(Rod.single(v, Rod.soil(v).range().high()), Unit.OHM))
            .when(v -> !v.has("resistivity")),
        number("soil-for-limit", Unit.OHM_METRE, "soil just good enough")
            .by(v -> EarthRod.resistivity(v.of("limit"), v.of("length"), Rod.radius(v))));
    formula(
        "R = r/(2 pi L) (ln(4 L/a) - 1); r resistivity of the soil, L length in the soil, a radius"
            + " (half the diameter)");
    validity(
        "Uniform soil, rod far longer than thick, all of it in the soil. Soils of one name differ a"
            + " hundredfold, and one soil by half over the year: a figure from the table is a"
            + " guess, only a reading counts (earth-reading).");
    source(
        "H. B. Dwight 1936, in IEEE 142; MIL-HDBK-419A; soils from National Bureau of Standards"
            + " report 108 and a published earthing table; 8 ft, 5/8 in and 25 ohm from NEC 250.52"
            + " and 250.53");
    lastWord(Rod.DECIDES);
    notes(Rod.LIVE_EARTH);
    says(
        when(
            v -> v.of("resistance") <= v.of("limit"),
            "One rod is likely to do: about {resistance} where {limit} is asked for. A reading has"
                + " to show it."),
        otherwise(
            "One rod is not likely to do: about {resistance} where {limit} is asked for. Plan a"
                + " second one, six feet (1.8 m) away or more."));
  }
}
