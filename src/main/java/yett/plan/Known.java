package yett.plan;

import java.util.Arrays;

/**
 * The values of places of a search that have been evaluated: a hash table with open addressing,
 * because there are thousands of them for one step, and boxed numbers take several times as long.
 *
 * <p>A place is a hash of the answers and failed repairs so far with whatever else tells it apart.
 */
final class Known {
  private static final int LEAST = 1 << 8;

  private long[] paths = new long[LEAST];
  private long[] details = new long[LEAST];

  /** NaN where there is none. */
  private double[] values = new double[LEAST];

  private int size;

  Known() {
    clear();
  }

  void clear() {
    Arrays.fill(values, Double.NaN);
    size = 0;
  }

  /** The value of a place; NaN if it has none. */
  double get(long path, long detail) {
    return values[slot(path, detail)];
  }

  void put(long path, long detail, double value) {
    if (2 * size >= values.length) {
      grow();
    }
    int at = slot(path, detail);
    size += Double.isNaN(values[at]) ? 1 : 0;
    paths[at] = path;
    details[at] = detail;
    values[at] = value;
  }

  private int slot(long path, long detail) {
    int mask = values.length - 1;
    int at = (int) Search.mix(path ^ Search.mix(detail)) & mask;
    while (!Double.isNaN(values[at]) && (paths[at] != path || details[at] != detail)) {
      at = at + 1 & mask;
    }
    return at;
  }

  private void grow() {
    long[] oldPaths = paths;
    long[] oldDetails = details;
    double[] oldValues = values;
    paths = new long[2 * oldPaths.length];
    details = new long[paths.length];
    values = new double[paths.length];
    clear();
    for (int i = 0; i < oldValues.length; i++) {
      if (!Double.isNaN(oldValues[i])) {
        put(oldPaths[i], oldDetails[i], oldValues[i]);
      }
    }
  }
}
