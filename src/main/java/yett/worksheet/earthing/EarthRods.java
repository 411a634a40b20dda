package yett.worksheet.earthing;

import yett.calculation.EarthRod;
import yett.quantity.Unit;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Resistance of equal rods joined together, from one of them. Source: {@link EarthRod}. */
final class EarthRods extends Worksheet {
  EarthRods() {
    super(Subject.EARTHING, "earth-rods", "resistance of several rods joined");
    asks(
        whole("rods", "number of rods").usually("2").possible(2, 24),
        reading("spacing", Unit.METRE, "distance from rod to rod")
            .usually("6 ft")
            .possible(0.1, 100),
        reading("one-rod", Unit.OHM, "resistance of one rod, if measured")
            .mayBeLeftOut()
            .possible(0.1, 100000),
        Rod.soil(),
        Rod.resistivity(),
        Rod.length(),
        Rod.diameter(),
        Rod.limit());
    refuses(v -> !v.has("one-rod") && !v.has("resistivity") && !v.has("soil"), Rod.WHICH_SOIL);
    refuses(Rod::isThick, Rod.TOO_THICK);
    remarks(
        v -> v.of("spacing") < Rod.LEAST_SPACING * (1 - 1e-9),
        "Rods {spacing typed} apart stand closer than the 6 ft (1.8 m) that the NEC asks for; they"
            + " share the soil, and the second hardly helps.");
    remarks(
        v -> v.whole("rods") > 2 && v.of("spacing") < v.of("length"),
        "Rods closer than their length share the soil; together they will have more than this.");
    tells(
        number("single", Unit.OHM, "one rod")
            .by(v -> v.has("one-rod") ? v.of("one-rod") : Rod.single(v, Rod.resistivity(v))),
        number("together", Unit.OHM, "all together")
            .by(v -> v.of("single") * share(v, v.whole("rods"))),
        number("share", Unit.PERCENT, "of one rod").by(v -> 100 * share(v, v.whole("rods"))),
        text("needed", "rods for the limit").by(EarthRods::needed));
    formula(
        "two rods: R1 (1 + M/S)/2, S = 2 (ln(4 L/a) - 1), M = 2 arsinh(2 L/s) - sqrt(4 + (s/L)2) +"
            + " s/L; s spacing, L length, a radius; more rods: R1 F/n, F from 1.29 (3) to 2.16"
            + " (24)");
    validity(
        "Equal rods in uniform soil. For three and more the spacing is about the length or more;"
            + " closer ones help less than this says. Rods never come down to R1/n.");
    source(
        "mean potential of evenly fed rods (Dwight), whose series IEEE 142 prints; multiplying"
            + " factors of IEEE 142 from memory; two rods 6 ft apart at least by NEC 250.53(A)(3),"
            + " from memory");
    lastWord(Rod.DECIDES);
    notes(Rod.LIVE_EARTH);
    says(
        when(
            v -> v.of("together") <= v.of("limit"),
            "Together they have {share} of one rod, {together}: within the {limit}."),
        otherwise(
            "Together they have {share} of one rod, {together}, still over {limit}: deeper rods"
                + " reach moister soil and help more than further ones beside them."));
  }

  /** Resistance of this number of rods as a fraction of that of one. */
  private static double share(Values v, int rods) {
    if (rods == 1) {
      return 1;
    }
    return rods == 2
        ? EarthRod.pairOverSingle(v.of("length"), Rod.radius(v), v.of("spacing"))
        : EarthRod.severalOverSingle(rods);
  }

  private static String needed(Values v) {
    for (int rods = 1; rods <= 24; rods++) {
      if (v.of("single") * share(v, rods) <= v.of("limit")) {
        return Integer.toString(rods);
      }
    }
    return "more than 24";
  }
}
