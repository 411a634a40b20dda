package yett.knowledge;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A safety note tied to a hazard, in the structure of ANSI Z535.6: hazard, harm, avoidance.
 *
 * @param onlyIf site question to the answers under which there is something to be careful of; empty
 *     means always
 */
public record Caution(
    String id,
    String hazard,
    Word word,
    String what,
    String harm,
    String avoid,
    Map<String, List<String>> onlyIf,
    String source)
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

  /**
   * Whether it is given at a gate of which this was told. What is only assumed to be usual keeps
   * nobody from being warned.
   *
   * @param told answers to site questions that somebody gave
   */
  public boolean appliesTo(Map<String, String> told) {
    return onlyIf.entrySet().stream()
        .allMatch(
            c -> !told.containsKey(c.getKey()) || c.getValue().contains(told.get(c.getKey())));
  }

  /** The note as one paragraph. */
  public String text() {
    return what + " " + harm + " " + avoid;
  }
}
