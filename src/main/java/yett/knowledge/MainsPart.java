package yett.knowledge;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A part on the mains side that a card lets somebody work on while it is locked off and dead. */
public enum MainsPart {
  /** The selector or tap that fits the operator to its supply. */
  SELECTOR("the input selector"),
  /** Terminals, fuse holders and what is connected to them. */
  TERMINAL("mains terminals");

  private final String says;

  MainsPart(String says) {
    this.says = says;
  }

  /** The word used in cards and in the firm's settings. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The name within a sentence. */
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
