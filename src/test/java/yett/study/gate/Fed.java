package yett.study.gate;

import java.util.Map;
import yett.study.gate.Readings.Reading;
import yett.study.gate.Words.Sight;

/** What is found at batteries and supply; V, A, ohm, degrees Celsius. */
final class Fed {
  /** A that the operator takes from the mains while it runs. */
  private static final double RUNNING = 1.5;

  /** Kelvin that a V of overcharge warms a block by; considered judgement. */
  private static final double WARMS_BY = 15;

  private Fed() {}

  static void words(Map<String, Sight> all) {
    all.put(
        "lights-dip",
        (g, r) -> g.supply.feederResistance > 8 && r.nextDouble() < 0.5 ? "dim" : "steady");
    all.put(
        "trips-again",
        (g, r) -> g.supply.breakerTripped && r.nextDouble() < 0.4 ? "once" : "never");
    all.put("clock-right", (g, r) -> g.dark(true) ? "blank" : "right");
    all.put(
        "rest-helps",
        (g, r) ->
            (g.boardFreezes || g.run(false, true, r).end() == Run.End.TOO_WEAK)
                    && r.nextDouble() < 0.4
                ? "runs-after-rest"
                : "no-difference");
  }

  static void readings(Map<String, Reading> all) {
    all.put("controller-battery-voltage", (g, r) -> g.batteries.under(Supply.STANDBY));
    all.put("standing-current", (g, r) -> Supply.STANDBY);
    all.put("battery-warmth", (g, r) -> g.temperature + 3 + WARMS_BY * overcharge(g));
    all.put(
        "block-running-difference",
        (g, r) ->
            g.batteries.deadCell
                ? 2.3
                : Math.abs(0.1 + 0.4 * (1 - g.batteries.health)) * r.nextDouble());
    all.put("panel-voltage", (g, r) -> g.supply.breakerTripped ? 0 : g.supply.service);
    all.put("neutral-earth-voltage", (g, r) -> 0.3 + g.supply.neutralToEarth(RUNNING));
  }

  private static double overcharge(Gate g) {
    return Math.max(0, g.supply.floatVoltage() - g.supply.wanted());
  }
}
