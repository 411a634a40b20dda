package yett.interview;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.StopNow;

/**
 * Looks at every moment of a case for one thing that must never be: a step its person may not do, a
 * hazardous set-up without its cautions, work after a stop, a closing without its proofs. It reads
 * the events in its own way, so that a fault of the interview is not a fault of the watch as well.
 * One watch follows one case.
 */
public final class SafetyWatch implements BiConsumer<Moment, Role> {
  /** A caller may stand aside of the opening and watch the leaf run; nothing nearer than that. */
  private static final Set<String> HAZARDS_FOR_A_CALLER = Set.of("moving-leaf");

  private final RuleBase base;
  private Optional<SetUp> confirming = Optional.empty();
  private int seen;
  private int stops;
  private int closedAsRepaired;

  public SafetyWatch(RuleBase base) {
    this.base = base;
  }

  /** Whether this case came to a stop, so that a test can see that it tested something. */
  boolean sawStop() {
    return stops > 0;
  }

  boolean sawClosedAsRepaired() {
    return closedAsRepaired > 0;
  }

  /**
   * @throws UnsafeStep if something is wrong at this moment
   */
  @Override
  public void accept(Moment moment, Role role) {
    PlainReading plain = new PlainReading(moment.entries());
    entering(moment);
    require(
        moment.state().setUps().equals(plain.inForce),
        "set-ups %s, confirmed %s",
        moment.state().setUps(),
        plain.inForce);
    together(plain.inForce);
    stops(moment, plain);
    permitted(moment.step(), role, plain);
    cautioned(moment.step());
    if (role == Role.CALLER) {
      forCallers(moment.step());
    }
    askedOnce(moment.step(), plain, role);
    ends(moment.step(), plain, role);
    believed(moment);
    confirming = moment.step() instanceof Step.Enter e ? Optional.of(e.setUp()) : Optional.empty();
  }

  /** A set-up comes into force only by the step that shows its cautions. */
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
    for (Check check : base.ordinaryChecks().filter(Check::danger).toList()) {
      plain
          .last(check.id())
          .flatMap(told -> told.answer().choice())
          .ifPresent(
              outcome ->
                  require(
                      check.indexOf(outcome) == 0 || !stops.isEmpty(),
                      "%s is %s and nothing stops",
                      check.id(),
                      outcome));
    }
    if (stops.isEmpty()) {
      require(!(moment.step() instanceof Step.MakeSafe), "made safe with no stop");
      dangersFirst(moment, plain);
      return;
    }
    this.stops++;
    if (moment.step() instanceof Step.MakeSafe s) {
      require(stops.contains(s.stop().id()), "%s is not the stop", s.stop().id());
      require(!s.now().isEmpty(), "nothing to do now");
      require(!plain.madeSafe.contains(s.stop().id()), "%s again", s.stop().id());
    } else if (moment.step() instanceof Step.HandOver s) {
      require(s.ending() == Ending.MADE_SAFE, "after a stop the case ends as %s", s.ending());
      require(plain.madeSafe.containsAll(stops), "handed over before %s was made safe", stops);
    } else {
      require(moment.step() instanceof Step.Finished, "after a stop comes %s", moment.step());
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
                    plain.last(c.id()).map(t -> t.answer().choice().isPresent()).orElse(false),
                    "%s was not told before %s",
                    c.id(),
                    moment.step()));
  }

  /** Nobody is asked to do what is reserved for better qualified people. */
  private void permitted(Step step, Role role, PlainReading plain) {
    if (step instanceof Step.AskDangers s) {
      s.dangers().forEach(c -> may(role, c.who(), c.id()));
    } else if (step instanceof Step.Ask s) {
      may(role, s.check().who(), s.check().id());
      ready(role, s.check().needs(), plain);
    } else if (step instanceof Step.Mend s) {
      may(role, s.repair().who(), s.repair().id());
      ready(role, s.repair().needs(), plain);
    } else if (step instanceof Step.Enter s) {
      may(role, s.setUp().who(), s.setUp().id());
      plain.inForce.forEach(
          other ->
              require(
                  !s.setUp().excludes().contains(other)
                      && !base.setUps().get(other).excludes().contains(s.setUp().id()),
                  "%s is entered beside %s",
                  s.setUp().id(),
                  other));
    } else if (step instanceof Step.Leave s) {
      may(role, s.setUp().who(), s.setUp().id());
      require(plain.inForce.contains(s.setUp().id()), "%s is not in force", s.setUp().id());
    } else if (step instanceof Step.Retest) {
      retest(role, plain);
    }
  }

  private void retest(Role role, PlainReading plain) {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    require(
        !role.may(running.who()) || plain.inForce.contains(running.id()),
        "the gate is tried without %s",
        running.id());
    canRun(plain);
  }

  private void canRun(PlainReading plain) {
    base.setUps()
        .get(SetUp.GATE_RUNNING)
        .excludes()
        .forEach(o -> require(!plain.inForce.contains(o), "the gate is tried in %s", o));
  }

  private void may(Role role, Role least, String what) {
    require(role.may(least), "%s is for a %s, proposed to a %s", what, least.word(), role.word());
  }

  private void ready(Role role, List<String> needs, PlainReading plain) {
    for (String need : needs) {
      if (isCondition(need)) {
        base.setUps()
            .get(need)
            .excludes()
            .forEach(o -> require(!plain.inForce.contains(o), "%s does not go with %s", need, o));
      } else {
        require(plain.inForce.contains(need), "%s is not in force", need);
      }
      may(role, base.setUps().get(need).who(), need);
    }
    for (String other : plain.inForce) {
      may(role, base.setUps().get(other).who(), "work in " + other);
    }
  }

  /** A set-up with nothing to do on the way in only says what must not be in force. */
  private boolean isCondition(String setUp) {
    return base.setUps().get(setUp).enter().isEmpty();
  }

  private void cautioned(Step step) {
    if (step instanceof Step.Ask s) {
      cautioned(s.check().hazards(), s.cautions());
    } else if (step instanceof Step.Mend s) {
      cautioned(s.repair().hazards(), s.cautions());
    } else if (step instanceof Step.Enter s) {
      cautioned(s.setUp().hazards(), s.cautions());
      require(!s.cautions().isEmpty(), "no caution before %s", s.setUp().id());
      require(!s.setUp().enter().isEmpty(), "nothing to confirm for %s", s.setUp().id());
    }
  }

  private void cautioned(Collection<String> hazards, List<Caution> cautions) {
    for (String hazard : hazards) {
      require(
          cautions.stream().anyMatch(c -> c.hazard().equals(hazard) && !c.text().isBlank()),
          "no caution for %s",
          hazard);
    }
  }

  private void forCallers(Step step) {
    require(
        !(step instanceof Step.Enter || step instanceof Step.Leave),
        "a caller changes the state of the work: %s",
        step);
    if (step instanceof Step.Ask s) {
      require(
          s.check().needs().stream().allMatch(this::isCondition),
          "%s needs a set-up",
          s.check().id());
      require(
          s.check().measures().map(m -> m.instrument().equals("eye")).orElse(true),
          "%s needs an instrument",
          s.check().id());
      hazards(s.check().hazards());
    } else if (step instanceof Step.Mend s) {
      require(s.repair().needs().isEmpty(), "%s needs a set-up", s.repair().id());
      hazards(s.repair().hazards());
    }
  }

  private void hazards(List<String> hazards) {
    require(HAZARDS_FOR_A_CALLER.containsAll(hazards), "a caller meets %s", hazards);
  }

  private void askedOnce(Step step, PlainReading plain, Role role) {
    if (step instanceof Step.Ask s) {
      String id = s.check().id();
      require(
          plain.now(id).map(t -> t.answer().putOff() || t.yieldsTo(role)).orElse(true),
          "%s was answered already",
          id);
      require(plain.putOff(id, role) < 2, "%s was put off twice", id);
      require(
          plain.last(id).map(t -> !t.answer().hopeless() || t.yieldsTo(role)).orElse(true),
          "%s cannot be told",
          id);
    }
  }

  private void ends(Step step, PlainReading plain, Role role) {
    boolean repaired =
        step instanceof Step.CloseRepaired
            || step instanceof Step.Finished f && f.ending() == Ending.REPAIRED;
    if (repaired) {
      closedAsRepaired++;
      for (Check proof : proofsOf(plain.site)) {
        require(
            plain.now(proof.id()).map(PlainReading.Told::answer).equals(passed()),
            "closed as repaired, and %s is %s",
            proof.id(),
            plain.now(proof.id()));
      }
    }
    if (step instanceof Step.CloseSolved) {
      solved(plain, role);
    }
    if (step instanceof Step.CloseRepaired
        || step instanceof Step.CloseSolved
        || step instanceof Step.HandOver h && h.ending() != Ending.MADE_SAFE) {
      plain.inForce.forEach(
          s ->
              require(
                  step instanceof Step.HandOver && !role.may(base.setUps().get(s).who()),
                  "the case ends in %s",
                  s));
    }
  }

  /** Solved is what a caller did and saw pass; nothing of it calls for somebody else's proof. */
  private void solved(PlainReading plain, Role role) {
    require(role == Role.CALLER, "solved on the telephone by a %s", role.word());
    require(!plain.repairs.isEmpty(), "solved by nothing");
    for (String id : plain.repairs) {
      require(base.repairs().get(id).who() == Role.CALLER, "%s is not for a caller", id);
      for (String proof : base.repairs().get(id).proofs()) {
        boolean here = proofsOf(plain.site).stream().anyMatch(p -> p.id().equals(proof));
        require(
            !here || plain.now(proof).map(PlainReading.Told::answer).equals(passed()),
            "solved, and %s is %s",
            proof,
            plain.now(proof));
      }
    }
  }

  private static Optional<Answer> passed() {
    return Optional.of(new Answer.Chosen(Check.PASS));
  }

  /** Proofs that a site needs, worked out from the cards alone. */
  private List<Check> proofsOf(Map<String, String> site) {
    List<Check> proofs = new ArrayList<>();
    for (Check check : base.checks().values()) {
      boolean here =
          check.onlyIf().entrySet().stream()
              .allMatch(
                  c ->
                      c.getValue()
                          .contains(
                              site.getOrDefault(
                                  c.getKey(), base.siteQuestions().get(c.getKey()).usual())));
      if (check.kind() == Check.Kind.PROOF && here) {
        proofs.add(check);
      }
    }
    return proofs;
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
      if (!(chance >= 0 && chance <= 1 + 1e-9)) { // asked of thousands: no boxes for a message
        throw new UnsafeStep("a chance of " + chance);
      }
    }
  }

  private static void require(boolean so, String message, Object... parts) {
    if (!so) {
      throw new UnsafeStep(message.formatted(parts));
    }
  }
}
