package yett.knowledge;

import java.util.regex.Pattern;

/** Whether a text of rules or tables names a card. */
public final class Mentions {
  private Mentions() {}

  /** Whether the id stands in the text, not as a part of a longer one. */
  public static boolean of(String text, String id) {
    return Pattern.compile("(?<![a-z0-9-])" + Pattern.quote(id) + "(?![a-z0-9-])")
        .matcher(text)
        .find();
  }
}
