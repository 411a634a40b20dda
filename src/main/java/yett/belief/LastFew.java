package yett.belief;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The last few results of what takes long to make, by what they were made of. Safe for several
 * threads; two of them may make the same thing at once, so what is made of equal things has to be
 * equal.
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
   * @param of must not change afterwards
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
