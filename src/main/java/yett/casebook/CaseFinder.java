package yett.casebook;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/** Finds the case that somebody means by what they typed. */
final class CaseFinder {
  private static final Pattern NUMBER = Pattern.compile("(?:(\\d{4})-)?0*(\\d{1,9})");
  private static final int NEAREST = 3;

  private CaseFinder() {}

  /**
   * Finds a case. A number is taken as the number of a case before it is taken as the beginning of
   * a year: "20" is 2026-0020 if there is one.
   */
  static CaseId find(String typed, List<CaseId> all) {
    String text = typed.strip();
    List<CaseId> meant = all.stream().filter(id -> numbered(text, id)).sorted().toList();
    if (meant.isEmpty() && !text.isEmpty()) {
      meant = all.stream().filter(id -> id.toString().startsWith(text)).sorted().toList();
    }
    if (meant.isEmpty()) {
      throw CaseNotFound.none(typed, nearest(text, all));
    }
    if (meant.size() > 1) {
      throw CaseNotFound.several(typed, meant);
    }
    return meant.get(0);
  }

  private static boolean numbered(String text, CaseId id) {
    var parts = NUMBER.matcher(text);
    return parts.matches()
        && (parts.group(1) == null || Integer.parseInt(parts.group(1)) == id.year())
        && Integer.parseInt(parts.group(2)) == id.number();
  }

  /** The cases nearest in year, then in number; the newest ones if the text has no number. */
  private static List<CaseId> nearest(String text, List<CaseId> all) {
    Comparator<CaseId> newestFirst = Comparator.reverseOrder();
    var parts = NUMBER.matcher(text);
    if (!parts.matches()) {
      return all.stream().sorted(newestFirst).limit(NEAREST).toList();
    }
    int number = Integer.parseInt(parts.group(2));
    Comparator<CaseId> byYear =
        Comparator.comparingInt(
            id ->
                parts.group(1) == null
                    ? 0
                    : Math.abs(id.year() - Integer.parseInt(parts.group(1))));
    return all.stream()
        .sorted(
            byYear
                .thenComparingInt(id -> Math.abs(id.number() - number))
                .thenComparing(newestFirst))
        .limit(NEAREST)
        .toList();
  }
}
