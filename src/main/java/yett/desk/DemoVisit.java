package yett.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.SomeSteps;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.rules.Interpretation;

/**
 * A visit that nobody made: at every step somebody answers as an ordinary gate would, or one with a
 * single fault, as its cards say that it shows most.
 */
final class DemoVisit {
  private final RuleBase base;
  private final Random random;
  private final Map<String, String> site;
  private final Optional<String> cause;
  private final Set<String> dirty;

  /** How far each reading has gone towards the end of its ordinary range, 0 to 1. */
  private final double age;

  private boolean mended;

  /**
   * @param cause id of what is wrong; empty for nothing
   * @param dirty outcomes that are seen where a look has them
   */
  DemoVisit(
      RuleBase base,
      Random random,
      Map<String, String> site,
      Optional<String> cause,
      Set<String> dirty,
      double age) {
    this.base = base;
    this.random = random;
    this.site = site;
    this.cause = cause;
    this.dirty = dirty;
    this.age = age;
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
      return step.dangers().stream().map(c -> chosen(c, 0)).toList();
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
      return List.of(new Event.Complained(complaints(step.complaints())));
    }

    @Override
    public List<Event> askHistory(Step.AskHistory step) {
      return List.of(new Event.Happened(List.of()));
    }

    @Override
    public List<Event> ask(Step.Ask step) {
      return List.of(answer(step));
    }

    @Override
    public List<Event> lookRound(Step.LookRound step) {
      return step.looks().stream().map(this::answer).toList();
    }

    private Event answer(Step.Ask step) {
      Check check = step.check();
      int outcome = outcome(check);
      return check.measured() ? read(step, outcome) : chosen(check, outcome);
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
      mended |= cause.filter(step.repair().removes()::containsKey).isPresent();
      return List.of(new Event.Repaired(step.repair().id(), true));
    }

    @Override
    public List<Event> retest(Step.Retest step) {
      return List.of(new Event.Retested(mended || cause.isEmpty()));
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

  /** What people say most when it is this; of a gate in order they say nothing. */
  private List<String> complaints(List<Check> all) {
    List<Check> likely =
        all.stream().sorted(Comparator.comparingDouble((Check c) -> -said(c))).limit(2).toList();
    return likely.stream().filter(c -> c == likely.get(0) || said(c) > 0.5).map(Check::id).toList();
  }

  private double said(Check complaint) {
    return cause
        .map(complaint.likelihood()::get)
        .map(row -> row[complaint.indexOf(Check.SAID)])
        .orElse(0.0);
  }

  private int outcome(Check check) {
    int seen =
        IntStream.range(1, check.outcomes().size())
            .filter(o -> dirty.contains(check.id() + " " + check.outcomes().get(o).id()))
            .findFirst()
            .orElse(0);
    double[] row = mended ? null : cause.map(check.likelihood()::get).orElse(null);
    return row == null
        ? seen
        : IntStream.range(0, row.length)
            .boxed()
            .max(Comparator.comparingDouble(o -> row[o]))
            .orElse(seen);
  }

  private static Event chosen(Check check, int outcome) {
    return new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(outcome).id()));
  }

  private Event read(Step.Ask step, int outcome) {
    Check check = step.check();
    Measures measures = check.measures().orElseThrow();
    if (Interpretation.relative(check) && step.expectation().isEmpty()) {
      return new Event.Answered(check.id(), new Answer.CannotTell());
    }
    double[] ends =
        outcome == 0 && step.expectation().isPresent()
            ? new double[] {step.expectation().get().low(), step.expectation().get().high()}
            : Interpretation.range(check, outcome, step.expectation());
    double low = Double.isFinite(ends[0]) ? ends[0] : Math.max(measures.least(), ends[1] * 0.9);
    double high = Double.isFinite(ends[1]) ? ends[1] : Math.min(measures.most(), low * 1.2 + 1);
    double share = Math.min(0.9, 0.3 + 0.3 * age + 0.1 * random.nextDouble());
    String typed = measures.showRounded(low + share * (high - low));
    return new Event.Answered(check.id(), new Answer.Read(typed, measures.parse(typed)));
  }
}
