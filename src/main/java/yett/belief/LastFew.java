package yett.belief;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps the last few results of a slow function by their argument. Thread-safe. Two threads may
 * compute the same result at once, so equal arguments have to give equal results.
 */
public final class LastFew<K, V> {
  private final Map<K, V> kept;

  /**
   * @param most how many are kept
   */
  public LastFew(int most) {
    this.kept =
        new LinkedHashMap<>(2 * most, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The result for an argument.
   *
   * @param of must not change afterwards
   * @param made the function
   */
  public V get(K of, Function<K, V> made) {
    synchronized (kept) {
      V known = kept.get(of);
      if (known != null) {
        return known;
      }
    }
    V value = made.apply(of);
    synchronized (kept) {
      kept.put(of, value);
    }
    return value;
  }
}
