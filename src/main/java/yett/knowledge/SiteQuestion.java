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
 * @param follows the measured question with which the usual answer changes; empty for most
 * @param zeroAfter repairs that set it to 0, such as for the age of a part that they replace
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
  /** The id of the question about today's temperature; it is about the day, not about the gate. */
  public static final String TEMPERATURE_TODAY = "usual-temperature";

  /**
   * The id of the question about the age of the batteries, which grows from one visit to the next.
   */
  public static final String BATTERY_AGE = "battery-age";

  /**
   * A copy with another usual answer, without {@code follows} and without the date from which it
   * counted.
   */
  SiteQuestion usually(String answer) {
    return new SiteQuestion(
        id, name, ask, measures, choices, answer, Optional.empty(), zeroAfter, why, onlyIf, source);
  }

  /** A copy with texts and readings in these units. */
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
   * The usual answer when the question that this one follows has another answer than usual: it
   * changes by the same difference. The result is a bare number, which is shown in anybody's units.
   */
  public String usualWith(SiteQuestion other, String answer) {
    Measures mine = measures.orElseThrow();
    Measures its = other.measures.orElseThrow();
    double value = mine.parse(usual) + its.parse(answer) - its.parse(other.usual);
    return answer.equals(other.usual) || !mine.possible(value) ? usual : mine.bare(value);
  }

  /** An answer as text for people: the words of a choice, or a reading as typed. */
  public String said(String answer) {
    return measures.map(m -> said(m, answer)).orElseGet(() -> choices.getOrDefault(answer, answer));
  }

  /** Whether two answers are equal, however they are written. */
  public boolean same(String one, String other) {
    return one.equals(other) || measures.filter(m -> m.parse(one) == m.parse(other)).isPresent();
  }

  /** Whether an answer is what most gates have. */
  public boolean isUsual(String answer) {
    return same(answer, usual);
  }

  private String said(Measures measured, String answer) {
    try {
      return answer.equals(usual)
          ? measured.showRounded(measured.parse(usual))
          : measured.told(answer);
    } catch (ReadingException e) {
      return answer; // the card has changed since, or the case was edited by hand
    }
  }

  /** Hashes one component only: the generated hashCode of a record is slow at every start. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
