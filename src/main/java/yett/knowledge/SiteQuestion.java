package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.quantity.ReadingException;
import yett.quantity.Units;

/**
 * A question about the gate as installed.
 *
 * @param name a few words for lists
 * @param choices answers by id with their words, in order; empty for a measured one
 * @param usual the default: a choice's id or a reading with its unit
 */
public record SiteQuestion(
    String id,
    String name,
    String ask,
    Optional<Measures> measures,
    Map<String, String> choices,
    String usual,
    String why,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {
  /** The one that is about the day and not about the gate. */
  public static final String TEMPERATURE_TODAY = "usual-temperature";

  /** Which grows by itself from one visit to the next. */
  public static final String BATTERY_AGE = "battery-age";

  /** The same question for somebody who works in these units. */
  SiteQuestion in(Units units) {
    return measures.isEmpty()
        ? this
        : new SiteQuestion(
            id, name, ask, measures.map(m -> m.in(units)), choices, usual, why, onlyIf, source);
  }

  /** An answer as people read it: the words of a choice, a reading as it was typed. */
  public String said(String answer) {
    return measures.map(m -> said(m, answer)).orElseGet(() -> choices.getOrDefault(answer, answer));
  }

  private String said(Measures measured, String answer) {
    try {
      return answer.equals(usual) ? measured.show(measured.parse(usual)) : measured.told(answer);
    } catch (ReadingException e) {
      return answer; // the card has changed since, or it was put there by hand
    }
  }

  /** As good as one of all parts, which Java would put together at every start. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
