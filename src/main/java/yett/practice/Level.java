package yett.practice;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How difficult an exercise is: by the rank of the fault once it is known what people say, and by
 * the number of faults. Considered judgement.
 */
public enum Level {
  /** What people say points to it: the fault is among the first three causes. */
  EASY,
  /** The fault is among the first twelve causes. */
  FAIR,
  /** The fault is further down, or there are two independent faults. */
  HARD;

  private static final int EASY_RANK = 3;
  private static final int FAIR_RANK = 12;

  /**
   * @param rank of the true cause that is believed most, 1 for the first
   * @param faults that arose independently
   */
  static Level of(int rank, int faults) {
    if (faults > 1 || rank > FAIR_RANK) {
      return HARD;
    }
    return rank <= EASY_RANK ? EASY : FAIR;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Level::word).toList();
  }

  /**
   * @throws IllegalArgumentException if no level has this name
   */
  public static Level named(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT));
  }
}
