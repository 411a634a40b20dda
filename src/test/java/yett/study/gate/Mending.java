package yett.study.gate;

import java.util.Map;
import java.util.function.Consumer;

/** What each repair mends: the parameters that it puts back. The others mend nothing here. */
final class Mending {
  static final Map<String, Consumer<Gate>> ALL =
      Map.ofEntries(
          repair("align-chain", g -> g.chain.offset = 0.002),
          repair("re-anchor-operator", g -> g.chain.offset = 0.002),
          repair("tighten-bracket", Mending::hang),
          repair("replace-bracket", Mending::hang),
          repair("shift-catch", Mending::endStop),
          repair("refit-chain", g -> g.chain.joined = true),
          repair("slacken-chain", Mending::hang),
          repair("tighten-chain", Mending::hang),
          repair("replace-chain", Mending::newChain),
          repair("free-command", g -> g.held = Gate.Held.NOTHING),
          repair("mend-receiver", Mending::device),
          repair("renew-transmitter-battery", g -> g.transmitterDead = false),
          repair("reset-end-stop", Mending::endStop),
          repair("free-leaf", Mending::leaf),
          repair("clear-track", Mending::clear),
          repair("free-idler", g -> g.chain.idlerSeized = false),
          repair("replace-idler", g -> g.chain.idlerSeized = false),
          repair("align-beam", Mending::align),
          repair("replace-supply-unit", g -> g.supply.transformerDead = false),
          repair("replace-controller", g -> g.boardFreezes = false),
          repair("replace-gearbox", g -> g.gearCracked = false),
          repair("replace-wheel", Mending::wheel),
          repair("straighten-track", Mending::track),
          repair("replace-track-length", Mending::track),
          repair("level-track", Mending::track),
          repair("engage-release", g -> g.released = false),
          repair("replace-motor", Mending::motor),
          repair("renew-brushes", Mending::motor),
          repair("fit-heavier-operator", Mending::operator),
          repair("teach-limits", Mending::teach),
          repair("reseat-marker", Mending::reseat),
          repair("fit-marker", Mending::fit),
          repair("replace-marker-sensor", Mending::sensor),
          repair("clean-beam", Mending::clean),
          repair("end-hold-open", g -> g.timerHolds = false),
          repair("replace-beam", Mending::beam),
          repair("mend-beam-lead", g -> g.beamUnfed = false),
          repair("set-sensor-gap", g -> g.markerGap = 0.006),
          repair("replace-edge", Mending::edge),
          repair("set-force", g -> g.threshold = g.thresholdNoted),
          repair("charge-batteries", g -> g.batteries.charge = g.batteries.worn() ? 0.7 : 1),
          repair("replace-batteries", Mending::batteries),
          repair("clean-terminals", g -> g.batteries.jointResistance = 0.0015),
          repair("replace-charger", Mending::charger),
          repair("improve-feeder", g -> g.supply.feederResistance = 0.5),
          repair("restore-mains", Mending::mains),
          repair("reset-isolator", g -> g.supply.breakerTripped = false),
          repair("correct-supply-setting", g -> g.supply.tap = Supply.NOMINAL),
          repair("explain-use", Mending::use));

  private Mending() {}

  private static Map.Entry<String, Consumer<Gate>> repair(String id, Consumer<Gate> mend) {
    return Map.entry(id, mend);
  }

  private static void hang(Gate g) {
    g.chain.hang(0.013 * g.chain.span);
    g.chain.nutsBackedOff = false;
  }

  private static void newChain(Gate g) {
    hang(g);
    g.chain.wear = 0;
    g.chain.joined = true;
    g.chain.nutsUsedUp = false;
  }

  private static void device(Gate g) {
    g.deviceDead = false;
    g.deviceUnfed = false;
    g.transmitterDead = false;
  }

  private static void endStop(Gate g) {
    g.stopShifted = false;
    g.stopGap = 0.08;
  }

  private static void leaf(Gate g) {
    wheel(g);
    track(g);
    clear(g);
  }

  private static void wheel(Gate g) {
    g.rolling = 0.017;
    g.wheelBad = false;
  }

  private static void track(Gate g) {
    g.trackBent = false;
    g.hardSpot = g.trackFouled ? g.hardSpot : 0;
  }

  private static void clear(Gate g) {
    g.trackFouled = false;
    g.hardSpot = g.trackBent ? g.hardSpot : 0;
  }

  private static void motor(Gate g) {
    g.motorOpen = false;
    g.winding = 0.7;
    g.noLoad = 2;
  }

  private static void operator(Gate g) {
    motor(g);
    g.gearCracked = false;
  }

  /**
   * Taught limits are right where the leaf stands now; a marker that is found later shifts them.
   */
  private static void teach(Gate g) {
    g.closedError = 0;
    g.openError = 0;
    g.knowsPlace = true;
    g.powerWasLost = false;
  }

  private static void reseat(Gate g) {
    if (g.markerThere) {
      g.markerOffset = 0;
      g.markerGap = g.sensorAlive ? Math.min(g.markerGap, 0.006) : g.markerGap;
    }
  }

  private static void fit(Gate g) {
    g.markerThere = true;
    g.markerOffset = 0;
  }

  private static void sensor(Gate g) {
    g.sensorAlive = true;
    g.markerGap = 0.006;
  }

  /** Whoever cleans the eyes of a beam sees what stands between them. */
  private static void clean(Gate g) {
    g.beamMargin = 4;
    g.beamBlocked = false;
  }

  private static void align(Gate g) {
    g.beamAngle = 0;
    g.beamBlocked = false;
  }

  private static void beam(Gate g) {
    clean(g);
    align(g);
    g.beamUnfed = false;
  }

  private static void edge(Gate g) {
    g.edgeOhms = 8200;
    g.edgeTorn = false;
  }

  private static void batteries(Gate g) {
    g.batteries.health = 1;
    g.batteries.charge = 1;
    g.batteries.deadCell = false;
    g.batteries.jointResistance = 0.0015;
    g.batteries.crust = false;
  }

  private static void charger(Gate g) {
    g.supply.chargerAlive = true;
    g.supply.fuseWhole = true;
  }

  private static void mains(Gate g) {
    g.supply.breakerTripped = false;
    g.supply.cableDead = false;
  }

  private static void use(Gate g) {
    g.timerHolds = false;
    g.vehicleOnLoop = false;
    g.beamBlocked = false;
  }
}
