package yett.saying;

import java.util.regex.Pattern;

/** Whether a clause denies something. A model of meanings hardly tells "smoke" from "no smoke". */
final class Negation {
  private static final Pattern NEGATING =
      Pattern.compile(
          "(?i)\\b(?:no|not|none|nobody|nothing|never|neither|nor|without|cannot|no one|hardly"
              + "|(?:do|does|did|is|are|was|were|wo|ca|could|would|has|have|had|should)n['’]?t)\\b");

  private Negation() {}

  static boolean in(String clause) {
    return NEGATING.matcher(clause).find();
  }
}
