package yett.worksheet.earthing;

import yett.calculation.EarthRod;
import yett.calculation.Soil;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Input;
import yett.worksheet.Note;
import yett.worksheet.Values;

/** Inputs that the calculations of earth rods share. */
final class Rod {
  static final String DECIDES =
      "The local code and the authority decide what earthing a gate needs and who may build it. A"
          + " rod does not clear a fault: the protective (equipment grounding) conductor must.";
  static final Note LIVE_EARTH =
      Note.danger(
          "An earth lead may carry fault current, and the end that is taken off becomes live. Shock"
              + " can kill. Isolate and prove dead before a rod is taken off for a reading; call"
              + " before you drive a rod, cables and gas lie in the ground.");

  /** Smallest spacing (m) of rods, 6 ft: NEC 250.53(A)(3), from memory. */
  static final double LEAST_SPACING = 6 * 0.3048;

  static final String TOO_THICK =
      "A rod is far longer than thick; look at the units of length and diameter.";
  static final String WHICH_SOIL =
      "Give soil or resistivity, such as soil=clay or resistivity=100 ohm m.";

  private Rod() {}

  static Input soil() {
    return Input.choice(
            "soil",
            "kind of soil, unless its resistivity is known",
            Choice.each(Soil.class, Soil::words))
        .mayBeLeftOut();
  }

  static Input resistivity() {
    return Input.reading("resistivity", Unit.OHM_METRE, "resistivity of the soil, if measured")
        .mayBeLeftOut()
        .possible(0.5, 100000);
  }

  static Input length() {
    return Input.reading("length", Unit.METRE, "length of the rod in the soil")
        .usually("8 ft")
        .possible(0.3, 30);
  }

  static Input diameter() {
    return Input.reading("diameter", Unit.MILLIMETRE, "diameter of the rod")
        .usually("5/8 in")
        .possible(5, 60);
  }

  static Input limit() {
    return Input.reading("limit", Unit.OHM, "resistance that is asked for")
        .usually("25 ohm")
        .possible(0.1, 1000);
  }

  /** Radius (m). */
  static double radius(Values v) {
    return v.in("diameter", Unit.METRE) / 2;
  }

  static boolean isThick(Values v) {
    return v.of("length") <= 10 * radius(v);
  }

  static Soil soil(Values v) {
    return v.choice("soil", Soil.class);
  }

  /** Resistivity (ohm m): as measured, or the usual one of the soil. */
  static double resistivity(Values v) {
    return v.has("resistivity") ? v.of("resistivity") : soil(v).usual();
  }

  /** Resistance (ohm) of one rod in soil of a resistivity (ohm m). */
  static double single(Values v, double resistivity) {
    return EarthRod.single(resistivity, v.of("length"), radius(v));
  }
}
