package yett.study.gate;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/** What people see, hear and are told, by thresholds on what the gate does. */
final class Words {
  /** Something seen. */
  @FunctionalInterface
  interface Sight {
    /** The outcome; "" if it cannot be told. */
    String of(Gate gate, Random random);
  }

  static final Map<String, Sight> ALL = new HashMap<>();

  private Words() {}

  static {
    chain();
    leaf();
    position();
    commands();
    sensing();
    supply();
    use();
    Commanded.words(ALL);
    Mechanism.words(ALL);
    Fed.words(ALL);
  }

  private static boolean mostly(Random random, double often) {
    return random.nextDouble() < often;
  }

  private static void chain() {
    ALL.put(
        "chain-side-wear",
        (g, r) -> g.chain.offset > 0.03 ? "cut-in" : g.chain.offset > 0.01 ? "one-side" : "even");
    ALL.put(
        "pad-and-bolts",
        (g, r) -> !g.chain.padMoved ? "firm" : mostly(r, 0.5) ? "moves" : "tilted");
    ALL.put("chain-looks", Words::chainLooks);
    ALL.put("what-turns", Words::whatTurns);
    ALL.put("chain-jumps", (g, r) -> g.run(false, true, r).moved() ? jumps(g, r) : "");
    ALL.put(
        "tension-nuts",
        (g, r) -> g.chain.nutsBackedOff ? "backed-off" : g.chain.nutsUsedUp ? "used-up" : "as-set");
    ALL.put(
        "sprocket-teeth",
        (g, r) -> g.chain.wear > 3.2 ? "hooked" : g.chain.wear > 1.8 ? "worn" : "even");
    ALL.put(
        "idlers-turn",
        (g, r) ->
            g.chain.idlerSeized
                ? "stuck"
                : g.chain.tension() > 600 || g.chain.offset > 0.03 ? "rough" : "free");
    ALL.put("noise-kind", Words::noise);
  }

  private static String chainLooks(Gate g, Random r) {
    if (!g.chain.joined) {
      return "parted";
    }
    double seen = g.chain.sag() / g.chain.span * Math.exp(0.2 * r.nextGaussian());
    return seen > 0.028 ? "hangs" : seen < 0.005 ? "straight" : "ordinary";
  }

  private static String whatTurns(Gate g, Random r) {
    return switch (g.run(false, true, r).end()) {
      case MOTOR_ONLY -> "motor-only";
      case SPROCKET_ONLY -> "sprocket-only";
      case DARK, IGNORED, TOO_WEAK, MOTOR_DEAD -> "motor-still";
      default -> "runs";
    };
  }

  private static String jumps(Gate g, Random r) {
    if (!g.chain.climbs()) {
      return "keeps-place";
    }
    return mostly(r, 0.4) ? "keeps-place" : mostly(r, 0.5) ? "climbs" : "jumps";
  }

  private static String noise(Gate g, Random r) {
    Run run = g.run(true, true, r);
    if (run.end() == Run.End.OBSTRUCTION && run.place() > 0.98) {
      return "bang";
    }
    if (!run.moved()) {
      return "usual";
    }
    boolean slaps = g.chain.sag() > 0.024 * g.chain.span || g.chain.wear > 2;
    if (slaps && mostly(r, 0.75)) {
      return g.chain.climbs() && mostly(r, 0.4) ? "crack" : "slap";
    }
    boolean scrapes =
        g.wheelBad
            || g.chain.idlerSeized
            || g.hardSpot > 150
            || g.chain.offset > 0.018
            || g.chain.tight();
    return scrapes && mostly(r, 0.6) ? "scrape" : "usual";
  }

  private static void leaf() {
    ALL.put(
        "track-look",
        (g, r) ->
            g.trackBent && mostly(r, 0.85)
                ? "bent"
                : g.trackFouled && mostly(r, 0.9)
                    ? "blocked"
                    : mostly(r, 0.25) ? "dirty" : "clean");
    ALL.put(
        "debris-seen",
        (g, r) -> g.trackFouled && mostly(r, 0.8) || g.beamBlocked ? "something" : "clean");
    ALL.put("wheels-look", (g, r) -> !g.wheelBad ? "turn" : g.rolling > 0.06 ? "seized" : "rough");
    ALL.put(
        "release-state",
        (g, r) -> !g.released ? "engaged" : mostly(r, 0.8) ? "released" : "unlocked");
    ALL.put(
        "release-used",
        (g, r) -> g.released && mostly(r, 0.7) || mostly(r, 0.06) ? "somebody" : "nobody");
    ALL.put("speed-seen", Words::speed);
    ALL.put(
        "end-stop-look",
        (g, r) ->
            g.stopShifted
                ? (mostly(r, 0.8) ? "shifted" : "marked")
                : g.closedError > g.stopGap ? "marked" : "in-place");
  }

  private static String speed(Gate g, Random r) {
    Run run = g.run(false, true, r);
    if (run.end() == Run.End.LOST_POSITION) {
      return "much-slower";
    }
    double share = g.speed(true) * Math.exp(0.05 * r.nextGaussian());
    return !run.moved() || share > 0.85 ? "usual" : share > 0.65 ? "slower" : "much-slower";
  }

  private static void position() {
    ALL.put("limit-shift", Words::shift);
    ALL.put(
        "marker-look",
        (g, r) -> !g.markerThere ? "gone" : Math.abs(g.markerOffset) > 0.03 ? "moved" : "in-place");
    ALL.put("finds-reference", Words::finds);
  }

  private static String shift(Gate g, Random r) {
    Run closed = g.run(true, true, r);
    Run open = g.run(false, true, r);
    if (!closed.arrived() || !open.arrived()) {
      boolean lost = closed.end() == Run.End.LOST_POSITION || open.end() == Run.End.LOST_POSITION;
      return lost ? "unlike" : "";
    }
    boolean right = Math.abs(closed.error()) < 0.03 && Math.abs(open.error()) < 0.03;
    boolean same = Math.abs(closed.error() + open.error()) < 0.03;
    return right ? "right" : same ? "shifted" : "unlike";
  }

  /** Tries what an outage does; the gate is left as the try leaves it. */
  private static String finds(Gate g, Random r) {
    g.losePower();
    Run found = g.run(false, true, r);
    if (!found.arrived()) {
      return found.end() == Run.End.LOST_POSITION ? "never-finds-it" : "";
    }
    return Math.abs(g.run(false, true, r).error()) > 0.03 ? "wrong-place" : "finds-it";
  }

  private static void commands() {
    ALL.put(
        "input-lamps",
        (g, r) ->
            g.held == Gate.Held.NOTHING && !g.vehicleOnLoop && !g.timerHolds
                ? "none-on"
                : g.heldNowAndThen ? "comes-and-goes" : "one-on");
    ALL.put(
        "held-devices",
        (g, r) ->
            g.timerHolds || g.held == Gate.Held.STOP && !g.heldNowAndThen && mostly(r, 0.4)
                ? "one"
                : "none");
    ALL.put("response", Words::response);
    ALL.put("which-commands", Words::whichFail);
    ALL.put("direct-command", Words::direct);
    ALL.put("second-transmitter", Words::second);
  }

  private static String response(Gate g, Random r) {
    if ((g.transmitterDead || g.deviceDead || g.deviceUnfed) && mostly(r, 0.6)) {
      return "nothing";
    }
    return switch (g.run(mostly(r, 0.5), true, r).end()) {
      case ARRIVED -> "runs";
      case DARK, IGNORED -> "nothing";
      case TOO_WEAK, MOTOR_DEAD -> "click";
      case MOTOR_ONLY, SPROCKET_ONLY -> "motor-only";
      default -> "starts-and-stops";
    };
  }

  private static boolean obeys(Gate g, Random r) {
    boolean beam = g.beamBlocked || g.beamUnfed;
    return g.run(false, true, r).moved() && (beam || g.run(true, true, r).end() != Run.End.IGNORED);
  }

  private static String whichFail(Gate g, Random r) {
    if (!obeys(g, r)) {
      return "all-fail";
    }
    return g.transmitterDead
        ? "one-transmitter"
        : g.deviceDead || g.deviceUnfed ? "one-kind" : "none-fails";
  }

  private static String direct(Gate g, Random r) {
    boolean opens = g.run(false, true, r).moved();
    Run closing = g.run(true, true, r);
    boolean closes = closing.moved() && closing.end() != Run.End.BEAM;
    return opens && closes ? "runs" : opens || closes ? "one-way" : "does-not";
  }

  private static String second(Gate g, Random r) {
    if (mostly(r, 0.25)) {
      return "no-other";
    }
    if (g.transmitterDead) {
      return "another-works";
    }
    return g.deviceDead && mostly(r, 0.5) || !obeys(g, r) ? "another-fails" : "first-works";
  }

  private static void sensing() {
    ALL.put(
        "beam-path",
        (g, r) ->
            g.beamBlocked
                ? "something-in-it"
                : g.beamMargin < 1.3 && mostly(r, 0.85) ? "dirty" : "clear");
    ALL.put(
        "beam-light",
        (g, r) ->
            g.dark(true) || g.beamBlocked || g.beamUnfed || g.beamLight() < 0.8
                ? "blocked"
                : g.beamLight() < 1.4 ? "weak" : "sees");
    ALL.put(
        "beam-half-covered",
        (g, r) ->
            g.dark(true) || g.beamBlocked || g.beamUnfed || g.beamLight() < 2
                ? "drops-out"
                : "sees");
    ALL.put("edge-look", (g, r) -> g.edgeTorn ? "hurt" : "sound");
    ALL.put(
        "force-setting",
        (g, r) ->
            g.threshold < g.thresholdNoted - 60
                ? "finer"
                : g.threshold > g.thresholdNoted + 120 ? "coarser" : "as-noted");
    ALL.put(
        "pushes-seen",
        (g, r) -> g.reversingForce() > 400 && mostly(r, 0.5) ? "late" : "stops-or-reverses");
    ALL.put("turns-back", Words::turnsBack);
    ALL.put("stops-where", Words::stopsWhere);
    ALL.put("fault-shown", Words::shown);
  }

  private static String turnsBack(Gate g, Random r) {
    int back = 0;
    boolean early = true;
    double least = 1;
    double most = 0;
    for (int i = 0; i < 6; i++) {
      Run run = g.run(i % 2 == 0, true, r);
      if (run.turnedBack()) {
        back++;
        early &= run.place() < 0.1;
        least = Math.min(least, run.place());
        most = Math.max(most, run.place());
      }
    }
    if (back == 0) {
      return "no-never";
    }
    if (early && back >= 3) {
      return "always";
    }
    return back >= 2 && most - least < 0.08 ? "same-place" : "sometimes";
  }

  private static String stopsWhere(Gate g, Random r) {
    for (int i = 0; i < 5; i++) {
      Run run = g.run(i % 2 == 0, true, r);
      if (run.moved() && !run.arrived()) {
        boolean fixed = run.end() == Run.End.OBSTRUCTION && g.hardSpot > 0;
        return run.place() > 0.98
            ? "near-the-end"
            : run.place() < 0.1 ? "at-once" : fixed ? "same-place" : "anywhere";
      }
      if (run.arrived() && Math.abs(run.error()) > 0.04) {
        return "near-the-end";
      }
    }
    return "at-its-ends";
  }

  private static String shown(Gate g, Random r) {
    if (g.dark(true)) {
      return "nothing-shown";
    }
    if (g.held != Gate.Held.NOTHING && !g.heldNowAndThen || g.vehicleOnLoop) {
      return "command-input";
    }
    if (g.beamBlocked || g.beamUnfed) {
      return "beam-input";
    }
    for (int i = 0; i < 4; i++) {
      String seen =
          switch (g.run(i % 2 == 0, true, r).end()) {
            case OBSTRUCTION -> "obstruction";
            case BEAM -> "beam-input";
            case EDGE -> "edge-input";
            case LOST_POSITION, SPROCKET_ONLY, MOTOR_ONLY -> "position";
            case TOO_WEAK -> "low-supply";
            default -> "";
          };
      if (!seen.isEmpty()) {
        return seen;
      }
    }
    return g.batteries.rest() < 24 || !g.supply.charges() && mostly(r, 0.5)
        ? "low-supply"
        : "nothing-shown";
  }

  private static void supply() {
    ALL.put("runs-on-batteries", Words::onBatteries);
    ALL.put(
        "display-lit",
        (g, r) ->
            g.dark(true)
                ? "dark"
                : g.startVoltage(true) < Gate.GIVES_UP + 0.5 ? "flickers" : "steady");
    ALL.put(
        "terminal-look",
        (g, r) ->
            g.batteries.crust ? "crusted" : g.batteries.jointResistance > 0.01 ? "loose" : "clean");
    ALL.put(
        "feeder-judged",
        (g, r) ->
            g.supply.feederResistance > 10 && mostly(r, 0.6)
                ? "too-small"
                : g.supply.feederResistance > 6 && mostly(r, 0.6) ? "doubtful" : "enough");
    ALL.put(
        "breaker-position",
        (g, r) ->
            g.supply.breakerTripped ? "tripped" : mostly(r, 0.07) ? "not-known" : "switched-on");
    ALL.put(
        "same-circuit",
        (g, r) ->
            mostly(r, 0.4)
                ? "none-there"
                : g.supply.mains() ? "work" : mostly(r, 0.5) ? "dead-too" : "work");
    ALL.put(
        "mains-lamp",
        (g, r) ->
            g.supply.mains() && !g.supply.transformerDead && !g.dark(true) ? "shown" : "no-mains");
    ALL.put(
        "supply-setting",
        (g, r) ->
            Math.abs(g.supply.tap - Supply.NOMINAL) < 15
                ? "matches"
                : Math.abs(g.supply.tap - Supply.NOMINAL) < 60 ? "next-to-it" : "wrong");
  }

  private static String onBatteries(Gate g, Random r) {
    Run run = g.run(false, false, r);
    return run.arrived() && g.speed(false) > 0.75 ? "runs" : run.moved() ? "weak" : "not-at-all";
  }

  private static void use() {
    ALL.put(
        "timer-or-schedule",
        (g, r) ->
            g.timerHolds
                ? (mostly(r, 0.8) ? "meant" : "nobody-knows")
                : mostly(r, 0.1) ? "nobody-knows" : "not-meant");
    ALL.put(
        "vehicle-on-loop",
        (g, r) -> g.vehicleOnLoop || mostly(r, 0.03) ? "stands-there" : "no-vehicle");
    ALL.put(
        "as-usual-again",
        (g, r) ->
            g.runsAsUsual(r)
                ? "as-usual"
                : g.runsAsUsual(r) || g.runsAsUsual(r) ? "comes-and-goes" : "not-as-usual");
  }
}
