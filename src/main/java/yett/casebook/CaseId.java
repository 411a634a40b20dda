package yett.casebook;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The name of a case, short enough to say over the telephone: the year it was opened in (UTC) and
 * its number in that year, {@code 2026-0007}.
 */
public record CaseId(int year, int number) implements Comparable<CaseId> {
  private static final Pattern WRITTEN = Pattern.compile("(\\d{4})-(\\d{4,9})");

  /** The highest number for a new case; a higher one from another casebook is not adopted. */
  static final int MOST = 999_999;

  private static final Comparator<CaseId> ORDER =
      Comparator.comparingInt(CaseId::year).thenComparingInt(CaseId::number);

  /**
   * @throws IllegalArgumentException for a year outside 1000 to 9999 or a number below 1
   */
  public CaseId {
    if (year < 1000 || year > 9999 || number < 1) {
      throw new IllegalArgumentException(
          "\"" + written(year, number) + "\" is not a case: write year and number, 2026-0007.");
    }
  }

  /**
   * Reads a complete id; empty if the text is none. For a part of an id, use {@link Casebook#find}.
   */
  public static Optional<CaseId> parse(String text) {
    var parts = WRITTEN.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    int year = Integer.parseInt(parts.group(1));
    int number = Integer.parseInt(parts.group(2));
    return year < 1000 || number < 1 ? Optional.empty() : Optional.of(new CaseId(year, number));
  }

  /** Whether another casebook may adopt the number. */
  boolean isWithinBounds() {
    return number <= MOST;
  }

  /** Reads an id from the casebook's own column, where anything else is damage. */
  static CaseId stored(String text) {
    return parse(text)
        .orElseThrow(
            () ->
                new CasebookException(
                    Shown.quoted(text)
                        + " stands where the number of a case should be. cases verify says more;"
                        + " cases repair fixes it."));
  }

  @Override
  public int compareTo(CaseId other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return written(year, number);
  }

  private static String written(int year, int number) {
    return String.format(Locale.ROOT, "%04d-%04d", year, number);
  }
}
