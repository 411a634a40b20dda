package yett.record.handout;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.interview.Entry;
import yett.interview.Moment;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.wording.GateWords;

/**
 * A case that a paper is about.
 *
 * @param gate its name of today
 * @param due when the gate is to be inspected next, if it is known
 * @param zone whose days are meant
 */
record Visit(Moment moment, String caseId, String gate, Optional<LocalDate> due, ZoneId zone) {
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

  /** What both sheets begin with. */
  void facts(Markup page, RuleBase base) {
    page.open("table", "class", "facts");
    page.fact("Gate", gate);
    page.fact("What it is", new GateWords(base).line(moment.state().told().site()));
    page.fact("Date", days() + next());
    page.fact("Our reference", caseId);
    page.close();
  }

  /** Only for a gate that is in use: before that it is looked at anyway. */
  private String next() {
    return due.filter(day -> Outcome.of(moment.state()).inUse())
        .map(day -> "; next inspection due on " + DAY.format(day))
        .orElse("");
  }

  private String day(Instant at) {
    return DAY.format(at.atZone(zone));
  }
}
