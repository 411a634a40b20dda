package yett.study.gate;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/** What instruments show on the gate, without their own error; mm, V, A, ohm, N, s. */
final class Readings {
  /** A measurement. */
  @FunctionalInterface
  interface Reading {
    /** NaN where there is nothing to measure. */
    double of(Gate gate, Random random);
  }

  static final Map<String, Reading> ALL = new HashMap<>();

  private Readings() {}

  static {
    chain();
    leaf();
    position();
    batteries();
    supply();
    devices();
    Commanded.readings(ALL);
    Mechanism.readings(ALL);
    Fed.readings(ALL);
  }

  private static void chain() {
    ALL.put("sprocket-offset", (g, r) -> 1000 * g.chain.offset);
    ALL.put(
        "idler-offset", (g, r) -> g.chain.padMoved ? 500 * g.chain.offset * r.nextDouble() : 0.6);
    ALL.put("chain-sag", (g, r) -> g.chain.joined ? 1000 * g.chain.sag() : Double.NaN);
    ALL.put("chain-hand-lift", (g, r) -> g.chain.joined ? 1000 * g.chain.movement() : Double.NaN);
    ALL.put("chain-length", (g, r) -> 24_000 * Chain.PITCH * (1 + g.chain.wear / 100));
  }

  private static void leaf() {
    ALL.put("push-force", (g, r) -> g.pushForce());
    ALL.put("breakaway-force", (g, r) -> (1.6 + 0.6 * r.nextDouble()) * g.pushForce());
    ALL.put("leaf-plumb", (g, r) -> Math.abs(3 + 1.5 * r.nextGaussian() + (g.trackBent ? 3 : 0)));
    ALL.put("running-current", Readings::current);
    ALL.put("motor-alone-current", (g, r) -> g.dark(true) || g.motorOpen ? 0 : g.noLoad);
    ALL.put("motor-resistance", (g, r) -> g.motorOpen ? 40 + 500 * r.nextDouble() : g.winding);
    ALL.put("travel-time", Readings::time);
    ALL.put("obstruction-force", (g, r) -> running(g, r) ? g.reversingForce() : Double.NaN);
  }

  private static double current(Gate g, Random r) {
    Run run = g.run(false, true, r);
    boolean turns =
        run.moved() || run.end() == Run.End.MOTOR_ONLY || run.end() == Run.End.SPROCKET_ONLY;
    return turns ? g.current() : Double.NaN;
  }

  private static double time(Gate g, Random r) {
    Run run = g.run(false, true, r);
    return run.arrived() || run.end() == Run.End.LOST_POSITION ? run.seconds() : Double.NaN;
  }

  private static boolean running(Gate g, Random r) {
    return g.run(true, true, r).moved();
  }

  private static void position() {
    ALL.put("stop-spread", Readings::spread);
    ALL.put("limit-error-closed", (g, r) -> error(g, g.run(true, true, r)));
    ALL.put("limit-error-open", (g, r) -> error(g, g.run(false, true, r)));
    ALL.put("end-gap", (g, r) -> 1000 * Math.max(0, g.stopGap - Math.max(0, g.error(true, r))));
    ALL.put(
        "marker-distance",
        (g, r) -> g.markerThere ? 1000 * Math.abs(g.markerOffset) + g.chain.wear * 5 : Double.NaN);
    ALL.put("marker-gap", (g, r) -> g.markerThere ? 1000 * g.markerGap : Double.NaN);
    ALL.put("sensor-swing", (g, r) -> g.sensorAlive ? g.batteries.rest() / 2 : 0.1);
  }

  private static double error(Gate g, Run run) {
    if (!run.moved() && run.end() != Run.End.MOTOR_ONLY && run.end() != Run.End.SPROCKET_ONLY) {
      return Double.NaN;
    }
    double away =
        run.arrived() || run.place() > 0.98 ? Math.abs(run.error()) : g.opening * (1 - run.place());
    return 1000 * away;
  }

  private static double spread(Gate g, Random r) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      Run run = g.run(true, true, r);
      if (!run.moved()) {
        return Double.NaN;
      }
      double at = run.arrived() ? run.error() : -g.opening * (1 - run.place());
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return 1000 * (most - least);
  }

  private static void batteries() {
    ALL.put("battery-rest-voltage", (g, r) -> g.batteries.rest() + afterglow(g, r));
    ALL.put("battery-running-voltage", (g, r) -> tries(g, r) ? g.startVoltage(false) : Double.NaN);
    ALL.put("battery-fall", (g, r) -> g.run(false, false, r).moved() ? fall(g) : Double.NaN);
    ALL.put("battery-block-difference", (g, r) -> g.batteries.deadCell ? 1.9 : uneven(g, r));
    ALL.put("battery-after-charge", Readings::afterCharge);
    ALL.put("terminal-drop", Readings::jointDrop);
    ALL.put("charging-voltage", Readings::charging);
    ALL.put("charging-current", Readings::intoBatteries);
    ALL.put("charging-fuse", (g, r) -> g.supply.fuseWhole ? 0.3 : 1e6);
  }

  /** What the last charge leaves on the plates, ten minutes after it. */
  private static double afterglow(Gate g, Random r) {
    return g.supply.charges() ? 0.6 * r.nextDouble() : 0;
  }

  private static boolean tries(Gate g, Random r) {
    Run.End end = g.run(false, false, r).end();
    return end != Run.End.DARK && end != Run.End.IGNORED;
  }

  private static double fall(Gate g) {
    return g.current() * g.batteries.resistance();
  }

  private static double uneven(Gate g, Random r) {
    return Math.abs((0.06 + 0.35 * (1 - g.batteries.health)) * r.nextGaussian());
  }

  private static double afterCharge(Gate g, Random r) {
    Batteries after = new Batteries(g.temperature);
    after.charge = Math.min(1, 0.55 + 0.6 * g.batteries.health);
    after.deadCell = g.batteries.deadCell;
    return after.rest();
  }

  private static double jointDrop(Gate g, Random r) {
    return tries(g, r) ? Gate.START * g.current() * g.batteries.jointResistance : Double.NaN;
  }

  private static double charging(Gate g, Random r) {
    double rest = g.batteries.rest();
    double held = g.supply.floatVoltage();
    if (held <= rest) {
      return rest;
    }
    double taken = g.batteries.charge < 0.9 ? Supply.CHARGER_LIMIT : 0.5;
    double open = g.batteries.jointResistance > 0.5 ? 1 : 0;
    return Math.min(
        held, rest + open + taken * (0.2 + g.batteries.resistance()) + (taken < 1 ? 2 : 0));
  }

  private static double intoBatteries(Gate g, Random r) {
    if (!g.supply.charges()) {
      return 0;
    }
    double wanted = g.batteries.charge < 0.9 ? Supply.CHARGER_LIMIT : 0.9 + 0.6 * r.nextDouble();
    return wanted
        * Math.min(1, 0.2 / (g.batteries.jointResistance + 0.1))
        * Math.sqrt(g.batteries.health);
  }

  private static void supply() {
    ALL.put("dc-supply-voltage", (g, r) -> g.supply.dc());
    ALL.put("mains-at-terminals", (g, r) -> g.supply.atTerminals(0.2));
    ALL.put("selector-margin", (g, r) -> Math.abs(g.supply.atTerminals(0.2) - g.supply.tap));
    ALL.put(
        "supply-under-load",
        (g, r) -> g.supply.mains() ? g.supply.feederResistance * 1.5 : Double.NaN);
  }

  private static void devices() {
    ALL.put("receiver-supply", (g, r) -> g.deviceUnfed ? 0 : fed(g));
    ALL.put("beam-supply", (g, r) -> g.beamUnfed ? 0 : fed(g) - 0.5);
    ALL.put("edge-resistance", (g, r) -> g.edgeOhms);
    ALL.put("command-loop-resistance", Readings::loop);
  }

  static double fed(Gate g) {
    return Math.max(g.supply.floatVoltage() - 0.5, g.dark(false) ? 0 : g.batteries.rest() - 0.3);
  }

  private static double loop(Gate g, Random r) {
    boolean on = g.held != Gate.Held.NOTHING;
    return on ? (g.heldNowAndThen ? 40_000 * r.nextDouble() : 3) : 2_000_000;
  }
}
