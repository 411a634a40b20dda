package yett.saying;

import java.util.regex.Pattern;

/**
 * At which end the gate stays, by what a clause says of it. To a model of meanings "it will not
 * open" and "it will not close" are nearly one.
 */
enum Standing {
  OPEN,
  SHUT,
  UNSAID;

  private static final String STAYS =
      "\\b(?:stay(?:s|ed|ing)?|stands?|stood|standing|stuck|left|hangs?|hung|remains?|jammed"
          + "|sits?|sitting|keeps?|kept|wide|frozen)(?: \\w+){0,2} ";

  private static final String NOT =
      "(?:\\b(?:not|never|no longer|cannot|without|refuses? to|fails? to|unable to)"
          + "|n['’]?t)(?: \\w+){0,2} ";

  private static final Pattern STAYS_OPEN =
      Pattern.compile(
          "(?i)(?:"
              + STAYS
              + "open|"
              + NOT
              + "(?:clos(?:e|ed|ing)|shut|shutting|(?:come|go) (?:back|shut)))\\b");
  private static final Pattern STAYS_SHUT =
      Pattern.compile(
          "(?i)(?:" + STAYS + "(?:shut|closed)|" + NOT + "(?:go |come )?open(?:ed|ing)?)\\b");

  static Standing in(String clause) {
    boolean open = STAYS_OPEN.matcher(clause).find();
    boolean shut = STAYS_SHUT.matcher(clause).find();
    return open == shut ? UNSAID : open ? OPEN : SHUT;
  }
}
