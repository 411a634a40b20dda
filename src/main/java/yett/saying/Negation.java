package yett.saying;

import java.util.regex.Pattern;

/**
 * Decides whether a clause denies something. The language model hardly distinguishes "smoke" from
 * "no smoke".
 */
public final class Negation {
  private static final Pattern NEGATING =
      Pattern.compile(
          "(?i)\\b(?:no|not|none|nobody|nothing|never|neither|nor|without|cannot|no one|hardly"
              + "|(?:do|does|did|is|are|was|were|wo|ca|could|would|has|have|had|should|must|need|ai)n['’]?t)\\b");

  private Negation() {}

  public static boolean in(String clause) {
    return NEGATING.matcher(clause).find();
  }
}
