package yett.study.gate;

/** Mains, feeder, transformer with its tap, charger. */
final class Supply {
  /** V of the rectified output with the mains at its tap. */
  static final double RATED_DC = 31;

  static final double NOMINAL = 230;

  /** A that the charger gives at most. */
  static final double CHARGER_LIMIT = 3.5;

  /** A that the controller, receiver and beams take all day. */
  static final double STANDBY = 0.06;

  double service = 230;
  boolean breakerTripped;
  boolean cableDead;
  boolean transformerDead;
  double feederResistance = 0.5;
  double tap = NOMINAL;
  boolean chargerAlive = true;
  boolean fuseWhole = true;
  private final double temperature;

  Supply(double temperature) {
    this.temperature = temperature;
  }

  boolean mains() {
    return !breakerTripped && !cableDead;
  }

  /** V at the operator while it takes a current (A) from the mains. */
  double atTerminals(double current) {
    return mains() ? Math.max(0, service - current * feederResistance) : 0;
  }

  /** V of the supply, without load: the ideal transformer. */
  double dc() {
    return transformerDead ? 0 : RATED_DC * atTerminals(0.2) / tap;
  }

  /** V between neutral and earth while the operator takes a current (A): half of the drop. */
  double neutralToEarth(double current) {
    return mains() ? current * feederResistance / 2 : 0;
  }

  /** V at which twelve cells float: 2.27 V each at 25 degrees, 3 mV less for each degree more. */
  double wanted() {
    return 12 * (2.27 - 0.003 * (Math.min(40, Math.max(5, temperature)) - 25));
  }

  /** V that the charger holds at the batteries once they are full; 0 if it cannot charge. */
  double floatVoltage() {
    if (!chargerAlive || !fuseWhole || dc() < 24) {
      return 0;
    }
    double overfed = Math.max(0, dc() - 33.5) * 0.6;
    return Math.min(wanted() + overfed, dc() - 1.2);
  }

  /** Whether batteries stay charged on it: it must stand above their full rest voltage. */
  boolean charges() {
    return floatVoltage() > 26.3 && sagsLittle();
  }

  /** A charger on a starved feeder drops out while it is most needed. */
  private boolean sagsLittle() {
    return RATED_DC * atTerminals(2) / tap > 26;
  }

  /** Lets days pass with so many Ah a day taken by the gate's runs. */
  void days(double days, double runs, Batteries batteries) {
    if (charges()) {
      batteries.charge = 1;
    } else {
      batteries.drain(days * (24 * STANDBY + runs));
    }
  }
}
