package yett.saying;

import java.util.regex.Pattern;

/**
 * Whether a line says that somebody holds the gate with their hands or body. A gate that is held
 * can start, fall or roll, and takes whoever holds it along.
 */
public final class Holding {
  private static final String PERSON = "(?:" + Forcing.PEOPLE + ")";

  private static final String GATE =
      "(?:(?:the|that|this|our|whole|bloody|damn|stupid) )*"
          + "(?:gate(?! (?:button|remote|switch|key|opener|fob|code)\\b)|leaf)\\b";

  private static final String IT =
      "(?:it|this|that)\\b(?= (?:open|shut|closed|back|still|up|steady|with|by hand|against|from"
          + "|so|until|now|for|in place|there|here|at the moment)\\b|$)";

  private static final String BODY = "with (?:my|his|her|our|their|both|the) ";

  private static final Pattern HELD =
      Pattern.compile(
          "\\b"
              + PERSON
              + "(?: (?!not\\b|dont\\b|wont\\b|cant\\b)\\w+){0,3} "
              + "(?:(?:hold|holds|holding|brace|braces|bracing|prop|props|propping)"
              + "(?: on to| onto| back)? (?:"
              + GATE
              + "|"
              + IT
              + ")|(?:keep|keeps|keeping) (?:"
              + GATE
              + "|it) (?:open|shut|closed|back|still|up|from \\w+ing) "
              + BODY
              + "|(?:stand|stands|standing|sit|sits|sitting) (?:up )?against "
              + GATE
              + "|(?:have |has )?got hold of "
              + GATE
              + ")|^(?:(?:still|just|yes|and) )*holding (?:"
              + GATE
              + "|"
              + IT
              + ")");

  private static final Pattern DENIED =
      Pattern.compile(
          "\\b(?:nobody|no one|dont|do not|doesnt|isnt|arent|not|never|stopped|if|should|shall|can"
              + "|could)(?: \\w+){0,2} (?:hold|keep|brac|prop)");

  /** Somebody is in its way; the gate is not to be let go of at them. */
  private static final Pattern OFF_SOMEBODY =
      Pattern.compile(
          "\\b(?:off|away from|clear of) (?:him|her|them|me|my|his|the (?:boy|girl|man|child))\\b");

  private Holding() {}

  /** Whether somebody holds the gate now. */
  public static boolean in(String line) {
    String plain = PlainWords.of(line);
    return HELD.matcher(plain).find()
        && !DENIED.matcher(plain).find()
        && !OFF_SOMEBODY.matcher(plain).find();
  }
}
