package yett.worksheet.earthing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yett.calculation.Soil;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Note;

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

  /** m from rod to rod, 6 ft: NEC 250.53(A)(3), from memory. */
  static final double LEAST_SPACING = 6 * 0.3048;

  private Rod() {}

  static Input soil() {
    List<Choice> soils = new ArrayList<>();
    for (Soil soil : Soil.values()) {
      soils.add(new Choice(soil.name().toLowerCase(Locale.ROOT).replace('_', '-'), soil.words()));
    }
    return Input.choice("soil", "kind of soil, unless its resistivity is known", soils)
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

  static double length(Entries entries) {
    return entries.in("length", Unit.METRE);
  }

  static double radius(Entries entries) {
    double radius = entries.in("diameter", Unit.METRE) / 2;
    if (length(entries) <= 10 * radius) {
      throw new InputException(
          "A rod is far longer than thick; look at the units of length and diameter.");
    }
    return radius;
  }

  static Soil soil(Entries entries) {
    return Soil.valueOf(entries.choice("soil").id().toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** ohm m: as measured, or what is usual in that soil. */
  static double resistivity(Entries entries) {
    if (entries.has("resistivity")) {
      return entries.in("resistivity", Unit.OHM_METRE);
    }
    if (!entries.has("soil")) {
      throw new InputException(
          "Give soil or resistivity, such as soil=clay or resistivity=100 ohm m.");
    }
    return soil(entries).usual();
  }
}
