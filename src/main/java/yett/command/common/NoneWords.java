package yett.command.common;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Recognises the ways in which people say "none" where a list asks what applies. Only a whole line
 * counts, because "no power" and "nothing moves" say something else. At the list of dangers only
 * single words count, see the class that asks it.
 */
public final class NoneWords {
  private static final String KNOWN =
      "(?: (?:else|special|unusual|particular|in particular|new|really|much|lately|recently|at all"
          + "|to speak of|comes to mind))*"
          + "(?: ?(?:that |which )?(?:i|we|they) (?:know|knew|heard|noticed|can think|remember|am"
          + " aware|are aware)(?: of| about)?| as far as (?:i|we) know)?"
          + "(?: (?:has |have )?happened)?(?: lately| recently| at all| really)*";

  private static final Pattern LINE =
      Pattern.compile(
          "0|n|no|nope|nah|neither|(?:(?:no|nope) )?(?:none|nothing|not|none of (?:it|them|these"
              + "|those|the above|that)|neither of (?:them|these|those))"
              + KNOWN);

  private NoneWords() {}

  /** Whether the line says that nothing of what was asked about applies. */
  public static boolean isSaid(String line) {
    String plain =
        line.toLowerCase(Locale.ROOT)
            .replace('\u2019', '\'')
            .replace("i'm", "i am")
            .replaceAll("[^\\p{L}\\p{N}]+", " ")
            .strip();
    return !plain.equals("not") && LINE.matcher(plain).matches();
  }
}
