package yett.saying;

import java.util.regex.Pattern;

/**
 * Whether a line says that somebody forces the gate or means to: pushes, pulls, lifts or climbs it,
 * or goes at it with a tool or a vehicle. To a model of meanings that is a complaint, "can be
 * pushed open"; but a gate that is forced can leave its track and fall.
 */
public final class Forcing {
  /** Who may force the gate, or hold it; alternatives of a pattern. */
  static final String PEOPLE =
      "i|we|he|she|they|im|were|hes|shes|theyre|ive|weve|theyve|ill|some(?:body|one)|people|lads?"
          + "|boys?|man|men|bloke|guys?|kids?|drivers?|husband|wife|son|brother|father|dad"
          + "|daughter|sister|mother|mum|mom|grandad|grandma|uncle|friends?|mates?|colleagues?"
          + "|every(?:body|one)|neighbours?|caretaker|foreman|guard|of us|of them";

  private static final String PERSON = "(?:" + PEOPLE + "|theyll|lets)";

  private static final String GATE =
      "(?:(?:the|that|this|our|whole|bloody|damn|stupid) )*"
          + "(?:gate(?! (?:button|remote|switch|key|opener|fob|code|motor)\\b)|leaf|thing|bars)\\b";

  /** Not what is pulled out or pushed in: a stop button, a switch. */
  private static final String IT =
      "(?:it|this|that)\\b(?! (?:back )?(?:in|out|up|on|down|home)\\b)"
          + "(?! (?:button|switch|lever|key)\\b)";

  /** Nobody does this to a button. */
  private static final String STEMS =
      "(?:shov|yank|forc|heav|pr[yi]|prise?|prize?|lever|jemm|ram|barg|haul|tug|drag|tow|winch"
          + "|jack|kick|lift|lean)";

  private static final String FORCES =
      STEMS + "(?:e|ed|es|ing|s|y|ied|ging|ged|ming|med)?(?: (?:on|at|against|up))?";

  private static final String FORCING = STEMS + "(?:ed|ing|ied|ging|ged|ming|med)";

  private static final String WAY =
      "(?:(?:back|right|all the way|a bit|the rest|half way) )*"
          + "(?:open|shut|closed|along|across|over|apart|aside|hard|harder|by hand|the last bit"
          + "|myself|themselves|ourselves)\\b";

  private static final String PUSHING = "(?:push|pull)ing (?:(?:on|at|against) )?";
  private static final String PUSHES = "(?:push|pull)(?:ed|es|s)? (?:(?:on|at|against) )?";

  private static final String TOOL =
      "(?:(?:an?|the|my|our|his|her|their|some) )?(?:\\w+ )?(?:crow ?bar|tractor|winch|rope"
          + "|chain block|jack|fork ?lift|digger|telehandler|quad|pry ?bar|iron bar|strap"
          + "|sledge ?hammer|lorry|van|truck|car|land ?rover|jeep)s?\\b";

  private static final String MOVES =
      "(?:open(?:ed|ing)?|mov(?:e|ed|ing)|shift(?:ed|ing)?|clos(?:e|ed|ing)|g[eo]t(?:ting)?"
          + "|free(?:d|ing)?)";

  private static final String ELSEWHERE =
      "(?! (?:the |a |that )?(?:wall|hedge|hill|ladder|stairs))";

  private static final String CLIMBS =
      "(?:climb(?:ed|ing|s)?(?: (?:over|on|up|across|through|under)"
          + ELSEWHERE
          + "| (?:the |that )?gate)|squeez(?:e|ed|ing) (?:past|through|under|between))";

  private static final String DEED =
      "(?:"
          + String.join(
              "|",
              FORCES + " (?:" + GATE + "|" + IT + ")",
              FORCES + " (?:open|shut|through)\\b",
              PUSHES + "(?:" + GATE + "|" + IT + " " + WAY + ")",
              PUSHING + "(?:" + GATE + "|" + IT + ")",
              MOVES + " (?:" + GATE + "|it\\b|this\\b)(?: \\w+){0,3} (?:with|using) " + TOOL,
              "(?:hook|ti|hitch|rop|strap|fasten|attach)(?:e|ed|ing)? "
                  + TOOL
                  + "(?: \\w+){0,2} (?:on|to|round|around|up|onto)\\b",
              CLIMBS)
          + ")";

  private static final String MAY_ONE =
      "(?:ok|okay|alright|all right|fine|safe|allowed|permitted|possible|idea|better|best|how) to";

  /** Without its subject only at the beginning, "forcing it now", or where it is asked about. */
  private static final Pattern FORCED =
      Pattern.compile(
          "\\b(?:"
              + PERSON
              + "(?: \\w+){0,4}|"
              + MAY_ONE
              + "(?: just)?) "
              + DEED
              + "|^(?:(?:just|no|yes|ok|now|so|well|not|still) )*(?:(?:"
              + FORCING
              + "|"
              + PUSHING.strip()
              + ") (?:"
              + GATE
              + "|"
              + IT
              + ")|climbing (?:over|on|up)\\b"
              + ELSEWHERE
              + ")");

  private static final Pattern DENIED =
      Pattern.compile(
          "\\b(?:dont|do not|didnt|did not|not to|never|nobody|no one|without|stopped?(?: \\w+)?)"
              + "(?: \\w+)? (?:"
              + STEMS
              + "(?:e|y|ed|ing)?|(?:push|pull)(?:ed|ing)?|climb(?:ed|ing)?)\\b");

  private static final Pattern MEANT =
      Pattern.compile(
          "\\b(?:can|cant|could|couldnt|shall|should|may|might|will|would|ill|theyll|going to"
              + "|gonna|about to|wants? to|if|lets|"
              + MAY_ONE
              + ")\\b");

  private Forcing() {}

  /** Whether somebody forces the gate, has forced it, means to, or asks whether to. */
  public static boolean in(String line) {
    String plain = PlainWords.of(line);
    return FORCED.matcher(plain).find() && !DENIED.matcher(plain).find();
  }

  /** Whether it was only asked or meant, and may not have been done. */
  public static boolean isOnlyMeant(String line) {
    return in(line) && MEANT.matcher(PlainWords.of(line)).find();
  }
}
