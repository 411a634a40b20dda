package yett.knowledge;

import java.util.regex.Pattern;

/** Whether a text of rules or tables names a card. */
public final class Mentions {
  private Mentions() {}

  /** Whether the text contains the id as a whole word, not as part of a longer id. */
  public static boolean of(String text, String id) {
    return Pattern.compile("(?<![a-z0-9-])" + Pattern.quote(id) + "(?![a-z0-9-])")
        .matcher(text)
        .find();
  }
}
