package yett.knowledge;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A part of the mains side on which a card lets somebody work while it is locked off and dead. */
public enum MainsPart {
  /** The selector or tap that fits the operator to its supply. */
  SELECTOR("the input selector"),
  /** Terminals and fuse holders, and what hangs on them. */
  TERMINAL("mains terminals");

  private final String says;

  MainsPart(String says) {
    this.says = says;
  }

  /** The word used in cards and in the firm's settings. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As it is said within a sentence. */
  public String says() {
    return says;
  }

  static List<String> words() {
    return Arrays.stream(values()).map(MainsPart::word).toList();
  }

  /**
   * @throws IllegalArgumentException if no part has this word
   */
  static MainsPart named(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
