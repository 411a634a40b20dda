package yett.knowledge;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The occasion of an inspection. */
public enum InspectionKind {
  /** After mounting, and after a change of chain, board, operator or limits. */
  COMMISSIONING,
  /** Planned, about once a year. */
  SERVICE;

  /** The word used in cards, commands and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(InspectionKind::word).toList();
  }

  /**
   * @throws IllegalArgumentException if there is none of this name
   */
  public static InspectionKind named(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT));
  }
}
