package yett.study.gate;

import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;

/** What breaks a gate: changes of its parts, more or less of them. */
final class Fault {
  /** By the name of the fault, what it does to the parts; chance only decides how badly. */
  static final Map<String, BiConsumer<Gate, Random>> ALL =
      Map.ofEntries(
          fault("mains-missing", Fault::mains),
          fault("charger-dead", Fault::charger),
          fault("supply-setting-wrong", Fault::tap),
          fault("feeder-undersized", Fault::feeder),
          fault("batteries-worn", Fault::worn),
          fault("batteries-low", (g, r) -> g.batteries.charge = between(r, 0, 0.35)),
          fault("battery-terminal-loose", Fault::joint),
          fault("motor-worn", Fault::motor),
          fault("wheel-worn", Fault::wheel),
          fault("track-damaged", Fault::track),
          fault("track-fouled", Fault::fouled),
          fault("idler-seized", (g, r) -> g.chain.idlerSeized = true),
          fault("beam-misaligned", (g, r) -> g.beamAngle = between(r, 2.2, 5)),
          fault("dc-supply-dead", (g, r) -> g.supply.transformerDead = true),
          fault("controller-intermittent", (g, r) -> g.boardFreezes = true),
          fault("gearbox-worn", (g, r) -> g.gearCracked = true),
          fault("chain-slack", Fault::slack),
          fault(
              "chain-overtight", (g, r) -> g.chain.hang(between(r, 0.0015, 0.006) * g.chain.span)),
          fault("chain-worn", Fault::chainWorn),
          fault("chain-misaligned", Fault::misaligned),
          fault("chain-off", (g, r) -> g.chain.joined = false),
          fault("manual-release-engaged", (g, r) -> g.released = true),
          fault("marker-lost", (g, r) -> g.markerThere = false),
          fault("marker-displaced", Fault::displaced),
          fault("marker-sensor-failed", (g, r) -> g.sensorAlive = false),
          fault("marker-sensor-gap-wrong", (g, r) -> g.markerGap = between(r, 0.015, 0.03)),
          fault("limits-lost", Fault::limits),
          fault("end-stop-struck", Fault::endStop),
          fault(
              "obstruction-force-low",
              (g, r) -> g.threshold = g.levelForce() + between(r, -25, 35)),
          fault(
              "obstruction-force-high",
              (g, r) -> g.threshold = g.thresholdNoted + between(r, 220, 600)),
          fault("beam-dirty", (g, r) -> g.beamMargin = between(r, 0.3, 1.25)),
          fault("beam-dead", (g, r) -> g.beamUnfed = true),
          fault("edge-faulty", Fault::edge),
          fault("command-held", Fault::held),
          fault("receiver-failed", Fault::device),
          fault("transmitter-dead", (g, r) -> g.transmitterDead = true),
          fault("nothing-wrong", Fault::use),
          fault("held-open-on-purpose", (g, r) -> g.timerHolds = true),
          fault("not-in-rule-base", Fault::unknown));

  private static final double RUNS_A_DAY = 0.6; // Ah

  private Fault() {}

  /**
   * Puts faults into a gate and lets days pass. Batteries that are flat for no fault of the charger
   * are so because a long outage has only just ended.
   */
  static void happen(Gate gate, Set<String> faults, double days, Random random) {
    faults.forEach(fault -> ALL.get(fault).accept(gate, random));
    double charge = gate.batteries.charge;
    gate.supply.days(days, RUNS_A_DAY, gate.batteries);
    if (faults.contains("batteries-low")) {
      gate.batteries.charge = Math.min(charge, gate.batteries.charge);
    }
  }

  private static Map.Entry<String, BiConsumer<Gate, Random>> fault(
      String name, BiConsumer<Gate, Random> harm) {
    return Map.entry(name, harm);
  }

  static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static double eitherWay(Random random, double low, double high) {
    return (random.nextBoolean() ? 1 : -1) * between(random, low, high);
  }

  private static void mains(Gate g, Random r) {
    g.supply.breakerTripped = r.nextDouble() < 0.6;
    g.supply.cableDead = !g.supply.breakerTripped;
  }

  private static void charger(Gate g, Random r) {
    g.supply.fuseWhole = r.nextDouble() < 0.6;
    g.supply.chargerAlive = !g.supply.fuseWhole;
  }

  private static void tap(Gate g, Random r) {
    g.supply.tap = r.nextDouble() < 0.4 ? 208 : r.nextDouble() < 0.5 ? 277 : 400;
    if (g.supply.tap < 230) {
      g.batteries.health -= between(r, 0, 0.5);
    }
  }

  private static void feeder(Gate g, Random r) {
    g.supply.feederResistance = between(r, 6.5, 25);
  }

  private static void worn(Gate g, Random r) {
    g.batteries.health = between(r, 0.15, 0.5);
    g.batteries.deadCell = r.nextDouble() < 0.25;
    g.batteries.charge = between(r, 0.3, 1);
  }

  private static void joint(Gate g, Random r) {
    g.batteries.jointResistance = Math.exp(between(r, Math.log(0.015), Math.log(1.5)));
    g.batteries.crust = r.nextDouble() < 0.4;
  }

  private static void motor(Gate g, Random r) {
    g.motorOpen = r.nextDouble() < 0.3;
    g.winding = between(r, 1.6, 4);
    g.noLoad = r.nextBoolean() ? between(r, 3, 5) : between(r, 1.5, 2.5);
  }

  private static void wheel(Gate g, Random r) {
    g.wheelBad = true;
    g.rolling = between(r, 0.04, 0.09);
  }

  private static void track(Gate g, Random r) {
    g.trackBent = true;
    g.hardSpot = between(r, 95, 350);
    g.hardPlace = r.nextDouble();
  }

  private static void fouled(Gate g, Random r) {
    g.trackFouled = true;
    g.hardSpot = Math.max(g.hardSpot, between(r, 95, 400));
    g.hardPlace = r.nextDouble();
  }

  private static void slack(Gate g, Random r) {
    g.chain.hang(between(r, 0.022, 0.055) * g.chain.span);
    g.chain.nutsBackedOff = r.nextDouble() < 0.6;
  }

  private static void chainWorn(Gate g, Random r) {
    g.chain.wear = between(r, 1.6, 4);
    g.chain.nutsUsedUp = r.nextBoolean();
    g.chain.extra += between(r, 0, 0.12) * g.chain.wear / 100 * g.chain.span;
  }

  private static void misaligned(Gate g, Random r) {
    g.chain.offset = between(r, 0.012, 0.045);
    g.chain.padMoved = r.nextDouble() < 0.5;
  }

  private static void displaced(Gate g, Random r) {
    g.markerOffset = eitherWay(r, 0.035, 0.3);
  }

  private static void limits(Gate g, Random r) {
    g.closedError = eitherWay(r, 0.05, 0.5);
    g.openError = r.nextDouble() < 0.6 ? eitherWay(r, 0.05, 0.5) : 0;
  }

  private static void endStop(Gate g, Random r) {
    g.stopShifted = true;
    g.stopGap = between(r, -0.06, 0.01);
  }

  private static void edge(Gate g, Random r) {
    g.edgeOhms = r.nextBoolean() ? between(r, 0, 3000) : between(r, 15_000, 2_000_000);
    g.edgeTorn = r.nextDouble() < 0.5;
  }

  private static void held(Gate g, Random r) {
    g.held = r.nextBoolean() ? Gate.Held.STOP : Gate.Held.OPEN;
    g.heldNowAndThen = r.nextDouble() < 0.3;
  }

  private static void device(Gate g, Random r) {
    g.deviceUnfed = r.nextDouble() < 0.4;
    g.deviceDead = !g.deviceUnfed;
  }

  private static void use(Gate g, Random r) {
    g.vehicleOnLoop = r.nextBoolean();
    g.beamBlocked = !g.vehicleOnLoop;
  }

  private static void unknown(Gate g, Random r) {
    g.tiedDown = r.nextBoolean(); // a chain and padlock round the end post
    g.strayMagnet = !g.tiedDown; // something on the leaf that the sensor takes for the marker
  }
}
