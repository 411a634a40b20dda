package yett.knowledge;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Roles of the people who answer, from the least to the most qualified. Each may do what those
 * before may do.
 */
public enum Role {
  CALLER,
  TRAINEE,
  TECHNICIAN,
  ELECTRICIAN;

  /** Whether a person of this role may do what is reserved for {@code least} and better. */
  public boolean may(Role least) {
    return compareTo(least) >= 0;
  }

  /** The word used in cards and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Role::word).toList();
  }

  /**
   * @throws IllegalArgumentException if no role has this name
   */
  public static Role named(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT));
  }
}
