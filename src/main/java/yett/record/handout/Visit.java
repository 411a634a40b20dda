package yett.record.handout;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import yett.interview.Entry;
import yett.interview.Moment;

/**
 * A case that a paper is about.
 *
 * @param gate its name of today
 * @param zone whose days are meant
 */
record Visit(Moment moment, String caseId, String gate, ZoneId zone) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** The day, or the first and the last. */
  String days() {
    List<Entry> entries = moment.entries();
    if (entries.isEmpty()) {
      return "";
    }
    String first = day(entries.get(0).at());
    String last = day(entries.get(entries.size() - 1).at());
    return first.equals(last) ? first : first + " to " + last;
  }

  private String day(Instant at) {
    return DAY.format(at.atZone(zone));
  }
}
