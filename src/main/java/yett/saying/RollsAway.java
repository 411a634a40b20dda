package yett.saying;

import java.util.regex.Pattern;

/**
 * Finds a leaf that rolls away by itself, in whatever sentence: "when the power is off it rolls
 * open by itself" is nearly one about power cuts to a model of meanings.
 */
final class RollsAway {
  private static final Pattern ROLLS =
      Pattern.compile(
          "\\b(?:roll(?:s|ed|ing)?|creep(?:s|ing)?|crept|drift(?:s|ed|ing)?|slid(?:es|ing)?)\\b"
              + ".*\\b(?:by (?:itself|its ?self|it self)|on its own|of its own accord|all alone"
              + "|down the (?:hill|slope))\\b");

  private static final Pattern DENIED =
      Pattern.compile("\\b(?:not|never|no longer|doesnt|didnt|wont|cant|stopped)\\b");

  private RollsAway() {}

  static boolean in(String clause) {
    String plain = PlainWords.of(clause);
    return ROLLS.matcher(plain).find() && !DENIED.matcher(plain).find();
  }
}
