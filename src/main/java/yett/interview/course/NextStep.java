package yett.interview.course;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.interview.danger.Dangers;
import yett.interview.danger.SaidBefore;
import yett.interview.event.Ending;
import yett.interview.evidence.Believed;
import yett.interview.inspection.InspectionItems;
import yett.interview.inspection.InspectionSteps;
import yett.interview.moment.Present;
import yett.interview.proof.FailedProofs;
import yett.interview.proof.Proofs;
import yett.interview.search.Adviser;
import yett.interview.search.BestWork;
import yett.interview.search.CallPolicy;
import yett.interview.search.FollowUps;
import yett.interview.search.LookRounds;
import yett.interview.search.ReservedWork;
import yett.interview.setup.SetUpSteps;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.interview.step.HandOverReason;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.plan.Planner;
import yett.rules.Judgement;

/**
 * Chooses the next step in the fixed order: dangers, site, complaint, checks and repairs, proofs.
 */
final class NextStep {
  private final RuleBase base;
  private final Planner planner;
  private final Adviser adviser;
  private final SiteFacts sites;
  private final InspectionItems items;

  NextStep(Expertise expertise, Adviser adviser) {
    this.base = expertise.base();
    this.planner = expertise.planner();
    this.adviser = adviser;
    this.sites = new SiteFacts(base);
    this.items = new InspectionItems(base);
  }

  Step after(CaseState state, Judgement judgement, Believed believed) {
    return new Case(new Present(base, state, judgement, believed)).step();
  }

  /** One case at one moment. */
  private final class Case {
    private final Present present;
    private final CaseState state;
    private final SetUpSteps steps;
    private final CallPolicy calls;
    private final FailedProofs failed;

    Case(Present present) {
      this.present = present;
      this.state = present.state();
      this.steps = new SetUpSteps(present, planner);
      this.calls = new CallPolicy(present, sites);
      this.failed = new FailedProofs(present, sites.proofs(state.told().site()), steps);
    }

    Step step() {
      if (state.closed().isPresent()) {
        return new Step.Finished(state.closed().get());
      }
      return new Dangers(present, planner)
          .step()
          .or(this::wanted)
          .or(this::begin)
          .or(this::barred)
          .or(this::settle)
          .orElseGet(this::work);
    }

    private Optional<Step> wanted() {
      return state.gaveUp().map(why -> handOver(new HandOverReason.Wanted(why)));
    }

    /** Hands the case over. A gate with a failed proof is left out of use, whoever comes next. */
    private Step handOver(HandOverReason because) {
      Ending ending = failed.isEmpty() ? Ending.HANDED_OVER : Ending.OUT_OF_SERVICE;
      return steps.leftOutOfUse(new Step.HandOver(ending, because));
    }

    /** What is asked before the search for the fault. */
    private Optional<Step> begin() {
      if (!state.told().siteTaken()) {
        return Optional.of(new Step.AskSite(sites.questions(state.told().site())));
      }
      if (state.isInspection()) {
        return Optional.empty(); // nothing is reported
      }
      if (state.told().complaints().isEmpty()) {
        List<Check> said = new SaidBefore(present).complaints();
        return Optional.of(
            new Step.AskComplaints(
                base.complaints().stream()
                    .filter(c -> !present.unavailable().contains(c.id()) && !said.contains(c))
                    .toList(),
                said));
      }
      if (state.told().histories().isEmpty()) {
        List<Pressing> pressing = calls.pressing();
        return Optional.of(
            state.told().pressing().isEmpty() && !pressing.isEmpty()
                ? new Step.AskPressing(pressing)
                : new Step.AskHistory(new SiteFacts(base).histories(state.told().site())));
      }
      return Optional.empty();
    }

    /** The hand-over when a set-up is in force that the person who took over may not change. */
    private Optional<Step> barred() {
      return state.work().setUps().stream()
          .map(base.setUps()::get)
          .filter(s -> s != null && !state.role().may(s.who()))
          .findFirst()
          .map(s -> handOver(new HandOverReason.Barred(s)));
    }

    private Optional<Step> settle() {
      return present.judgement().contradictions().stream()
          .filter(c -> !state.kept().contains(List.of(c.first(), c.second())))
          .findFirst()
          .map(c -> new Step.Settle(answered(c.first()), answered(c.second()), c));
    }

    private CaseState.Answered answered(long event) {
      return state.given(event).orElseThrow();
    }

    private Step work() {
      if (state.isInspection()) {
        return new InspectionSteps(present, sites, items, planner, steps).step();
      }
      if (state.work().failedProof().isPresent()) {
        return new Step.DecideFailedProof(base.checks().get(state.work().failedProof().get()));
      }
      FollowUps followUps = new FollowUps(present, planner, steps);
      if (state.work().retestDue() && !present.isForbidden(SetUp.GATE_RUNNING)) {
        return followUps
            .whileHere()
            .or(followUps::beforeRun)
            .or(followUps::setBeforeRun)
            .orElseGet(steps::retest);
      }
      BestWork work = new BestWork(present, adviser, steps);
      Optional<Step> beforeAnyRun = beforeAnyRun(followUps, work);
      if (beforeAnyRun.isPresent()) {
        return beforeAnyRun.get();
      }
      // A fault found after the cure may forbid running the gate: repair it first.
      if (state.work().cured() && !present.isForbidden(SetUp.GATE_RUNNING)) {
        return followUps
            .first()
            .or(() -> work.best(true))
            .or(followUps::putOff)
            .orElseGet(this::proofs);
      }
      return failed
          .repair()
          .or(() -> calls.cannotTell() ? Optional.of(untold()) : Optional.empty())
          .or(() -> calls.lookFirst(work, steps))
          .or(() -> calls.lookNext(work, steps))
          .or(() -> calls.putRight(work, steps))
          .or(() -> calls.helpFirst(work, steps))
          .or(() -> calls.lookBeforeTry(work, steps))
          .or(() -> work.best(false))
          .or(() -> present.isCall() ? Optional.empty() : followUps.putOffBeforeRun())
          .or(() -> present.isCall() ? calls.shortenVisit(work) : narrowed(work))
          .or(() -> calls.lastTry(work, steps))
          .or(() -> calls.lastQuestion(work, steps))
          .orElseGet(this::nothingLeft);
    }

    /**
     * What happened to the gate is looked at before a repair or a run, by whoever is there. Work
     * that was begun or asked for, and that may still be done, comes first.
     */
    private Optional<Step> beforeAnyRun(FollowUps followUps, BestWork work) {
      boolean begun =
          Stream.concat(state.work().intent().stream(), state.work().askedFor().stream())
              .anyMatch(card -> !present.unavailable().contains(card));
      return begun || present.isCall()
          ? Optional.empty()
          : followUps.beforeAnyRun(new LookRounds(present, adviser, steps), work.checks(false));
    }

    private Optional<Step> narrowed(BestWork work) {
      return new ReservedWork(present, sites).narrowed(work);
    }

    private Step untold() {
      return handOver(new HandOverReason.Untold());
    }

    private Step nothingLeft() {
      if (present.isCall()) {
        return handOver(new HandOverReason.NothingLeft(state.role()));
      }
      ReservedWork work = new ReservedWork(present, sites);
      List<Stop> standing =
          present.judgement().stops().stream()
              .map(s -> base.stops().get(s.stop()))
              .filter(s -> s.leaves().isPresent())
              .distinct()
              .toList();
      return handOver(
          new HandOverReason.NothingLeft(
              state.role(), work.repairs(), work.refused(), work.alone(), standing));
    }

    private Step proofs() {
      return new Proofs(present, sites.proofs(state.told().site()), planner, steps, calls).step();
    }
  }
}
