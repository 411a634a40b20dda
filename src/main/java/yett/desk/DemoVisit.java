package yett.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;

/**
 * An invented visit: gives, at every step, the answer of an ordinary gate or of a gate with a
 * single fault. A fault shows the outcomes that its cards make most likely.
 */
final class DemoVisit {
  private final Map<String, String> site;
  private final DemoGate gate;

  /**
   * @param cause id of what is wrong; empty for nothing
   * @param dirty outcomes that looks find wherever they have them
   * @param age how far each reading has moved towards the end of its ordinary range, 0 to 2
   */
  DemoVisit(
      Random random,
      Map<String, String> site,
      Optional<String> cause,
      Set<String> dirty,
      double age) {
    this.site = site;
    this.gate = new DemoGate(random, cause, dirty, age);
  }

  /** What somebody enters at this step. */
  List<Event> answers(Moment moment) {
    return moment.step().accept(new Entering(moment));
  }

  private final class Entering implements SomeSteps<List<Event>> {
    private final Moment moment;

    Entering(Moment moment) {
      this.moment = moment;
    }

    @Override
    public List<Event> askDangers(Step.AskDangers step) {
      return step.dangers().stream().map(gate::ordinary).toList();
    }

    @Override
    public List<Event> askSite(Step.AskSite step) {
      List<Event> events = new ArrayList<>();
      if (moment.state().told().site().isEmpty()) {
        site.forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
      }
      events.add(new Event.SiteTaken());
      return events;
    }

    @Override
    public List<Event> askComplaints(Step.AskComplaints step) {
      return List.of(new Event.Complained(gate.complaints(step.complaints())));
    }

    @Override
    public List<Event> askHistory(Step.AskHistory step) {
      return List.of(new Event.Happened(List.of()));
    }

    @Override
    public List<Event> ask(Step.Ask step) {
      return List.of(gate.answer(step));
    }

    @Override
    public List<Event> lookRound(Step.LookRound step) {
      return step.looks().stream().map(gate::answer).toList();
    }

    @Override
    public List<Event> enter(Step.Enter step) {
      return List.of(step.done());
    }

    @Override
    public List<Event> leave(Step.Leave step) {
      return List.of(step.done());
    }

    @Override
    public List<Event> mend(Step.Mend step) {
      gate.mend(step.repair());
      return List.of(new Event.Repaired(step.repair().id(), true));
    }

    @Override
    public List<Event> retest(Step.Retest step) {
      return List.of(new Event.Retested(gate.isInOrder()));
    }

    @Override
    public List<Event> settle(Step.Settle step) {
      return List.of(new Event.Kept(step.contradiction().first(), step.contradiction().second()));
    }

    @Override
    public List<Event> takeStock(Step.TakeStock step) {
      return List.of(new Event.WentOn());
    }

    @Override
    public List<Event> decideFailedProof(Step.DecideFailedProof step) {
      return List.of(new Event.Reopened(step.proof().id()));
    }

    @Override
    public List<Event> makeSafe(Step.MakeSafe step) {
      return List.of(step.done());
    }

    @Override
    public List<Event> handOver(Step.HandOver step) {
      return List.of(new Event.Closed(step.ending()));
    }

    @Override
    public List<Event> closeRepaired(Step.CloseRepaired step) {
      return List.of(new Event.Closed(step.ending()));
    }

    @Override
    public List<Event> other(Step step) {
      throw new IllegalStateException("nobody answers " + step);
    }
  }
}
