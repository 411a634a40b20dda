package yett.study.gate;

import java.util.LinkedHashSet;
import java.util.Random;
import java.util.Set;

/** What the users of a gate notice, in the words in which they complain. */
final class Symptoms {
  private Symptoms() {}

  /** Everything that could be said of it after a day of use. */
  static Set<String> of(Gate g, boolean afterOutage, Random r) {
    Set<String> all = new LinkedHashSet<>();
    for (int i = 0; i < 6; i++) {
      Run run = g.run(i % 2 == 0, true, r);
      if (i % 2 == 0) {
        closing(run, all);
      }
      either(run, all);
    }
    Run closed = g.run(true, true, r);
    add(all, "stops-in-wrong-place", closed.arrived() && Math.abs(closed.error()) > 0.04);
    add(all, "works-sometimes", all.size() > 0 && closed.arrived());
    add(all, "slow", closed.moved() && (g.speed(true) < 0.8 || !g.knowsPlace));
    add(all, "one-command-fails", g.transmitterDead || g.deviceDead || g.deviceUnfed);
    add(all, "noisy-chain", g.chain.sag() > 0.026 * g.chain.span || g.chain.climbs());
    add(all, "chain-hangs", !g.chain.joined || g.chain.sag() > 0.032 * g.chain.span);
    add(all, "scrapes", g.wheelBad || g.hardSpot > 120 || g.chain.tight());
    add(all, "pushes-on", g.reversingForce() > 400);
    add(all, "lost-after-power-cut", afterOutage && !all.isEmpty());
    add(all, "low-battery-warning", g.batteries.rest() < 24);
    add(all, "fails-without-mains", afterOutage && !g.run(false, false, r).arrived());
    add(all, "fault-lamp", !g.knowsPlace || !g.edgeSound());
    return all;
  }

  private static void closing(Run run, Set<String> all) {
    add(all, "closes-partway", run.turnedBack() && run.place() >= 0.1);
    add(all, "stays-open", run.end() == Run.End.IGNORED || run.end() == Run.End.BEAM);
    add(all, "bangs-at-the-end", run.end() == Run.End.OBSTRUCTION && run.place() > 0.98);
  }

  private static void either(Run run, Set<String> all) {
    boolean dead =
        switch (run.end()) {
          case DARK, TOO_WEAK, MOTOR_DEAD, IGNORED -> true;
          default -> false;
        };
    add(all, "does-nothing", dead);
    boolean stops = run.end() == Run.End.LOST_POSITION || run.end() == Run.End.FROZE;
    add(all, "runs-then-stops", stops || run.turnedBack());
    boolean idle = run.end() == Run.End.MOTOR_ONLY || run.end() == Run.End.SPROCKET_ONLY;
    add(all, "motor-runs-leaf-still", idle);
  }

  private static void add(Set<String> all, String symptom, boolean so) {
    if (so) {
      all.add(symptom);
    }
  }
}
