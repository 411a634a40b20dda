package yett.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yett.belief.Belief;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.testing.Advices;

/**
 * The order in which a tradesman goes through a gate: supply, command, safety devices, chain,
 * position, leaf. The first telling outcome leads to its repair; when that does not help, the chart
 * goes on below it. Common practice.
 */
final class FlowChart implements Policy {
  /**
   * A line of the chart.
   *
   * @param repairs telling outcome to the repair it leads to
   */
  private record Line(String check, Map<String, String> repairs) {}

  private static final List<Line> CHART =
      List.of(
          new Line("breaker-position", Map.of("tripped", "reset-isolator")),
          new Line("mains-lamp", Map.of("no-mains", "restore-mains")),
          new Line(
              "charging-voltage",
              Map.of("not-charging", "replace-charger", "low", "replace-charger")),
          new Line(
              "supply-setting",
              Map.of("wrong", "correct-supply-setting", "next-to-it", "correct-supply-setting")),
          new Line(
              "battery-rest-voltage",
              Map.of("flat", "replace-batteries", "low", "charge-batteries")),
          new Line(
              "battery-running-voltage",
              Map.of("collapses", "replace-batteries", "sags", "replace-batteries")),
          new Line(
              "terminal-look", Map.of("loose", "clean-terminals", "crusted", "clean-terminals")),
          new Line(
              "which-commands",
              Map.of("one-transmitter", "renew-transmitter-battery", "one-kind", "mend-receiver")),
          new Line(
              "input-lamps", Map.of("one-on", "free-command", "comes-and-goes", "free-command")),
          new Line("timer-or-schedule", Map.of("meant", "explain-use")),
          new Line("vehicle-on-loop", Map.of("stands-there", "explain-use")),
          new Line("beam-path", Map.of("dirty", "clean-beam", "something-in-it", "explain-use")),
          new Line("beam-light", Map.of("weak", "clean-beam", "blocked", "clean-beam")),
          new Line("edge-resistance", Map.of("shorted", "replace-edge", "open", "replace-edge")),
          new Line("force-setting", Map.of("finer", "set-force", "coarser", "set-force")),
          new Line(
              "release-state", Map.of("released", "engage-release", "unlocked", "engage-release")),
          new Line("chain-looks", Map.of("parted", "refit-chain")),
          new Line("chain-length", Map.of("worn", "replace-chain", "worn-out", "replace-chain")),
          new Line(
              "chain-sag",
              Map.of(
                  "slack",
                  "tighten-chain",
                  "very-slack",
                  "tighten-chain",
                  "tight",
                  "slacken-chain")),
          new Line("sprocket-offset", Map.of("out", "align-chain", "far-out", "align-chain")),
          new Line("marker-look", Map.of("gone", "fit-marker", "moved", "reseat-marker")),
          new Line(
              "sensor-swing",
              Map.of("dead", "replace-marker-sensor", "weak", "replace-marker-sensor")),
          new Line("end-stop-look", Map.of("shifted", "reset-end-stop")),
          new Line(
              "limit-error-closed", Map.of("wrong", "teach-limits", "far-off", "teach-limits")),
          new Line("push-force", Map.of("stiff", "free-leaf", "hard", "free-leaf")),
          new Line(
              "motor-alone-current", Map.of("high", "replace-motor", "little", "replace-motor")),
          new Line("motor-resistance", Map.of("high", "replace-motor", "open", "replace-motor")),
          new Line(
              "supply-under-load",
              Map.of("large", "improve-feeder", "very-large", "improve-feeder")));

  /** What was found so far; one case's, so every case takes a chart of its own. */
  private final Map<String, String> seen = new HashMap<>();

  @Override
  public String name() {
    return "fixed flow chart";
  }

  @Override
  public boolean followsAnswers() {
    return true;
  }

  @Override
  public Advice advise(Belief belief, Planner.Options options, Map<String, String> found) {
    if (options.cured()) {
      return Advices.nothing();
    }
    seen.putAll(found);
    for (Line line : CHART) {
      String outcome = seen.get(line.check());
      if (outcome == null && options.checks().contains(line.check())) {
        return Advices.asking(line.check());
      }
      String repair = outcome == null ? null : line.repairs().get(outcome);
      if (repair != null && options.repairs().contains(repair)) {
        return Advices.repairing(repair);
      }
    }
    return Advices.nothing();
  }
}
