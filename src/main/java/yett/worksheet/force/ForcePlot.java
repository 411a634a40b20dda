package yett.worksheet.force;

import java.util.ArrayList;
import java.util.List;
import yett.calculation.ObstructionForce;
import yett.quantity.Quantity;
import yett.quantity.Unit;
import yett.worksheet.Plot;

/** Draws a recorded force with its limits; time is counted from contact. */
final class ForcePlot {
  private ForcePlot() {}

  static Plot of(ObstructionForce force) {
    double zero = force.contact().orElse(force.curve().start());
    double peak = force.curve().peak().force();
    List<Plot.Level> levels = new ArrayList<>();
    levels.add(level(force.zone().peakLimit(), "limit "));
    levels.add(level(ObstructionForce.STATIC_LIMIT, "limit "));
    levels.add(new Plot.Level("0", 0));
    if (peak > 0) {
      levels.add(level(peak, "peak "));
    }
    return new Plot(
        force.curve().samples().stream()
            .map(sample -> new Plot.Point(sample.time() - zero, sample.force()))
            .toList(),
        levels,
        "time from contact in s",
        "force in N (4.45 N is 1 lbf)");
  }

  private static Plot.Level level(double newtons, String name) {
    return new Plot.Level(name + Quantity.COUNT.show(Math.rint(newtons), Unit.ONE), newtons);
  }
}
