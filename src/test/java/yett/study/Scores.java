package yett.study;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How good forecasts were. Brier score: mean of (p - y)², 0 perfect, 1 worst (Brier 1950). Murphy's
 * partition: Brier = reliability - resolution + uncertainty, exact where the forecasts of a group
 * are equal; with a range of forecasts in a group something is left over (Murphy 1973; Stephenson,
 * Coelho and Jolliffe 2008).
 */
record Scores(
    int count,
    double brier,
    double reliability,
    double resolution,
    double uncertainty,
    double calibrationError,
    List<Group> groups) {

  /** A chance that was given to something, and whether it was so. */
  record Forecast(double chance, boolean right) {}

  /**
   * Forecasts of about the same size.
   *
   * @param forecast their mean
   * @param right share that was right
   */
  record Group(double low, double high, int count, double forecast, double right, int hits) {}

  /** Scores forecasts in so many groups of equal width. */
  static Scores of(List<Forecast> forecasts, int bins) {
    int n = forecasts.size();
    double base = forecasts.stream().filter(Forecast::right).count() / (double) Math.max(1, n);
    double brier =
        forecasts.stream()
            .mapToDouble(f -> Math.pow(f.chance() - (f.right() ? 1 : 0), 2))
            .average()
            .orElse(0);
    List<Group> groups =
        IntStream.range(0, bins)
            .mapToObj(b -> group(forecasts, b, bins))
            .filter(g -> g.count() > 0)
            .toList();
    double reliability = 0;
    double resolution = 0;
    double error = 0;
    for (Group g : groups) {
      double share = g.count() / (double) n;
      reliability += share * Math.pow(g.forecast() - g.right(), 2);
      resolution += share * Math.pow(g.right() - base, 2);
      error += share * Math.abs(g.forecast() - g.right());
    }
    return new Scores(n, brier, reliability, resolution, base * (1 - base), error, groups);
  }

  private static Group group(List<Forecast> all, int bin, int bins) {
    List<Forecast> in =
        all.stream()
            .filter(f -> Math.min(bins - 1, (int) (f.chance() * bins + 1e-9)) == bin)
            .toList();
    int hits = (int) in.stream().filter(Forecast::right).count();
    return new Group(
        bin / (double) bins,
        (bin + 1) / (double) bins,
        in.size(),
        in.stream().mapToDouble(Forecast::chance).average().orElse(0),
        hits / (double) Math.max(1, in.size()),
        hits);
  }

  /** What the groups' width leaves over: the score less its three parts. */
  double left() {
    return brier - (reliability - resolution + uncertainty);
  }
}
