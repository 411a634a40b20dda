package yett.interview.watch;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.StopNow;

/**
 * Checks every moment of a case for what must never happen: a step that its person may not do, a
 * hazardous set-up without its cautions, work after a stop, a closing without its proofs. It reads
 * the events independently ({@link PlainReading}), so that it does not share the interview's
 * errors. Use one watch per case.
 */
public final class SafetyWatch implements BiConsumer<Moment, Role> {
  private final RuleBase base;
  private Optional<SetUp> confirming = Optional.empty();
  private int seen;
  private int stops;
  private int closedAsRepaired;

  public SafetyWatch(RuleBase base) {
    this(base, 0);
  }

  /**
   * @param seen how many events are not checked for how they came about
   */
  SafetyWatch(RuleBase base, int seen) {
    this.base = base;
    this.seen = seen;
  }

  /** Whether this case came to a stop; lets a test check that it tested something. */
  boolean sawStop() {
    return stops > 0;
  }

  boolean sawClosedAsRepaired() {
    return closedAsRepaired > 0;
  }

  /**
   * Checks one moment.
   *
   * @throws UnsafeStep if something is wrong at this moment
   */
  @Override
  public void accept(Moment moment, Role role) {
    PlainReading plain = new PlainReading(moment.entries());
    entering(moment);
    require(
        moment.state().work().setUps().equals(plain.inForce),
        "set-ups %s, confirmed %s",
        moment.state().work().setUps(),
        plain.inForce);
    together(plain.inForce);
    stops(moment, plain);
    moment.step().accept(new StepWatch(base, plain, role)).run();
    new StateWatch(base, moment.judgement(), plain, role).look(moment.step());
    if (isRepaired(moment.step())) {
      closedAsRepaired++;
    }
    if (moment.believed().isWorkedOut() || moment.step() instanceof Step.Finished) {
      believed(moment); // nobody acts on what nobody asked for, but the end is always looked at
    }
    confirming = moment.step() instanceof Step.Enter e ? Optional.of(e.setUp()) : Optional.empty();
  }

  /** Checks that a set-up comes into force only by the step that shows its cautions. */
  private void entering(Moment moment) {
    for (Entry entry : moment.entries().subList(seen, moment.entries().size())) {
      if (entry.event() instanceof Event.SetUpEntered e) {
        require(
            confirming.map(SetUp::id).equals(Optional.of(e.setUp())),
            "%s came into force without its step",
            e.setUp());
      }
    }
    seen = moment.entries().size();
  }

  private void together(Set<String> inForce) {
    for (String one : inForce) {
      for (String other : inForce) {
        require(
            !base.setUps().get(one).excludes().contains(other),
            "%s and %s exclude each other and are both in force",
            one,
            other);
      }
    }
  }

  private void stops(Moment moment, PlainReading plain) {
    Set<String> stops =
        moment.judgement().stops().stream().map(StopNow::stop).collect(Collectors.toSet());
    for (PlainReading.Told report : new PlainDangers(base, plain).standing()) {
      require(!stops.isEmpty(), "%s is %s and nothing stops", report.check(), report.answer());
    }
    if (stops.isEmpty()) {
      require(!(moment.step() instanceof Step.MakeSafe), "made safe with no stop");
      dangersFirst(moment, plain);
      return;
    }
    this.stops++;
    moment.step().accept(new AfterStop(base, stops, plain, moment.state().role())).run();
  }

  /**
   * The steps allowed while a danger stands: making safe and ending; and, for those whom every card
   * lets go on, work that the safe state does not exclude.
   */
  private record AfterStop(RuleBase base, Set<String> stops, PlainReading plain, Role role)
      implements SomeSteps<Runnable> {
    @Override
    public Runnable makeSafe(Step.MakeSafe step) {
      return () -> {
        require(stops.contains(step.stop().id()), "%s is not the stop", step.stop().id());
        require(!step.now().isEmpty(), "nothing to do now");
      };
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      return () -> {
        madeSafe();
        require(
            goesOn() || step.ending() == Ending.MADE_SAFE,
            "after a stop the case ends as %s",
            step.ending());
      };
    }

    @Override
    public Runnable finished(Step.Finished step) {
      return () -> {};
    }

    @Override
    public Runnable askDangers(Step.AskDangers step) {
      return () -> {};
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> work(step.check().needs());
    }

    @Override
    public Runnable lookRound(Step.LookRound step) {
      return () -> work(step.needs());
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> work(step.repair().needs());
    }

    @Override
    public Runnable enter(Step.Enter step) {
      return () -> work(List.of(step.setUp().id()));
    }

    @Override
    public Runnable retest(Step.Retest step) {
      return () -> work(List.of(SetUp.GATE_RUNNING));
    }

    @Override
    public Runnable leave(Step.Leave step) {
      return () -> {
        work(List.of());
        require(!safe().contains(step.setUp().id()), "%s is left too soon", step.setUp().id());
      };
    }

    @Override
    public Runnable other(Step step) {
      return () -> work(List.of());
    }

    private void work(List<String> needs) {
      madeSafe();
      require(goesOn(), "a %s goes on after %s", role.word(), stops);
      for (String safe : safe()) {
        for (String need : needs) {
          require(
              !base.setUps().get(safe).excludes().contains(need),
              "%s is brought about in %s",
              need,
              safe);
        }
      }
    }

    private void madeSafe() {
      require(plain.madeSafe.keySet().containsAll(stops), "%s was not made safe", stops);
    }

    private boolean goesOn() {
      return stops.stream()
          .allMatch(s -> base.stops().get(s).goesOn().map(role::may).orElse(false));
    }

    private Set<String> safe() {
      return stops.stream()
          .flatMap(s -> base.stops().get(s).leaves().stream())
          .collect(Collectors.toSet());
    }
  }

  private void dangersFirst(Moment moment, PlainReading plain) {
    if (moment.step() instanceof Step.AskDangers || moment.step() instanceof Step.Finished) {
      return;
    }
    base.ordinaryChecks()
        .filter(Check::danger)
        .filter(c -> !moment.judgement().unavailable().contains(c.id()))
        .forEach(
            c ->
                require(
                    plain
                        .last(c.id())
                        .filter(t -> !t.answer().putOff() && t.number() > plain.cameAnew)
                        .isPresent(),
                    "%s was not told before %s",
                    c.id(),
                    moment.step()));
  }

  private static boolean isRepaired(Step step) {
    return step instanceof Step.CloseRepaired
        || step instanceof Step.Finished finished && finished.ending().isProved();
  }

  private void believed(Moment moment) {
    double[] chances = moment.belief().atCallOut();
    chances(chances);
    chances(moment.belief().remaining());
    for (Trail.Move move : moment.trail().moves()) {
      chances(move.after());
      require(
          !move.words().isBlank() && !move.reason().isBlank() && !move.source().isBlank(),
          "no reason: %s %s",
          move.subject(),
          move.words());
    }
    List<String> causes = moment.belief().model().causes();
    for (int c = 0; c < chances.length; c++) {
      int cause = c;
      require(
          chances[c] < 0.01
              || !base.causes().get(causes.get(c)).source().isBlank()
              || moment.trail().moves().stream()
                  .anyMatch(m -> m.after()[cause] != m.before()[cause]),
          "%s is believed for no reason",
          causes.get(c));
    }
  }

  private static void chances(double[] chances) {
    for (double chance : chances) {
      if (!(chance >= 0 && chance <= 1 + 1e-9)) { // called thousands of times: build no message
        throw new UnsafeStep("a chance of " + chance);
      }
    }
  }

  static void require(boolean so, String message, Object... parts) {
    if (!so) {
      throw new UnsafeStep(message.formatted(parts));
    }
  }
}
