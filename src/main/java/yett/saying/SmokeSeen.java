package yett.saying;

import java.util.regex.Pattern;

/**
 * Finds smoke or fire that somebody says is there, in the middle of a sentence about other things:
 * "it won't open there is smoke and he is inside". A sentence as a whole may mean something else
 * more nearly.
 */
final class SmokeSeen {
  private static final String SEEN =
      "\\b(?:there(?:s| is| are)|(?:i|we|you) (?:can )?(?:see|smell)|its|it is|full of)"
          + " (?:just |also |now |lots of |a lot of |some |thick |black |white |grey |heavy )*";

  /** "A smoke alarm", "the fire service", "fire door": none of them burns. */
  private static final String NO_THING =
      "(?! ?(?:alarm|detector|brigade|service|station|engine|door|drill|exit|escape|fighter|man"
          + "|men|gate|lane|road|route|access|extinguisher|panel|switch|release|safety|risk))";

  private static final Pattern SMOKE =
      Pattern.compile(SEEN + "(?:smoke|smoking|sparks)\\b" + NO_THING);

  private static final Pattern FIRE =
      Pattern.compile(SEEN + "(?:flames|(?:a |on )?fire)\\b" + NO_THING);

  private static final Pattern DENIED =
      Pattern.compile("\\b(?:if|in case|when|whenever|until|never|not)\\b");

  private SmokeSeen() {}

  static boolean isSmoke(String clause) {
    return is(SMOKE, clause);
  }

  static boolean isFire(String clause) {
    return is(FIRE, clause);
  }

  private static boolean is(Pattern seen, String clause) {
    String plain = PlainWords.of(clause);
    return seen.matcher(plain)
            .results()
            .anyMatch(m -> !DENIED.matcher(before(plain, m.start())).find())
        && !NotNow.in(clause);
  }

  /** The words just before; an "if" further off is about something else. */
  private static String before(String text, int at) {
    return text.substring(Math.max(0, at - 12), at);
  }
}
