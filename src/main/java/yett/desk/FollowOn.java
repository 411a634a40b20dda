package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.interview.state.CaseState.Answered;
import yett.interview.state.Forces;

/**
 * Begins a search for a fault from an inspection. The new case starts with the readings and answers
 * of the inspection and with the gate as it was left. Dangers are asked about again; and where
 * somebody comes back for it, or another in their place, each set-up has to be confirmed at the
 * gate.
 */
public final class FollowOn {
  private final Desk desk;

  public FollowOn(Desk desk) {
    this.desk = desk;
  }

  /** Begins the case and returns its id. */
  public CaseId begin(OpenCase inspection) {
    CaseId id = desk.casebook().newCase(inspection.gate(), desk.clock().instant());
    try (OpenCase open = desk.open(id, inspection.role())) {
      open.record(events(inspection).toArray(Event[]::new));
    }
    return id;
  }

  private List<Event> events(OpenCase inspection) {
    CaseState state = inspection.moment().state();
    List<Event> events = new ArrayList<>();
    events.add(
        Event.Opened.with(
            inspection.gate(),
            inspection.role(),
            desk.expertise().base(),
            Optional.empty(),
            state.opened().map(Event.Opened::earlier).orElse(List.of())));
    events.add(new Event.Noted("Begun with what inspection " + inspection.id() + " found."));
    state.told().site().forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
    if (state.told().siteTaken()) {
      events.add(new Event.SiteTaken());
    }
    state.work().setUps().forEach(s -> events.add(new Event.SetUpEntered(s, "")));
    Absence absence = Absence.since(inspection.moment().entries());
    if (absence.isAnew(inspection.role(), desk.clock().instant())) {
      events.add(new Event.Returned());
    }
    for (Answered a : state.answers()) {
      if (isCarried(a)) {
        events.add(new Event.Answered(a.check(), a.answer(), Optional.of(taken(a, inspection))));
      }
    }
    // A force over its limit stays over it until that point is measured again.
    events.addAll(Forces.of(inspection.moment().entries()).taken());
    return events;
  }

  private Instant taken(Answered answered, OpenCase inspection) {
    return answered
        .taken()
        .or(
            () ->
                inspection.moment().entries().stream()
                    .filter(e -> e.number() == answered.event())
                    .map(Entry::at)
                    .findFirst())
        .orElseGet(desk.clock()::instant);
  }

  private boolean isCarried(Answered answered) {
    var check = desk.expertise().base().checks().get(answered.check());
    Answer answer = answered.answer();
    return check != null && !check.danger() && answer.tells();
  }
}
