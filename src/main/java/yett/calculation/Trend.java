package yett.calculation;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The change of a reading over the years: the least-squares line through the readings. The 95 %
 * interval of its slope comes from Student's t and the scatter of the readings about the line. It
 * is never narrower than the instrument's uncertainty alone would make it, because a few readings
 * can lie on a line by chance.
 *
 * @param readings number of readings
 * @param from time of the first one, in years
 * @param to time of the last one, in years
 * @param slope a year, in the unit of the readings
 * @param low end of the slope's interval
 * @param high end of the slope's interval
 * @param now value of the line at the last reading
 */
public record Trend(
    int readings, double from, double to, double slope, double low, double high, double now) {
  /** Fewest readings for a trend: a line through two fits always. */
  public static final int FEWEST = 3;

  /** Shortest span (years): over less, a seasonal change looks like a trend. */
  public static final double SHORTEST = 0.5;

  private static final double BEYOND = 0.05;

  /**
   * A reading.
   *
   * @param years from any start, the same for all points
   */
  public record Point(double years, double value) {}

  /**
   * The trend of these readings; empty if they are too few, or too close together in time.
   *
   * @param uncertainty standard uncertainty of one reading
   * @throws IllegalArgumentException if the uncertainty is negative
   */
  public static Optional<Trend> of(List<Point> readings, double uncertainty) {
    Require.notNegative("uncertainty", uncertainty);
    double from = readings.stream().mapToDouble(Point::years).min().orElse(0);
    double to = readings.stream().mapToDouble(Point::years).max().orElse(0);
    if (readings.size() < FEWEST || to - from < SHORTEST) {
      return Optional.empty();
    }
    SimpleRegression line = new SimpleRegression();
    readings.forEach(p -> line.addData(p.years(), p.value()));
    double slope = line.getSlope();
    double scatter = line.getSlopeConfidenceInterval(BEYOND);
    double instrument =
        NormalDistribution.of(0, 1).inverseSurvivalProbability(BEYOND / 2)
            * uncertainty
            / Math.sqrt(line.getXSumSquares());
    double reach = Math.max(Double.isNaN(scatter) ? 0 : scatter, instrument);
    return Optional.of(
        new Trend(
            readings.size(), from, to, slope, slope - reach, slope + reach, line.predict(to)));
  }

  public boolean rises() {
    return low > 0;
  }

  public boolean falls() {
    return high < 0;
  }

  /**
   * Years from the last reading until the line reaches a limit: at the slope itself, and at the
   * steepest and flattest slope of the interval. Empty if part of the interval does not lead there,
   * or the line is past the limit already.
   */
  public Optional<Ahead> until(double limit) {
    double way = limit - now;
    boolean towards = way > 0 && rises() || way < 0 && falls();
    if (!towards || !Double.isFinite(limit)) {
      return Optional.empty();
    }
    double one = way / low;
    double other = way / high;
    return Optional.of(new Ahead(way / slope, Math.min(one, other), Math.max(one, other)));
  }

  /** Years until an event: expected, earliest and latest. */
  public record Ahead(double about, double soonest, double latest) {}
}
