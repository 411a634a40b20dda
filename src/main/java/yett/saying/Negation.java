package yett.saying;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether a clause denies something. A model of meanings hardly tells "smoke" from "no smoke". */
final class Negation {
  private static final Pattern NEGATING =
      Pattern.compile(
          "(?i)\\b(?:no|not|none|nobody|nothing|never|neither|nor|without|cannot|no one|hardly"
              + "|(?:do|does|did|is|are|was|were|wo|ca|could|would|has|have|had|should)n['’]?t)\\b");

  /** Words between a "no" and what it denies. */
  private static final Set<String> BETWEEN =
      Set.of(
          ("a an the any is was are were be been being got get gets getting ever even really yet to"
                  + " has had have do does did one body of at all it he she they we i that there so"
                  + " very much can could will would")
              .split(" "));

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}'’]+");

  /** Letters by which two forms of one word are known as one. */
  private static final int STEM = 4;

  private Negation() {}

  static boolean in(String clause) {
    return NEGATING.matcher(clause).find();
  }

  /** The beginnings of the words that are denied: of "it did not stop" only "stop". */
  static Set<String> denied(String clause) {
    Set<String> denied = new HashSet<>();
    Matcher no = NEGATING.matcher(clause);
    Matcher words = WORD.matcher(clause);
    while (no.find()) {
      words.region(no.end(), clause.length());
      while (words.find()) {
        String word = words.group().toLowerCase(Locale.ROOT);
        if (!BETWEEN.contains(word)) {
          denied.add(word.substring(0, Math.min(STEM, word.length())));
          break;
        }
      }
    }
    return denied;
  }
}
