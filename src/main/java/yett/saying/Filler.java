package yett.saying;

import java.util.regex.Pattern;

/** What people say beside what they mean: the day, politeness, temper, punctuation read aloud. */
final class Filler {
  private static final String DAY_PART = "(?:morning|afternoon|evening|night)";

  private static final String WHEN =
      "(?:(?:on|since|last|this|every|the other|until) )?(?:mon|tues|wednes|thurs|fri|satur|sun)day"
          + ("(?: " + DAY_PART + ")?")
          + ("|(?:since )?(?:yesterday(?: " + DAY_PART + ")?|last (?:night|week|month))")
          + "|today|tonight|this week|at the weekend|lately|recently|just now|the other day"
          + ("|(?:this|in the|first thing in the) " + DAY_PART)
          + "|(?:about )?an? (?:week|fortnight|month|while|(?:few|couple of) (?:days|weeks)"
          + "|day or two) (?:ago|back)";

  private static final String MANNERS =
      "i['’]?m afraid|i(?:['’]m| am) sorry|i (?:think|believe|guess|suppose|reckon|mean)|you know"
          + "|you see|sort of|kind of|well|oh|hello|hi|(?:good )?(?:morning|afternoon|evening)"
          + "|please|sorry|excuse me|would you believe it|honestly|basically|actually|apparently"
          + "|to be honest|by the way|thanks|thank you|my love|dear|mate|yes|ok|okay"
          + "|bloody|blasted|damn(?:ed)?|flipping|ruddy";

  private static final String READ_ALOUD = "full stop|question mark|exclamation mark|comma";

  private static final Pattern FILLER =
      Pattern.compile("(?i)\\b(?:" + String.join("|", WHEN, MANNERS, READ_ALOUD) + ")\\b");
  private static final Pattern EDGES = Pattern.compile("^[ ,.;:!?]+|[ ,;:]+$");

  private Filler() {}

  /** The clause without it; as it is if hardly a word is left. */
  static String without(String clause) {
    String bare = FILLER.matcher(clause).replaceAll(" ").replaceAll("\\s+", " ");
    bare = EDGES.matcher(bare).replaceAll("").strip();
    return bare.contains(" ") ? bare : clause;
  }
}
