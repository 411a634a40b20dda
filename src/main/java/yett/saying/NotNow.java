package yett.saying;

import java.util.regex.Pattern;

/**
 * Whether a clause tells of what is not so now: what was long ago, what is only feared, asked or
 * meant to be. A model of meanings hardly tells "it fell over" from "what if it falls over".
 */
final class NotNow {
  private static final String SOMEBODY = "(?:some(?:body|one)|any(?:body|one)|people|a child|kids)";

  /** What was, and is not said to be any more. */
  private static final String PAST =
      "used to|(?:last|the other) (?:year|winter|summer|autumn|spring)"
          + "|(?:years?|months?|ages|long) (?:ago|back)|back then"
          + "|in the (?:spring|summer|autumn|winter)";

  /** What somebody asks or imagines; but not "ever since". */
  private static final String IMAGINED =
      "ever(?! since| so)|in theory|what if|what happens if|suppose|imagine"
          + "|can (?:it|this|that)|(?:could|might|would) (?:it|this|that|the gate|they|"
          + SOMEBODY
          + ")";

  /** What may come; but not what nearly came, nor what somebody could see or smell. */
  private static final String FEARED =
      "(?:it|this|that|thing|gate|they|one day|"
          + SOMEBODY
          + ") (?:could|might|would)(?! have|['’]ve| see| smell| hear| feel)"
          + "|(?:before|until|till) "
          + SOMEBODY
          + "|(?:one day|"
          + SOMEBODY
          + ")(?:['’]s| is| are)? (?:will|going to|gonna|bound to)";

  private static final String MEANT =
      "(?<!not )(?<!n['’]t )(?<!nt )(?:meant|supposed|ought) to"
          + "|(?:i|we|you|he|she|they)(?: have|['’]ve)?(?: very)? (?:nearly|almost)"
          + " (?:hit|drove|ran|crashed|backed|bumped|struck|scraped|clipped|reversed)";

  private static final Pattern NOT_NOW =
      Pattern.compile("(?i)\\b(?:" + String.join("|", PAST, IMAGINED, FEARED, MEANT) + ")\\b");

  /** What was only to be expected, and has come: "if it ever smoked, and now it has". */
  private static final Pattern HAS_COME =
      Pattern.compile(
          "(?i)\\b(?:and|but|well|now)[ ,]+(?:now )?(?:it|they|that|this) (?:has|have|did|does|is|was)"
              + "(?: now)?[.! ]*$");

  private NotNow() {}

  static boolean in(String clause) {
    return NOT_NOW.matcher(clause).find() && !HAS_COME.matcher(clause).find();
  }
}
