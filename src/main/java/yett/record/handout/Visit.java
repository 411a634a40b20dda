package yett.record.handout;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.wording.GateWords;

/**
 * The case that a paper is about.
 *
 * @param gate its present name
 * @param due date of the gate's next inspection, if it is known
 * @param zone time zone for the dates
 */
record Visit(Moment moment, String caseId, String gate, Optional<LocalDate> due, ZoneId zone) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** The day of the visit, or the first and the last day. */
  String days() {
    List<Entry> entries = moment.entries();
    if (entries.isEmpty()) {
      return "";
    }
    String first = day(entries.get(0).at());
    String last = day(entries.get(entries.size() - 1).at());
    return first.equals(last) ? first : first + " to " + last;
  }

  /** Writes the facts at the head of both sheets. */
  void facts(Markup page, RuleBase base) {
    page.open("table", "class", "facts");
    page.fact("Gate", gate);
    page.fact("What it is", new GateWords(base).line(moment.state().told().site()));
    page.fact("Date", days() + next());
    page.fact("Our reference", caseId);
    page.close();
  }

  /**
   * The next inspection; only for a gate in use, because any other gate is looked at before then.
   */
  private String next() {
    return due.filter(day -> Outcome.of(moment.state()).inUse())
        .map(day -> "; next inspection due on " + DAY.format(day))
        .orElse("");
  }

  private String day(Instant at) {
    return DAY.format(at.atZone(zone));
  }
}
