package yett.knowledge;

import java.util.Locale;

/** A safety note tied to a hazard, in the structure of ANSI Z535.6: hazard, harm, avoidance. */
public record Caution(
    String id, String hazard, Word word, String what, String harm, String avoid, String source)
    implements Card {

  /** Signal words of ANSI Z535.6, the gravest first. */
  public enum Word {
    DANGER,
    WARNING,
    CAUTION,
    NOTICE;

    static Word named(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }

  /** The note as one paragraph. */
  public String text() {
    return what + " " + harm + " " + avoid;
  }
}
