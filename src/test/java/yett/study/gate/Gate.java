package yett.study.gate;

import java.util.LinkedHashSet;
import java.util.Random;
import java.util.Set;

/**
 * The gate as a machine. Forces in N, currents in A, lengths in m. What holds it together: the
 * motor pulls the leaf's rolling resistance and the chain's friction; its current falls out of
 * force times speed; the batteries sag under that current; the controller gives up below 20 V,
 * turns back when the force passes its threshold, and counts its place along the chain.
 */
final class Gate {
  static final double GRAVITY = 9.80665;
  static final double GIVES_UP = 20;
  static final double SPEED = 0.25;

  /** Degrees off the axis at which a beam has fallen to 1/e² of its light. */
  static final double BEAM_WIDTH = 3.2;

  /** Peak at the start over the steady current. */
  static final double START = 2.2;

  final double opening;
  final double mass;
  final double temperature;
  final Supply supply;
  final Batteries batteries;
  final Chain chain;

  double noLoad = 2;
  double winding = 0.7;
  boolean motorOpen;
  double rolling = 0.017;
  double hardSpot;
  double hardPlace = 0.5;
  boolean trackBent;
  boolean trackFouled;
  boolean wheelBad;
  boolean released;
  double threshold = 260;
  double thresholdNoted = 260;
  double beamMargin = 4;
  double beamAngle;
  boolean beamBlocked;
  boolean beamUnfed;
  double edgeOhms = 8200;
  boolean edgeTorn;
  boolean markerThere = true;
  double markerOffset;
  double markerGap = 0.006;
  boolean sensorAlive = true;
  boolean knowsPlace = true;
  boolean powerWasLost;
  double closedError;
  double openError;
  double stopGap = 0.08;
  boolean stopShifted;
  Held held = Held.NOTHING;
  boolean heldNowAndThen;
  boolean deviceDead;
  boolean deviceUnfed;
  boolean transmitterDead;
  boolean boardFreezes;
  boolean gearCracked;
  boolean tiedDown;
  boolean strayMagnet;
  boolean timerHolds;
  boolean vehicleOnLoop;

  /** An input that is on although nobody gives a command. */
  enum Held {
    NOTHING,
    STOP,
    OPEN
  }

  Gate(double opening, double mass, double temperature) {
    this.opening = opening;
    this.mass = mass;
    this.temperature = temperature;
    this.supply = new Supply(temperature);
    this.batteries = new Batteries(temperature);
    this.chain = new Chain(1.04 * opening);
  }

  /** N that keeps the released leaf rolling where it is hardest. */
  double pushForce() {
    return mass * GRAVITY * rolling + hardSpot;
  }

  /** N at the chain away from the hard place. */
  double levelForce() {
    return mass * GRAVITY * rolling + chain.friction();
  }

  private double steadyForce() {
    return levelForce() + 0.5 * hardSpot;
  }

  /** A in the middle of the travel. */
  double current() {
    if (released || !chain.joined) {
      return noLoad;
    }
    return noLoad + steadyForce() * SPEED / (0.5 * 24);
  }

  private double assisted(boolean onMains) {
    return onMains && supply.charges() ? Supply.CHARGER_LIMIT : 0;
  }

  /** Lowest V at the controller while the gate starts. */
  double startVoltage(boolean onMains) {
    return batteries.under(START * current() - assisted(onMains));
  }

  /** Share of the usual speed. */
  double speed(boolean onMains) {
    double volts = batteries.under(current() - assisted(onMains)) - current() * winding;
    return Math.max(0.1, Math.min(1.08, volts / (25 - 4.5 * 0.7)));
  }

  boolean dark(boolean onMains) {
    return batteries.charge < 0.04 && !(onMains && supply.charges());
  }

  /** Takes both supplies away and gives them back: the place must be found again. */
  void losePower() {
    powerWasLost = true;
    knowsPlace = !dark(true) && findsMarker();
  }

  boolean findsMarker() {
    return markerThere && sensorAlive && markerGap < 0.014 && canRun(true);
  }

  private boolean canRun(boolean onMains) {
    return chain.joined && !released && startVoltage(onMains) > GIVES_UP && !motorOpen;
  }

  /** One command that reaches the controller. */
  Run run(boolean closing, boolean onMains, Random random) {
    Run.End stopped = before(closing, onMains, random);
    double usual = opening / SPEED + 4;
    if (stopped != Run.End.ARRIVED) {
      return new Run(stopped, 0, 0, 0);
    }
    knowsPlace = knowsPlace || findsMarker();
    if (!knowsPlace) {
      return new Run(Run.End.LOST_POSITION, random.nextDouble(), 0.4, 2.5 * usual);
    }
    if (boardFreezes && random.nextDouble() < 0.6) {
      return new Run(Run.End.FROZE, random.nextDouble(), 0, usual);
    }
    return travel(closing, onMains, random, usual);
  }

  private Run.End before(boolean closing, boolean onMains, Random random) {
    boolean heldNow = held != Held.NOTHING && (!heldNowAndThen || random.nextDouble() < 0.5);
    if (dark(onMains)) {
      return Run.End.DARK;
    }
    if (heldNow && (held == Held.STOP || closing)) {
      return Run.End.IGNORED;
    }
    if (closing && (timerHolds || vehicleOnLoop || beamBlocked || beamUnfed)) {
      return Run.End.IGNORED; // a beam that is broken before the start keeps it from starting
    }
    if (startVoltage(onMains) + 0.3 * random.nextGaussian() < GIVES_UP) {
      return Run.End.TOO_WEAK;
    }
    if (motorOpen) {
      return Run.End.MOTOR_DEAD;
    }
    if (released || gearCracked && random.nextDouble() < 0.5) {
      return Run.End.MOTOR_ONLY;
    }
    return chain.joined ? Run.End.ARRIVED : Run.End.SPROCKET_ONLY;
  }

  private Run travel(boolean closing, boolean onMains, Random random, double usual) {
    if (!edgeSound()) {
      return new Run(Run.End.EDGE, 0.02, 0, 2);
    }
    if (closing && !beamSees(random)) {
      return new Run(Run.End.BEAM, random.nextDouble(), 0, 3);
    }
    if (tiedDown) {
      return new Run(Run.End.OBSTRUCTION, 0.01, 0, 2);
    }
    double scatter = 20 * random.nextGaussian();
    double anywhere = levelForce();
    if (anywhere + 2 * Math.abs(scatter) > threshold) {
      return new Run(Run.End.OBSTRUCTION, random.nextDouble(), 0, 6);
    }
    if (anywhere + hardSpot + scatter > threshold) {
      return new Run(Run.End.OBSTRUCTION, hardPlace, 0, 8);
    }
    double error = error(closing, random);
    if (closing && error > stopGap) {
      return new Run(Run.End.OBSTRUCTION, 0.99, stopGap, usual);
    }
    return new Run(Run.End.ARRIVED, 1, error, (usual - 4) / speed(onMains) + 4 + scatter / 40);
  }

  /** m too far; the chain gives a tooth now and then when it climbs. */
  double error(boolean closing, Random random) {
    double teeth = chain.climbs() ? Chain.PITCH * Math.round(2.2 * random.nextGaussian()) : 0;
    double play = chain.slack() ? 0.018 * random.nextGaussian() : 0;
    double marker = powerWasLost ? markerOffset : 0;
    double stray = strayMagnet ? 0.25 * random.nextGaussian() : 0;
    return (closing ? closedError + marker : openError - marker)
        + teeth
        + stray
        + play
        + 0.006 * random.nextGaussian();
  }

  boolean edgeSound() {
    return edgeOhms > 5400 && edgeOhms < 11000;
  }

  boolean beamSees(Random random) {
    if (beamBlocked || beamUnfed || dark(true)) {
      return false;
    }
    return beamLight() * Math.exp(0.15 * random.nextGaussian()) > 1;
  }

  /** Light over what the receiver needs: a Gaussian beam off its axis, half-width 3.2 degrees. */
  double beamLight() {
    return beamMargin * Math.exp(-2 * beamAngle * beamAngle / (BEAM_WIDTH * BEAM_WIDTH));
  }

  /** W of heat in the motor while it runs: its winding, and half of what it takes unloaded. */
  double motorHeat() {
    return current() * current() * winding + 0.5 * 24 * noLoad;
  }

  /** V at the motor when it is told to run; 0 if the controller does not drive it. */
  double driven(Random random) {
    double volts = startVoltage(true) - 1;
    return switch (run(false, true, random).end()) {
      case DARK, IGNORED -> 0;
      case TOO_WEAK -> Math.max(0, volts);
      default -> volts;
    };
  }

  /** N at the leading edge before it turns back. */
  double reversingForce() {
    return Math.max(20, threshold - 0.3 * (steadyForce() - 90));
  }

  /** Whether somebody who tries it both ways, twice, and measures its force, is content. */
  boolean contents(Random random) {
    return runsAsUsual(random) && reversingForce() < 450 && stopGap > 0.015;
  }

  /** The same for somebody who only looks. */
  boolean runsAsUsual(Random random) {
    boolean wellUsed =
        !deviceDead && !deviceUnfed && !transmitterDead && !timerHolds && !vehicleOnLoop;
    for (int i = 0; i < 2 && wellUsed; i++) {
      Run closing = run(true, true, random);
      Run opening = run(false, true, random);
      wellUsed =
          closing.arrived()
              && opening.arrived()
              && Math.abs(closing.error()) < 0.06
              && Math.abs(opening.error()) < 0.06
              && speed(true) > 0.8;
    }
    boolean quiet = chain.sag() < 0.03 * chain.span && chain.offset < 0.02 && !chain.tight();
    return wellUsed && quiet;
  }

  /** What is wrong, by the parts that are out of order. */
  Set<String> wrong() {
    Set<String> all = new LinkedHashSet<>();
    mark(all, "mains-missing", !supply.mains());
    mark(all, "feeder-undersized", supply.feederResistance > 6);
    mark(all, "supply-setting-wrong", Math.abs(supply.tap - Supply.NOMINAL) > 15);
    mark(all, "dc-supply-dead", supply.transformerDead);
    mark(all, "charger-dead", !supply.chargerAlive || !supply.fuseWhole);
    mark(all, "batteries-low", batteries.charge < 0.5);
    mark(all, "batteries-worn", batteries.worn());
    mark(all, "battery-terminal-loose", batteries.jointResistance > 0.01);
    mark(all, "motor-worn", motorOpen || winding > 1.5 || noLoad > 3.2);
    mark(all, "wheel-worn", rolling > 0.036);
    mark(all, "track-damaged", hardSpot > 90 && trackBent);
    mark(all, "track-fouled", hardSpot > 90 && trackFouled);
    mark(all, "chain-slack", chain.slack());
    mark(all, "chain-overtight", chain.tight());
    mark(all, "chain-worn", chain.wear > 1.5);
    mark(all, "chain-misaligned", chain.offset > 0.011);
    mark(all, "idler-seized", chain.idlerSeized);
    mark(all, "chain-off", !chain.joined);
    mark(all, "manual-release-engaged", released);
    mark(all, "marker-lost", !markerThere);
    mark(all, "marker-displaced", Math.abs(markerOffset) > 0.03);
    mark(all, "marker-sensor-failed", !sensorAlive);
    mark(all, "marker-sensor-gap-wrong", markerGap > 0.014);
    mark(all, "limits-lost", Math.max(Math.abs(closedError), Math.abs(openError)) > 0.04);
    mark(all, "end-stop-struck", stopShifted);
    mark(all, "obstruction-force-low", threshold < thresholdNoted - 80);
    mark(all, "obstruction-force-high", threshold > thresholdNoted + 120);
    mark(all, "beam-dirty", beamMargin < 1.3);
    mark(all, "beam-misaligned", beamAngle > 2);
    mark(all, "beam-dead", beamUnfed);
    mark(all, "edge-faulty", !edgeSound());
    mark(all, "command-held", held != Held.NOTHING);
    mark(all, "receiver-failed", deviceDead || deviceUnfed);
    mark(all, "transmitter-dead", transmitterDead);
    mark(all, "held-open-on-purpose", timerHolds);
    mark(all, "nothing-wrong", vehicleOnLoop || beamBlocked);
    mark(all, "controller-intermittent", boardFreezes);
    mark(all, "gearbox-worn", gearCracked);
    mark(all, "not-in-rule-base", tiedDown || strayMagnet);
    return all;
  }

  private static void mark(Set<String> all, String cause, boolean so) {
    if (so) {
      all.add(cause);
    }
  }
}
