package yett.calculation;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How a reading moves over the years: the straight line of least squares through the readings. Its
 * slope has an interval of 95 %: by Student's t from how the readings scatter about the line, but
 * never narrower than the instrument alone would make it, as a few readings can lie on a line by
 * chance.
 *
 * @param readings how many there are
 * @param from years of the first one
 * @param to years of the last one
 * @param slope a year, in the unit of the readings
 * @param low of the slope
 * @param high of the slope
 * @param now where the line stands at the last reading
 */
public record Trend(
    int readings, double from, double to, double slope, double low, double high, double now) {
  /** Two points are always a line. */
  public static final int FEWEST = 3;

  /** Years; over less a season looks like a trend. */
  public static final double SHORTEST = 0.5;

  private static final double BEYOND = 0.05;

  /**
   * A reading.
   *
   * @param years from wherever they are counted
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
   * Years from the last reading until the line meets a limit ahead of it: by the slope itself, and
   * from the steepest to the flattest that it may be. Empty if the line does not surely go there,
   * or is there already.
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

  /** Years until something: about, at the earliest and at the latest. */
  public record Ahead(double about, double soonest, double latest) {}
}
