package yett.study.gate;

import java.util.Map;
import java.util.Random;
import yett.study.gate.Readings.Reading;
import yett.study.gate.Words.Sight;

/** What is found at transmitters, command devices and the controller's board. */
final class Commanded {
  /** A device for commands answers down to this voltage. */
  private static final double DEVICE_NEEDS = 18;

  /** Seconds after which somebody no longer waits for the gate to close by itself. */
  private static final double NEVER = 300;

  private Commanded() {}

  static void words(Map<String, Sight> all) {
    all.put("near-by", Commanded::nearBy);
    all.put("bridged-at-device", (g, r) -> opens(g, r) ? "runs" : "does-not");
    all.put(
        "transmitter-lamp",
        (g, r) -> !g.transmitterDead ? "lights" : r.nextDouble() < 0.6 ? "dark" : "weak");
    all.put("keypad-answer", (g, r) -> !fed(g) ? "dead" : opens(g, r) ? "opens" : "accepts-only");
    all.put("telephone-answer", (g, r) -> !fed(g) ? "dead" : opens(g, r) ? "opens" : "speaks-only");
    all.put("receiver-lamp", Commanded::receiver);
    all.put(
        "kind-that-fails",
        (g, r) ->
            g.deviceDead || g.deviceUnfed
                ? "transmitters"
                : g.transmitterDead ? "one-person" : "no-one-kind");
    all.put("which-side", Commanded::side);
    all.put("loop-try", (g, r) -> opens(g, r) ? "opens" : "does-not");
    all.put("input-bridged", (g, r) -> g.dark(true) ? "dead" : "acts");
    all.put("controller-alive", Commanded::alive);
    all.put(
        "wiggle-leads",
        (g, r) ->
            (g.batteries.jointResistance > 0.01 || g.heldNowAndThen) && r.nextDouble() < 0.5
                ? "lead"
                : g.boardFreezes && r.nextDouble() < 0.3 ? "board" : "nothing");
    all.put(
        "scorch-look",
        (g, r) ->
            (!g.supply.chargerAlive || g.supply.transformerDead) && r.nextDouble() < 0.2
                ? "burnt"
                : "clean");
    all.put(
        "board-warmed", (g, r) -> g.boardFreezes && r.nextDouble() < 0.4 ? "fails" : "no-change");
    all.put(
        "settings-compare",
        (g, r) -> Math.abs(g.threshold - g.thresholdNoted) > 80 ? "one-differs" : "as-noted");
    all.put("auto-close-seen", (g, r) -> !opens(g, r) ? "" : closes(g, r) ? "as-meant" : "never");
    all.put(
        "detector-lamp", (g, r) -> powered(g, g.vehicleOnLoop ? "vehicle-shown" : "no-vehicle"));
    all.put("exit-sensor-lamp", (g, r) -> fed(g) ? "follows" : "stays-off");
    all.put("edge-sender-answer", (g, r) -> fed(g) ? "answers" : "silent");
    all.put("after-reset", (g, r) -> powered(g, "no-change"));
    all.put("beam-shaded", (g, r) -> powered(g, "no-change"));
    all.put("alarm-heard", Commanded::alarm);
  }

  static void readings(Map<String, Reading> all) {
    all.put("receiver-range", (g, r) -> answers(g) && opens(g, r) ? 35_000 : 0);
    all.put("device-contact", (g, r) -> answers(g) && !g.transmitterDead ? 1 : 1e6);
    all.put("motor-output-voltage", Gate::driven);
    all.put("motor-plug-voltage", Gate::driven);
    all.put("auto-close-time", (g, r) -> !opens(g, r) ? Double.NaN : closes(g, r) ? 30 : NEVER);
    all.put("ten-runs", Commanded::wrongOfTen);
    all.put("accessory-voltage", (g, r) -> Readings.fed(g));
    all.put("accessory-current", (g, r) -> fed(g) ? 0.25 : 0);
    all.put("loop-change", (g, r) -> fed(g) ? 0.9 : 0);
  }

  /** What a device shows that has power; without it nothing can be told. */
  private static String powered(Gate g, String word) {
    return fed(g) ? word : "";
  }

  /** Whether a command that reaches the controller opens the gate. */
  private static boolean opens(Gate g, Random r) {
    return g.run(false, true, r).moved();
  }

  private static boolean closes(Gate g, Random r) {
    return g.run(true, true, r).moved();
  }

  private static boolean fed(Gate g) {
    return Readings.fed(g) > DEVICE_NEEDS;
  }

  private static boolean answers(Gate g) {
    return !g.deviceDead && !g.deviceUnfed && fed(g);
  }

  private static String nearBy(Gate g, Random r) {
    if (!answers(g) || !opens(g, r)) {
      return "nowhere";
    }
    if (!g.transmitterDead) {
      return "everywhere";
    }
    double battery = r.nextDouble(); // nearly flat, or flat
    return battery < 0.4 ? "near-only" : battery < 0.55 ? "sometimes" : "nowhere";
  }

  private static String receiver(Gate g, Random r) {
    if (!fed(g) || g.deviceUnfed) {
      return "silent";
    }
    return !g.deviceDead ? "answers" : r.nextDouble() < 0.3 ? "lamp-only" : "silent";
  }

  private static String side(Gate g, Random r) {
    if (!opens(g, r)) {
      return "both-fail";
    }
    boolean some = g.transmitterDead || !answers(g);
    return !some ? "both-work" : r.nextDouble() < 0.5 ? "both-fail" : "entering-fails";
  }

  private static String alive(Gate g, Random r) {
    if (g.dark(true)) {
      return "";
    }
    return g.startVoltage(true) < Gate.GIVES_UP - 3 ? "restarts" : "alive";
  }

  private static String alarm(Gate g, Random r) {
    boolean weak = g.batteries.rest() < 24 || g.startVoltage(false) < Gate.GIVES_UP;
    return weak && r.nextDouble() < 0.5 ? "now-and-then" : "quiet";
  }

  private static double wrongOfTen(Gate g, Random r) {
    int wrong = 0;
    for (int i = 0; i < 10; i++) {
      Run run = g.run(i % 2 == 0, true, r);
      wrong += !run.arrived() || Math.abs(run.error()) > 0.06 ? 1 : 0;
    }
    return wrong;
  }
}
