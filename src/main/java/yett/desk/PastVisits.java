package yett.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.Summary;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.intake.FromPaper;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;

/**
 * Stores inspections that are known only from paper as inspections on their day, so that baselines,
 * trends and due dates begin with them. What is stored already is not stored again.
 */
public final class PastVisits {
  private final Desk desk;

  public PastVisits(Desk desk) {
    this.desk = desk;
  }

  /**
   * Stores a visit, or what is new in it.
   *
   * @param source where it was imported from, for people who read the case
   * @return how many readings were stored
   */
  public int keep(PastVisit visit, String source) {
    Casebook casebook = desk.casebook();
    Map<String, Answer.Read> fresh = new TreeMap<>(visit.readings());
    for (Entry known : readings(visit)) {
      Event.Answered answered = (Event.Answered) known.event();
      answered
          .answer()
          .reading()
          .ifPresent(
              r ->
                  fresh.computeIfPresent(
                      answered.check(), (c, mine) -> same(c, mine, r) ? null : mine));
    }
    if (fresh.isEmpty()) {
      return 0;
    }
    Instant at = visit.day().atTime(LocalTime.NOON).atZone(ZoneId.systemDefault()).toInstant();
    List<Event> events = new ArrayList<>();
    events.add(
        new Event.Opened(
            visit.gate(),
            Role.TECHNICIAN,
            desk.base().fingerprint(),
            Optional.of(visit.kind()),
            List.of()));
    site(visit.gate()).forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
    events.add(new Event.SiteTaken());
    fresh.forEach((check, read) -> events.add(new Event.Answered(check, read)));
    events.add(FromPaper.note(source));
    events.add(new Event.Closed(Ending.INSPECTED));
    CaseId id = casebook.newCase(visit.gate(), at);
    casebook.append(id, 0, events.stream().map(e -> text(e, at)).toArray(NewEvent[]::new));
    casebook.summarise(
        id,
        events.size(),
        new Summary(
            CaseStatus.CLOSED,
            Ending.INSPECTED.words()
                + ": inspection for "
                + visit.kind().word()
                + ", from a paper, "
                + (fresh.size() == 1 ? "1 reading" : fresh.size() + " readings"),
            ""));
    return fresh.size();
  }

  /**
   * Whether two readings are equal, compared in any unit and to the number of figures that a sheet
   * shows.
   */
  private boolean same(String check, Answer.Read one, Answer.Read other) {
    return one.value() == other.value()
        || Optional.ofNullable(desk.base().checks().get(check))
            .flatMap(Check::measures)
            .filter(m -> m.show(one.value()).equals(m.show(other.value())))
            .isPresent();
  }

  private static NewEvent text(Event event, Instant at) {
    return new NewEvent(at, Role.TECHNICIAN.word(), OpenCase.type(event), EventText.write(event));
  }

  private Map<String, String> site(String gate) {
    return new GateMemory(desk.casebook(), desk.clock()).known(gate, desk.base());
  }

  /** The readings from the inspections of the gate on that day. */
  private List<Entry> readings(PastVisit visit) {
    List<CaseSummary> lines =
        desk.casebook().casesAt(visit.gate()).stream()
            .filter(
                line ->
                    LocalDate.ofInstant(line.opened(), ZoneId.systemDefault()).equals(visit.day()))
            .sorted(Comparator.comparing(CaseSummary::opened))
            .toList();
    List<Entry> readings = new ArrayList<>();
    desk.casebook()
        .forEach(
            lines,
            (line, events) -> {
              List<Entry> entries = StoredEntries.readable(events);
              Optional<InspectionKind> kind = CaseState.of(entries).inspection();
              if (kind.equals(Optional.of(visit.kind()))) {
                entries.stream()
                    .filter(e -> e.event() instanceof Event.Answered)
                    .forEach(readings::add);
              }
            });
    return readings;
  }
}
