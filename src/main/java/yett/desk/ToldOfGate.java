package yett.desk;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * What a case says about its gate.
 *
 * @param complete whether the role that answers has given all details
 * @param batteries the day on which new ones were fitted in this case; empty if none were, or if
 *     somebody gave their age since
 */
record ToldOfGate(Map<String, String> site, boolean complete, Optional<LocalDate> batteries) {

  static ToldOfGate of(Moment moment, RuleBase base) {
    return new ToldOfGate(
        moment.state().told().site(), moment.state().told().siteTaken(), batteries(moment, base));
  }

  private static Optional<LocalDate> batteries(Moment moment, RuleBase base) {
    SiteQuestion age = base.siteQuestions().get(SiteQuestion.BATTERY_AGE);
    if (age == null) {
      return Optional.empty();
    }
    long told =
        moment.entries().stream()
            .filter(
                e ->
                    e.event() instanceof Event.SiteAnswered answered
                        && answered.question().equals(age.id()))
            .mapToLong(Entry::number)
            .max()
            .orElse(0);
    return moment.state().work().deeds().stream()
        .filter(
            d ->
                d.event() instanceof Event.Repaired repaired
                    && age.zeroAfter().contains(repaired.repair()))
        .reduce((first, last) -> last)
        .filter(d -> d.number() > told)
        .map(d -> LocalDate.ofInstant(d.at(), ZoneOffset.UTC));
  }
}
