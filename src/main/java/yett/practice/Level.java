package yett.practice;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How hard an exercise is. Considered judgement: by how far down the list the fault stands once it
 * is known what people say, and by how many faults there are.
 */
public enum Level {
  /** What people say points to it: the fault is among the first three. */
  EASY,
  /** Among the first twelve. */
  FAIR,
  /** Further down, or two faults that have nothing to do with each other. */
  HARD;

  private static final int EASY_RANK = 3;
  private static final int FAIR_RANK = 12;

  /**
   * @param rank of the true cause that is believed most, 1 for the first
   * @param faults that arose by themselves
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
