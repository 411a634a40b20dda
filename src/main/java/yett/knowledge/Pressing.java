package yett.knowledge;

import java.util.List;

/**
 * Something at the site that makes a visit urgent, whatever is wrong with the gate.
 *
 * @param ask the question to the caller
 * @param said the matter as a statement, for the dispatch sheet
 * @param urgency how soon somebody has to be there
 * @param weekend urgency when the call comes at a weekend
 * @param ifSaid complaints after which it is asked; empty if always
 * @param untilThen what the caller does about it until somebody comes
 */
public record Pressing(
    String id,
    String ask,
    String said,
    Urgency urgency,
    Urgency weekend,
    List<String> ifSaid,
    List<String> untilThen,
    String source)
    implements Card {

  /** How soon somebody has to be there, the least urgent first. */
  public enum Urgency {
    NEXT_WORKING_DAY("next working day"),
    TODAY("today"),
    AT_ONCE("at once");

    private final String words;

    Urgency(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** The word used in cards. */
    public String word() {
      return words.replace(' ', '-');
    }
  }
}
