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
 * @param follows the measured question that the usual goes along with; empty for most
 * @param zeroAfter repairs that make it 0, such as the age of what they renew
 */
public record SiteQuestion(
    String id,
    String name,
    String ask,
    Optional<Measures> measures,
    Map<String, String> choices,
    String usual,
    Optional<String> follows,
    List<String> zeroAfter,
    String why,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {
  /** The one that is about the day and not about the gate. */
  public static final String TEMPERATURE_TODAY = "usual-temperature";

  /** Which grows by itself from one visit to the next. */
  public static final String BATTERY_AGE = "battery-age";

  /** With another usual answer; what it followed and from when it counted go with the old one. */
  SiteQuestion usually(String answer) {
    return new SiteQuestion(
        id, name, ask, measures, choices, answer, Optional.empty(), zeroAfter, why, onlyIf, source);
  }

  /** The same question for somebody who works in these units. */
  SiteQuestion in(Units units) {
    return measures.isEmpty()
        ? this
        : new SiteQuestion(
            id,
            name,
            ask,
            measures.map(m -> m.in(units)),
            choices,
            usual,
            follows,
            zeroAfter,
            why,
            onlyIf,
            source);
  }

  /**
   * The usual where the question that this one follows has another answer than the usual: it
   * differs as much from that. A bare number, which is shown in anybody's units.
   */
  public String usualWith(SiteQuestion other, String answer) {
    Measures mine = measures.orElseThrow();
    Measures its = other.measures.orElseThrow();
    double value = mine.parse(usual) + its.parse(answer) - its.parse(other.usual);
    return answer.equals(other.usual) || !mine.possible(value) ? usual : mine.bare(value);
  }

  /** An answer as people read it: the words of a choice, a reading as it was typed. */
  public String said(String answer) {
    return measures.map(m -> said(m, answer)).orElseGet(() -> choices.getOrDefault(answer, answer));
  }

  /** Whether two answers say the same, however they are written. */
  public boolean same(String one, String other) {
    return one.equals(other) || measures.filter(m -> m.parse(one) == m.parse(other)).isPresent();
  }

  /** Whether an answer is what most gates have. */
  public boolean isUsual(String answer) {
    return same(answer, usual);
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
