package yett.saying;

import java.util.regex.Pattern;

/**
 * Whether a clause tells of a hurt to somebody's body, however small: "the lad grazed his knee".
 */
final class Injury {
  private static final String WHOSE = "(?:his|her|my|their|our|childs|lads|boys|girls|mans)";

  private static final String PART =
      "(?:(?:left|right|little|whole) )?(?:fingers?|thumb|hands?|wrist|arms?|elbow|shoulder|legs?"
          + "|knees?|shins?|ankle|foot|feet|toes?|head|face|nose|forehead|chin|lip|neck|ribs?)\\b";

  private static final String HARM =
      "(?:graz|bruis|cut|bleed|bled|blood|scrap|scratch|skinn|sprain|twist|brok|break|fractur|crush"
          + "|squash|nipp|pinch|swoll|hurt|gash|burn|sor)\\w*";

  private static final Pattern HURT =
      Pattern.compile(
          "\\b"
              + HARM
              + "(?: \\w+){0,3} "
              + WHOSE
              + " "
              + PART
              + "|\\b"
              + WHOSE
              + " "
              + PART
              + "(?: \\w+){0,3} "
              + HARM);

  private static final Pattern DENIED =
      Pattern.compile("\\b(?:not|never|nobody|no one|without|didnt|hasnt|isnt|nearly|almost)\\b");

  private Injury() {}

  static boolean in(String clause) {
    String plain = PlainWords.of(clause);
    return HURT.matcher(plain).find() && !DENIED.matcher(plain).find() && !NotNow.in(clause);
  }
}
