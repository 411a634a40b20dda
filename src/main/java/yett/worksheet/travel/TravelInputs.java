package yett.worksheet.travel;

import yett.quantity.Unit;
import yett.worksheet.Input;

/** Inputs that several calculations of travel share. */
final class TravelInputs {
  static final String GEOMETRY = "geometry of chain and sprocket";
  static final String DECIDES =
      "How limits are taught and what the controller does after a loss of supply is"
          + " stated in the maker's instructions.";

  private TravelInputs() {}

  static Input opening() {
    return Input.reading("opening", Unit.METRE, "way of the leaf from closed to open")
        .possible(0.3, 40);
  }

  static Input ratio() {
    return Input.reading("ratio", Unit.ONE, "turns of the motor for one turn of the sprocket")
        .possible(1, 500);
  }

  static Input teeth() {
    return Input.whole("teeth", "teeth of the drive sprocket").usually("12").possible(6, 60);
  }
}
