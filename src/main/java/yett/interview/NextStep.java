package yett.interview;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.FollowUp;
import yett.rules.Conclusion.StopNow;
import yett.rules.Judgement;

/** The order of things: dangers first, then the site, the complaint, checks, repairs, proofs. */
final class NextStep {
  /** Beyond so many questions a caller is not asked for the technician's sake. */
  private static final int MOST_FOR_A_VISIT = 7;

  private final RuleBase base;
  private final Planner planner;
  private final Adviser adviser;
  private final SiteFacts sites;

  /** Chooses among what may be done. Whatever it chooses, the order of things here keeps safe. */
  interface Adviser {
    Advice advise(Belief belief, Planner.Options options);
  }

  NextStep(Expertise expertise, Adviser adviser) {
    this.base = expertise.base();
    this.planner = expertise.planner();
    this.adviser = adviser;
    this.sites = new SiteFacts(base);
  }

  Step after(CaseState state, Judgement judgement, Belief belief) {
    return new Case(state, judgement, belief).step();
  }

  /** One case at one moment. */
  private final class Case {
    private final CaseState state;
    private final Judgement judgement;
    private final Belief belief;
    private final Set<String> unavailable;

    Case(CaseState state, Judgement judgement, Belief belief) {
      this.state = state;
      this.judgement = judgement;
      this.belief = belief;
      this.unavailable = judgement.unavailable();
    }

    Step step() {
      if (state.closed().isPresent()) {
        return new Step.Finished(state.closed().get());
      }
      if (!judgement.stops().isEmpty()) {
        return stopped();
      }
      List<Check> dangers = dangers();
      if (!dangers.isEmpty()) {
        return new Step.AskDangers(dangers);
      }
      if (state.gaveUp().isPresent()) {
        return closing(new Step.HandOver(Ending.HANDED_OVER, state.gaveUp().get()));
      }
      if (!state.siteTaken()) {
        return new Step.AskSite(sites.questions(state.site()));
      }
      if (state.complaints().isEmpty()) {
        return new Step.AskComplaints(
            base.complaints().stream().filter(c -> !unavailable.contains(c.id())).toList());
      }
      if (state.histories().isEmpty()) {
        List<Pressing> pressing = pressing();
        if (state.pressing().isEmpty() && !pressing.isEmpty()) {
          return new Step.AskPressing(pressing);
        }
        return new Step.AskHistory(List.copyOf(base.histories().values()));
      }
      return barred().or(this::settle).orElseGet(this::work);
    }

    /** Depends on nothing but what was said, so that it can be asked at once. */
    private List<Pressing> pressing() {
      List<String> said = state.complaints().orElse(List.of());
      return isCall()
          ? base.telephone().pressing().values().stream()
              .filter(p -> p.ifSaid().isEmpty() || p.ifSaid().stream().anyMatch(said::contains))
              .toList()
          : List.of();
    }

    /** Somebody else took over in a state of the work that they may not change. */
    private Optional<Step> barred() {
      return state.setUps().stream()
          .map(base.setUps()::get)
          .filter(s -> s != null && !state.role().may(s.who()))
          .findFirst()
          .map(
              s ->
                  closing(
                      new Step.HandOver(
                          Ending.HANDED_OVER,
                          "the work stands at \""
                              + s.name()
                              + "\", which only "
                              + article(s.who().word())
                              + " may change")));
    }

    private Step stopped() {
      for (StopNow now : stopsInOrder()) {
        if (!state.madeSafe().contains(now.stop())) {
          Stop stop = base.stops().get(now.stop());
          return new Step.MakeSafe(stop, stop.now(state.role()), now.reason().because());
        }
      }
      String names =
          judgement.stops().stream()
              .map(s -> base.stops().get(s.stop()).name())
              .distinct()
              .collect(Collectors.joining("; "));
      return new Step.HandOver(Ending.MADE_SAFE, names);
    }

    /** In the order of the cards: people first. */
    private List<StopNow> stopsInOrder() {
      List<String> order = List.copyOf(base.stops().keySet());
      return judgement.stops().stream()
          .sorted(Comparator.comparingInt(s -> order.indexOf(s.stop())))
          .toList();
    }

    private List<Check> dangers() {
      return base.ordinaryChecks()
          .filter(Check::danger)
          .filter(c -> !unavailable.contains(c.id()))
          .filter(c -> !isTold(c))
          .toList();
    }

    /** A danger that cannot be told is not taken for none. */
    private boolean isTold(Check danger) {
      return state.latest(danger.id()).map(a -> a.answer().choice().isPresent()).orElse(false);
    }

    private Optional<Step> settle() {
      for (Contradiction contradiction : judgement.contradictions()) {
        if (!state.kept().contains(List.of(contradiction.first(), contradiction.second()))) {
          return Optional.of(
              new Step.Settle(
                  answered(contradiction.first()),
                  answered(contradiction.second()),
                  contradiction));
        }
      }
      return Optional.empty();
    }

    private CaseState.Answered answered(long event) {
      return state.answers().stream().filter(a -> a.event() == event).findFirst().orElseThrow();
    }

    private Step work() {
      if (state.failedProof().isPresent()) {
        return new Step.DecideFailedProof(base.checks().get(state.failedProof().get()));
      }
      if (state.retestDue()) {
        return whileHere().orElseGet(() -> ready(running(), new Step.Retest()));
      }
      if (state.cured()) {
        return afterCure();
      }
      return advised(advise(false), false)
          .or(this::shortenVisit)
          .orElseGet(() -> closing(new Step.HandOver(Ending.HANDED_OVER, nothingLeft())));
    }

    /**
     * When nothing that a caller may do will help, a few more questions may still tell what to
     * bring and where to begin: those that save the technician more than they cost.
     */
    private Optional<Step> shortenVisit() {
      Set<String> checks = checks(false);
      if (!isCall() || checks.isEmpty() || askedOnCall() >= MOST_FOR_A_VISIT) {
        return Optional.empty();
      }
      Site site = sites.site(state.site());
      Set<String> repairs =
          base.repairs().values().stream()
              .filter(site::allows)
              .map(Repair::id)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      Advice advice =
          adviser.advise(belief, new Planner.Options(checks, repairs, state.setUps(), false));
      return advice.kind() == Advice.Kind.ASK ? advised(advice, false) : Optional.empty();
    }

    private long askedOnCall() {
      return state.answers().stream()
          .map(a -> base.checks().get(a.check()))
          .filter(c -> c != null && c.kind() == Check.Kind.CHECK && !c.danger())
          .count();
    }

    private String nothingLeft() {
      return isCall()
          ? "nothing more that the caller may do or look at is worth its time"
          : "no check or repair that is open to "
              + article(state.role().word())
              + " is worth its cost any more";
    }

    private Step afterCure() {
      Optional<Step> entailed =
          judgement.followUps().stream().map(this::entailed).flatMap(Optional::stream).findFirst();
      if (entailed.isPresent()) {
        return entailed.get();
      }
      return advised(advise(true), true).orElseGet(this::proofs);
    }

    /**
     * Entailed work that the set-ups in force allow is done before they are left for the retest.
     */
    private Optional<Step> whileHere() {
      return judgement.followUps().stream()
          .filter(f -> isAtHand(needs(f.card())))
          .map(this::entailed)
          .flatMap(Optional::stream)
          .findFirst();
    }

    private List<String> needs(String card) {
      Repair repair = base.repairs().get(card);
      return repair != null ? repair.needs() : base.checks().get(card).needs();
    }

    private boolean isAtHand(List<String> needs) {
      Planner.Change change = planner.change(state.setUps(), needs);
      return !state.setUps().contains(SetUp.GATE_RUNNING)
          && state.setUps().stream().anyMatch(needs::contains)
          && change.leave().isEmpty()
          && change.enter().isEmpty();
    }

    private Optional<Step> entailed(FollowUp followUp) {
      String id = followUp.card();
      String occasion = "after \"" + base.repairs().get(followUp.repair()).name() + "\"";
      if (unavailable.contains(id) || state.declined().containsKey(id)) {
        return Optional.empty();
      }
      Repair repair = base.repairs().get(id);
      if (repair != null) {
        return Optional.of(mend(repair, Optional.empty(), occasion));
      }
      Check check = base.checks().get(id);
      boolean isHad =
          state.answer(id).filter(a -> !a.yieldsTo(state.role())).isPresent() || isHopeless(id);
      return isHad ? Optional.empty() : Optional.of(ask(check, Optional.empty(), occasion));
    }

    private Step proofs() {
      List<Check> open = new ArrayList<>();
      List<Check> due = new ArrayList<>();
      List<Check> putOff = new ArrayList<>();
      for (Check proof : sites.proofs(state.site())) {
        Optional<Answer> answer =
            state
                .answer(proof.id())
                .filter(a -> !a.yieldsTo(state.role()))
                .map(CaseState.Answered::answer);
        if (answer.equals(Optional.of(new Answer.Chosen(Check.FAIL)))) {
          return new Step.DecideFailedProof(proof);
        }
        if (!answer.equals(Optional.of(new Answer.Chosen(Check.PASS)))) {
          if (answer.isEmpty() && !isHopeless(proof.id()) && isOpenTo(proof)) {
            due.add(proof);
          } else if (answer.equals(Optional.of(new Answer.NotNow())) && isOpenTo(proof)) {
            putOff.add(proof);
          } else {
            open.add(proof);
          }
        }
      }
      if (due.isEmpty()) {
        due = putOff;
      }
      if (!due.isEmpty()) {
        return ask(nearest(due), Optional.empty(), "proof before the gate returns to service");
      }
      if (isCall() && !open.isEmpty() && isSolved(open)) {
        return closing(new Step.CloseSolved(watch()));
      }
      if (!open.isEmpty()) {
        String names = open.stream().map(Check::ask).collect(Collectors.joining(" "));
        // Whoever may make no proof leaves them to somebody who may; whoever could not make one
        // leaves a gate that nobody has proved. A caller locks nothing off: somebody is sent.
        boolean reserved = open.stream().noneMatch(this::isOpenTo);
        return closing(
            new Step.HandOver(
                reserved || isCall() ? Ending.HANDED_OVER : Ending.OUT_OF_SERVICE,
                "proofs still to be made: " + names));
      }
      return closing(new Step.CloseRepaired());
    }

    /** Whether only proofs are open that nothing done on this call makes necessary. */
    private boolean isSolved(List<Check> open) {
      return repairs()
          .allMatch(
              r ->
                  r.who() == Role.CALLER
                      && open.stream().noneMatch(p -> r.proofs().contains(p.id()))
                      && open.stream().noneMatch(this::isOpenTo));
    }

    private List<String> watch() {
      return repairs()
          .flatMap(r -> base.telephone().watch().getOrDefault(r.id(), List.of()).stream())
          .distinct()
          .toList();
    }

    private Stream<Repair> repairs() {
      return state.deeds().stream()
          .map(Entry::event)
          .filter(Event.Repaired.class::isInstance)
          .map(e -> base.repairs().get(((Event.Repaired) e).repair()));
    }

    /**
     * The one for which the state of the work changes least; those in which the gate cannot run
     * come first, so that the last thing proved is a gate that runs.
     */
    private Check nearest(List<Check> checks) {
      return checks.stream()
          .min(
              Comparator.comparing(this::isOfGateThatCanRun)
                  .thenComparingDouble(c -> planner.changeOfSetUp(state.setUps(), c.needs())))
          .orElseThrow();
    }

    private boolean isOfGateThatCanRun(Check proof) {
      return planner
          .change(Set.copyOf(proof.needs()), List.of(SetUp.GATE_RUNNING))
          .leave()
          .isEmpty();
    }

    private boolean isOpenTo(Check proof) {
      return state.role().may(proof.who()) && !unavailable.contains(proof.id());
    }

    /** Whether somebody said once that it cannot be told. */
    private boolean isHopeless(String check) {
      return state
          .latest(check)
          .filter(a -> !a.yieldsTo(state.role()))
          .map(a -> a.answer().hopeless())
          .orElse(false);
    }

    private Optional<Step> advised(Advice advice, boolean cured) {
      return switch (advice.kind()) {
        case ASK ->
            Optional.of(
                ask(
                    base.checks().get(advice.candidates().get(0).check()),
                    Optional.of(advice),
                    cured ? "the gate runs; this is to find what may lie behind" : ""));
        case REPAIR ->
            Optional.of(
                mend(
                    base.repairs().get(advice.jobs().get(0).repair()),
                    Optional.of(advice),
                    cured ? "the gate runs; this is to keep the fault from coming back" : ""));
        case NOTHING_LEFT -> Optional.empty();
      };
    }

    private Advice advise(boolean cured) {
      Set<String> repairs =
          base.repairs().keySet().stream()
              .filter(id -> !unavailable.contains(id) && !state.declined().containsKey(id))
              .filter(id -> !done(id))
              .collect(Collectors.toCollection(LinkedHashSet::new));
      Advice advice =
          adviser.advise(
              belief, new Planner.Options(checks(false), repairs, state.setUps(), cured, isCall()));
      if (advice.kind() == Advice.Kind.NOTHING_LEFT && !cured) {
        advice =
            adviser.advise(
                belief,
                new Planner.Options(checks(true), repairs, state.setUps(), false, isCall()));
      }
      return committed(advice, repairs);
    }

    /**
     * What a set-up was entered or left for comes next: changing one's mind half way would send a
     * person to and fro.
     */
    private Advice committed(Advice advice, Set<String> repairs) {
      String intent = state.intent().orElse("");
      if (repairs.contains(intent)) {
        return advice.repairing(intent);
      }
      return checks(true).contains(intent) ? advice.asking(intent) : advice;
    }

    private boolean isCall() {
      return state.role() == Role.CALLER;
    }

    private boolean done(String repair) {
      return state.deeds().stream()
          .anyMatch(d -> d.event() instanceof Event.Repaired r && r.repair().equals(repair));
    }

    private Set<String> checks(boolean alsoPutOff) {
      return base.ordinaryChecks()
          .filter(c -> !c.danger() && !unavailable.contains(c.id()))
          .filter(c -> isAskable(c, alsoPutOff))
          .map(Check::id)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private boolean isAskable(Check check, boolean alsoPutOff) {
      Optional<CaseState.Answered> last = state.latest(check.id());
      if (last.isEmpty() || last.get().yieldsTo(state.role())) {
        return true;
      }
      if (last.get().answer().hopeless()) {
        return false;
      }
      if (last.get().answer().putOff()) {
        return alsoPutOff;
      }
      return last.get().epoch() < state.epoch() && touchedSince(check, last.get().event());
    }

    /** Whether a repair done after an answer could have changed it. */
    private boolean touchedSince(Check check, long event) {
      return state.deeds().stream()
          .filter(d -> d.number() > event)
          .map(Entry::event)
          .filter(Event.Repaired.class::isInstance)
          .map(e -> base.repairs().get(((Event.Repaired) e).repair()).removes())
          .anyMatch(r -> r.keySet().stream().anyMatch(check.likelihood()::containsKey));
    }

    private Step ask(Check check, Optional<Advice> advice, String occasion) {
      return ready(
          check.needs(),
          new Step.Ask(
              check,
              base.cautionsFor(check.hazards()),
              judgement.expectation(check.id()),
              advice,
              occasion));
    }

    private Step mend(Repair repair, Optional<Advice> plan, String occasion) {
      return ready(
          repair.needs(),
          new Step.Mend(repair, base.cautionsFor(repair.hazards()), plan, occasion));
    }

    /** The set-ups in which this person tries the gate. */
    private List<String> running() {
      SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
      return running != null && state.role().may(running.who()) ? List.of(running.id()) : List.of();
    }

    private Step ready(Collection<String> needs, Step then) {
      Planner.Change change = planner.change(state.setUps(), needs);
      if (!change.leave().isEmpty()) {
        return new Step.Leave(base.setUps().get(change.leave().get(0)), then.card(), purpose(then));
      }
      if (!change.enter().isEmpty()) {
        SetUp setUp = base.setUps().get(change.enter().get(0));
        return new Step.Enter(setUp, base.cautionsFor(setUp.hazards()), then.card(), purpose(then));
      }
      return then;
    }

    /** Before a case closes, every set-up is left in order, as far as this person may. */
    private Step closing(Step then) {
      return state.setUps().stream()
          .map(base.setUps()::get)
          .filter(s -> s != null && state.role().may(s.who()))
          .reduce((a, b) -> b)
          .<Step>map(s -> new Step.Leave(s, "", "the case closes"))
          .orElse(then);
    }

    private static String purpose(Step then) {
      if (then instanceof Step.Ask ask) {
        return ask.check().ask();
      }
      return then instanceof Step.Mend mend ? mend.repair().name() : "the gate is tried";
    }
  }

  private static String article(String word) {
    return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
  }
}
