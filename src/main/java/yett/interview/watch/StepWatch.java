package yett.interview.watch;

import static yett.interview.watch.SafetyWatch.require;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.step.Step;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/** Checks each kind of step for what is not allowed to this person in these set-ups. */
record StepWatch(RuleBase base, PlainReading plain, Role role) implements Step.Visitor<Runnable> {
  /**
   * Hazards that a caller may be exposed to: standing clear of the opening and watching the leaf
   * run, nothing nearer.
   */
  private static final Set<String> HAZARDS_FOR_A_CALLER = Set.of("moving-leaf");

  /** Checks that nobody is asked about dangers reserved for better qualified people. */
  @Override
  public Runnable askDangers(Step.AskDangers step) {
    return () -> step.dangers().forEach(c -> may(c.who(), c.id()));
  }

  @Override
  public Runnable askSite(Step.AskSite step) {
    return () -> {};
  }

  @Override
  public Runnable askComplaints(Step.AskComplaints step) {
    return () -> {};
  }

  @Override
  public Runnable askPressing(Step.AskPressing step) {
    return () -> {};
  }

  @Override
  public Runnable askHistory(Step.AskHistory step) {
    return () -> {};
  }

  @Override
  public Runnable settle(Step.Settle step) {
    return () -> {};
  }

  @Override
  public Runnable takeStock(Step.TakeStock step) {
    return () -> {};
  }

  @Override
  public Runnable decideFailedProof(Step.DecideFailedProof step) {
    return () -> {};
  }

  @Override
  public Runnable makeSafe(Step.MakeSafe step) {
    return () -> {};
  }

  @Override
  public Runnable ask(Step.Ask step) {
    Check check = step.check();
    return () -> {
      may(check.who(), check.id());
      ready(check.needs());
      cautioned(check.hazards(), step.cautions());
      if (isCaller()) {
        require(
            check.needs().stream().allMatch(this::isCondition), "%s needs a set-up", check.id());
        require(
            check.measures().map(m -> m.instrument().equals("eye")).orElse(true),
            "%s needs an instrument",
            check.id());
        hazards(check.hazards());
      }
      askedOnce(check);
    };
  }

  /**
   * Applies the conditions of every single look to the round, in the set-ups in which it is made.
   */
  @Override
  public Runnable lookRound(Step.LookRound step) {
    return () -> {
      require(!isCaller(), "a caller makes a round of looks");
      int looks = step.looks().size();
      require(looks >= 2 && looks <= 9, "a round of %s looks", looks);
      ready(step.needs());
      for (Step.Ask look : step.looks()) {
        Check check = look.check();
        may(check.who(), check.id());
        ready(check.needs());
        cautioned(check.hazards(), step.cautions());
        require(
            !check.danger() && !check.measured() && check.kind() == Check.Kind.CHECK,
            "%s is no look",
            check.id());
        require(step.needs().containsAll(check.needs()), "%s is not set up for", check.id());
        askedOnce(check);
      }
    };
  }

  private void askedOnce(Check check) {
    String id = check.id();
    boolean proof = check.kind() == Check.Kind.PROOF;
    long danger = plain.lastDanger(base);
    require(
        plain
            .now(id)
            .map(t -> t.answer().putOff() || t.yieldsTo(role) || proof && t.number() < danger)
            .orElse(true),
        "%s was answered already",
        id);
    require(plain.putOff(id, role) < 2, "%s was put off twice", id);
    require(
        plain.last(id).map(t -> !t.answer().hopeless() || t.yieldsTo(role)).orElse(true),
        "%s cannot be told",
        id);
  }

  @Override
  public Runnable mend(Step.Mend step) {
    Repair repair = step.repair();
    return () -> {
      may(repair.who(), repair.id());
      ready(repair.needs());
      cautioned(repair.hazards(), step.cautions());
      if (isCaller()) {
        require(
            repair.needs().stream().allMatch(this::isCondition), "%s needs a set-up", repair.id());
        hazards(repair.hazards());
      }
    };
  }

  @Override
  public Runnable enter(Step.Enter step) {
    SetUp setUp = step.setUp();
    return () -> {
      may(setUp.who(), setUp.id());
      plain.inForce.stream()
          .filter(other -> !step.instead().contains(other))
          .forEach(
              other ->
                  require(
                      !setUp.excludes().contains(other)
                          && !base.setUps().get(other).excludes().contains(setUp.id()),
                      "%s is entered beside %s",
                      setUp.id(),
                      other));
      step.instead()
          .forEach(
              other ->
                  require(
                      isExcluded(SetUp.ABLE_TO_RUN, setUp)
                          || isExcluded(SetUp.MAINS_AS_FOUND, setUp)
                              && isExcluded(SetUp.MAINS_AS_FOUND, base.setUps().get(other)),
                      "%s goes on from %s, and the gate can still run",
                      setUp.id(),
                      other));
      cautioned(setUp.hazards(), step.cautions());
      require(!step.cautions().isEmpty(), "no caution before %s", setUp.id());
      require(!setUp.enter().isEmpty(), "nothing to confirm for %s", setUp.id());
      require(!isCaller(), "a caller changes the state of the work: %s", step);
    };
  }

  private boolean isExcluded(String condition, SetUp setUp) {
    return setUp.excludes().contains(condition)
        || base.setUps().get(condition).excludes().contains(setUp.id());
  }

  @Override
  public Runnable leave(Step.Leave step) {
    SetUp setUp = step.setUp();
    return () -> {
      may(setUp.who(), setUp.id());
      require(plain.inForce.contains(setUp.id()), "%s is not in force", setUp.id());
      require(!isCaller(), "a caller changes the state of the work: %s", step);
    };
  }

  @Override
  public Runnable retest(Step.Retest step) {
    return this::tried;
  }

  @Override
  public Runnable handOver(Step.HandOver step) {
    return () -> {
      if (step.ending() != Ending.MADE_SAFE) {
        checkLockedAndBarred();
      }
    };
  }

  @Override
  public Runnable closeSolved(Step.CloseSolved step) {
    return () -> {
      checkSolved();
      nothingInForce();
    };
  }

  @Override
  public Runnable closeRepaired(Step.CloseRepaired step) {
    return () -> {
      repaired();
      nothingInForce();
    };
  }

  @Override
  public Runnable finished(Step.Finished step) {
    return () -> {
      if (step.ending().isProved()) {
        repaired();
      }
    };
  }

  /** Checks that an unproved gate stays locked and barred, if there is somebody who may lock it. */
  private void checkLockedAndBarred() {
    SetUp outOfUse = base.setUps().get(SetUp.OUT_OF_USE);
    if (outOfUse != null && role.may(outOfUse.who())) {
      require(plain.inForce.contains(outOfUse.id()), "the gate is left as it is");
      outOfUse.within().forEach(s -> require(plain.inForce.contains(s), "%s is not in force", s));
    } else {
      plain.inForce.forEach(
          s -> require(!role.may(base.setUps().get(s).who()), "the case ends in %s", s));
    }
  }

  private boolean isCaller() {
    return role == Role.CALLER;
  }

  private void tried() {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    require(
        !role.may(running.who()) || plain.inForce.contains(running.id()),
        "the gate is tried without %s",
        running.id());
    canRun();
  }

  private void canRun() {
    base.setUps()
        .get(SetUp.GATE_RUNNING)
        .excludes()
        .forEach(o -> require(!plain.inForce.contains(o), "the gate is tried in %s", o));
  }

  private void may(Role least, String what) {
    require(role.may(least), "%s is for a %s, proposed to a %s", what, least.word(), role.word());
  }

  private void ready(List<String> needs) {
    for (String need : needs) {
      if (isCondition(need)) {
        base.setUps()
            .get(need)
            .excludes()
            .forEach(o -> require(!plain.inForce.contains(o), "%s does not go with %s", need, o));
      } else {
        require(plain.inForce.contains(need), "%s is not in force", need);
      }
      may(base.setUps().get(need).who(), need);
    }
    for (String other : plain.inForce) {
      may(base.setUps().get(other).who(), "work in " + other);
    }
  }

  /** Whether a set-up has no steps to enter it: it only says what must not be in force. */
  private boolean isCondition(String setUp) {
    return base.setUps().get(setUp).enter().isEmpty();
  }

  private void cautioned(Collection<String> hazards, List<Caution> cautions) {
    for (String hazard : hazards) {
      require(
          isAbsent(hazard)
              || cautions.stream().anyMatch(c -> c.hazard().equals(hazard) && !c.text().isBlank()),
          "no caution for %s",
          hazard);
    }
  }

  /** Whether somebody said that the gate has nothing of which a hazard could come. */
  private boolean isAbsent(String hazard) {
    return base.cautions().values().stream()
        .filter(c -> c.hazard().equals(hazard))
        .allMatch(
            c ->
                c.onlyIf().entrySet().stream()
                    .anyMatch(
                        only ->
                            plain.site.containsKey(only.getKey())
                                && !only.getValue().contains(plain.site.get(only.getKey()))));
  }

  private void hazards(List<String> hazards) {
    require(HAZARDS_FOR_A_CALLER.containsAll(hazards), "a caller meets %s", hazards);
  }

  private void nothingInForce() {
    require(plain.inForce.isEmpty(), "the case ends in %s", plain.inForce);
  }

  private void repaired() {
    for (Check proof : proofs()) {
      require(
          plain.now(proof.id()).map(PlainReading.Told::answer).equals(passed()),
          "closed as repaired, and %s is %s",
          proof.id(),
          plain.now(proof.id()));
      require(
          plain.now(proof.id()).orElseThrow().number() > plain.lastDanger(base),
          "closed as repaired, and %s passed before a danger came up",
          proof.id());
    }
  }

  /**
   * Checks that a call closes as solved only if the caller did the repair and saw it work, and no
   * repair needs somebody else's proof.
   */
  private void checkSolved() {
    require(role == Role.CALLER, "solved on the telephone by a %s", role.word());
    require(!plain.repairs.isEmpty(), "solved by nothing");
    for (String id : plain.repairs) {
      require(base.repairs().get(id).who() == Role.CALLER, "%s is not for a caller", id);
      for (String proof : base.repairs().get(id).proofs()) {
        boolean here = proofs().stream().anyMatch(p -> p.id().equals(proof));
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

  /** The proofs that a site needs, worked out from the cards alone. */
  private List<Check> proofs() {
    List<Check> proofs = new ArrayList<>();
    for (Check check : base.checks().values()) {
      boolean here =
          check.onlyIf().entrySet().stream()
              .allMatch(
                  c ->
                      c.getValue()
                          .contains(
                              plain.site.getOrDefault(
                                  c.getKey(), base.siteQuestions().get(c.getKey()).usual())));
      if (check.kind() == Check.Kind.PROOF && here) {
        proofs.add(check);
      }
    }
    return proofs;
  }
}
