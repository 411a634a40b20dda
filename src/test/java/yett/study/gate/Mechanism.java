package yett.study.gate;

import java.util.Map;
import java.util.Random;
import yett.study.gate.Readings.Reading;
import yett.study.gate.Words.Sight;

/** What is found at chain, drive, leaf, marker and posts; mm, V, A, N, degrees Celsius. */
final class Mechanism {
  /** Kelvin for each W in the housing of a small motor; from memory. */
  private static final double WARMS_BY = 0.35;

  /** mm before the end over which the leaf runs slowly. */
  private static final double SLOW_END = 500;

  private Mechanism() {}

  static void words(Map<String, Sight> all) {
    all.put(
        "chain-surface", (g, r) -> g.chain.wear > 1.5 && r.nextDouble() < 0.6 ? "dry" : "oiled");
    all.put("link-look", (g, r) -> g.chain.joined ? "right" : either(r, "coming-apart", "right"));
    all.put(
        "idler-trace",
        (g, r) ->
            g.chain.offset > 0.03 || g.chain.idlerSeized && r.nextDouble() < 0.4
                ? "grooved"
                : g.chain.offset > 0.011 ? "polished" : "even");
    all.put(
        "gearbox-feel",
        (g, r) -> g.gearCracked ? "slips" : g.noLoad > 3 ? either(r, "stiff", "smooth") : "smooth");
    all.put("gear-oil", (g, r) -> g.gearCracked && r.nextDouble() < 0.7 ? "metal" : "clean");
    all.put(
        "hard-place",
        (g, r) ->
            g.hardSpot > 90
                ? "same-place"
                : g.wheelBad ? either(r, "in-a-rhythm", "everywhere") : "nowhere");
    all.put("how-it-came", Mechanism::howItCame);
    all.put(
        "stop-moves-off",
        (g, r) ->
            g.stopShifted
                ? "stop-moved"
                : Math.abs(g.closedError) > 0.04 || g.powerWasLost && g.markerOffset != 0
                    ? "limit-moved"
                    : "neither");
    all.put("marker-seen", Mechanism::markerSeen);
    all.put(
        "beam-post-look",
        (g, r) -> g.beamAngle > 2 && r.nextDouble() < 0.6 ? "crooked" : "straight");
    all.put("anchor-bolts", (g, r) -> g.chain.padMoved ? "turn" : "hold");
    all.put(
        "leaf-face-seen",
        (g, r) -> g.tiedDown && r.nextDouble() < 0.2 ? "something-light" : "as-built");
  }

  static void readings(Map<String, Reading> all) {
    all.put("chain-mark-shift", Mechanism::markShift);
    all.put("sprocket-play", (g, r) -> g.released || g.gearCracked ? 20 : 2);
    all.put("motor-temperature", (g, r) -> g.temperature + 12 + WARMS_BY * g.motorHeat());
    all.put("operator-shift", (g, r) -> g.chain.padMoved ? 3 : 0.6);
    all.put("wheel-play", (g, r) -> g.wheelBad ? 50 * (g.rolling - 0.02) : 0.4);
    all.put("track-straightness", (g, r) -> g.trackBent ? 4 + g.hardSpot / 25 : 2);
    all.put("counter-swing", (g, r) -> g.dark(true) ? 0.1 : 4.8);
    all.put("end-current", Mechanism::endCurrent);
    all.put("slowdown-distance", Mechanism::slowDown);
    all.put("mid-travel-speed", Mechanism::speed);
    all.put("beam-offset-angle", (g, r) -> g.beamUnfed ? Double.NaN : 0.6 + g.beamAngle);
  }

  private static String either(Random r, String one, String other) {
    return r.nextBoolean() ? one : other;
  }

  /** Parts that wear go little by little, parts that break go at once; one in three cannot say. */
  private static String howItCame(Gate g, Random r) {
    if (r.nextDouble() < 0.33) {
      return "nobody-can-say";
    }
    boolean wears =
        g.batteries.worn()
            || g.batteries.charge < 0.5
            || g.chain.wear > 1.5
            || g.chain.slack()
            || g.wheelBad
            || g.beamMargin < 1.3
            || g.noLoad > 3.2
            || g.transmitterDead;
    return wears ? "little-by-little" : "all-at-once";
  }

  private static String markerSeen(Gate g, Random r) {
    if (g.dark(true)) {
      return "";
    }
    Run run = g.run(false, true, r);
    boolean still = run.end() == Run.End.MOTOR_ONLY || run.end() == Run.End.SPROCKET_ONLY;
    if (!run.moved() && !still) {
      return "";
    }
    if (still || !g.markerThere || !g.sensorAlive) {
      return "stays-dark";
    }
    return g.markerGap > 0.014 ? either(r, "flickers", "stays-dark") : "blinks-once";
  }

  private static double markShift(Gate g, Random r) {
    if (!g.run(false, true, r).moved()) {
      return Double.NaN;
    }
    double teeth = g.chain.climbs() ? Math.abs(Math.round(2.2 * r.nextGaussian())) : 0;
    return 1000 * Chain.PITCH * teeth + 2 * r.nextDouble();
  }

  private static double endCurrent(Gate g, Random r) {
    Run run = g.run(true, true, r);
    if (!run.arrived() && run.place() < 0.98) {
      return Double.NaN;
    }
    return run.arrived() ? g.current() : 2.5 * Gate.START * g.current();
  }

  private static double slowDown(Gate g, Random r) {
    Run run = g.run(true, true, r);
    if (run.end() == Run.End.LOST_POSITION) {
      return 1000 * g.opening * run.place(); // it creeps until it knows its place
    }
    return run.arrived() || run.place() > 0.98 ? SLOW_END + 1000 * run.error() : Double.NaN;
  }

  /** m/s. */
  private static double speed(Gate g, Random r) {
    Run run = g.run(false, true, r);
    if (run.end() == Run.End.LOST_POSITION) {
      return 0.4 * Gate.SPEED;
    }
    return run.moved() ? g.speed(true) * Gate.SPEED : Double.NaN;
  }
}
