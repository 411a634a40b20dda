package yett.interview.course;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yett.interview.course.Concluding.Concluded;
import yett.interview.course.Concluding.Mark;
import yett.interview.danger.Dangers;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.proof.Proofs;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;

/**
 * What tells one state of the work from another where safety is concerned. Two moments of which it
 * is the same go on alike; {@link SafeStates} holds samples of them against each other.
 */
record StateOfWork(List<Object> parts) {

  static StateOfWork of(Concluding rules, RuleBase base, CaseState state, Concluded concluded) {
    return new Reading(rules, base, state, concluded).read();
  }

  /** Whether no danger is to be looked at before all else. */
  boolean nothingDue() {
    return parts.get(4).equals(Set.of());
  }

  /**
   * What the next step hangs on where only one can come: not what was repaired and proved before,
   * but that a proof failed.
   */
  List<Object> onTheWay() {
    Map<?, ?> proofs = (Map<?, ?>) parts.get(6);
    boolean failed =
        proofs.values().stream().anyMatch(p -> ((Answer) ((List<?>) p).get(0)).is(Check.FAIL));
    List<Object> on = new ArrayList<>(parts.subList(0, 6));
    on.add(failed);
    on.addAll(((List<?>) parts.get(7)).subList(3, 6));
    return on;
  }

  private static final List<Boolean> NOT_SAFE = List.of(false, false);

  private record Reading(Concluding rules, RuleBase base, CaseState state, Concluded concluded) {
    StateOfWork read() {
      CaseState.Told told = state.told();
      CaseState.Work work = state.work();
      boolean caller = state.role() == Role.CALLER;
      return new StateOfWork(
          List.of(
              state.role(),
              Map.of("in force", Set.copyOf(work.setUps()), "unseen", work.unseen()),
              List.of(
                  told.siteTaken(),
                  told.complaints().isPresent(),
                  caller && told.pressing().isPresent(),
                  told.histories().isPresent()),
              caller ? told.complaints() : Optional.empty(),
              dueDangers(),
              standing(),
              proofs(),
              List.of(
                  work.retestDue(),
                  work.cured(),
                  caller && work.epoch() > 0,
                  work.failedProof(),
                  state.gaveUp().isPresent(),
                  state.closed()),
              followUps(),
              List.of(declined(), inVain()),
              caller && isCallersWork()));
    }

    /** Dangers to look at: those never told, or not since somebody came. */
    private Set<String> dueDangers() {
      Set<String> unavailable = concluded.judgement().unavailable();
      return base.ordinaryChecks()
          .filter(Check::danger)
          .map(Check::id)
          .filter(id -> !unavailable.contains(id))
          .filter(
              id ->
                  state
                      .latest(id)
                      .filter(a -> a.event() >= state.work().lookAgain())
                      .filter(a -> !Dangers.isSaidFromAfar(a, state.role()))
                      .filter(a -> !a.answer().putOff())
                      .isEmpty())
          .collect(Collectors.toSet());
    }

    /** What stops or forbids now, and what was done about it. */
    private Set<Object> standing() {
      Set<Object> standing = new HashSet<>();
      for (Mark mark : concluded.live()) {
        List<Object> passed = new ArrayList<>();
        boolean after = false;
        for (Mark other : concluded.marks()) {
          after |= other.equals(mark);
          if (after && !other.isRepair() && isProof(other.card())) {
            passed.add(other.alike());
          }
        }
        Set<Object> safe =
            concluded.judgement().stops().stream()
                .filter(s -> s.event() == mark.number())
                .map(s -> madeSafe(base.stops().get(s.stop()), mark))
                .collect(Collectors.toSet());
        boolean lookedAtAgain =
            concluded.judgement().stops().stream()
                .filter(t -> t.event() == mark.number())
                .map(t -> base.stops().get(t.stop()).leaves().map(base.setUps()::get))
                .anyMatch(l -> l.isPresent() && l.get().excludes().contains(SetUp.GATE_RUNNING));
        long latest = state.latest(mark.card()).map(CaseState.Answered::event).orElse(0L);
        standing.add(
            List.of(
                rules.kind(mark),
                passed,
                safe,
                rules.isEndedByMending(mark) && isMendedSince(mark.number()),
                lookedAtAgain && isMendedSince(latest),
                isToldAgain(mark, safe)));
      }
      return standing;
    }

    /** It only sets the order of what is asked and made safe where a danger is reserved. */
    private boolean isToldAgain(Mark mark, Set<Object> safe) {
      long again = state.work().lookAgain();
      Set<String> unavailable = concluded.judgement().unavailable();
      return again == 0
          || mark.number() > again
          || !safe.contains(NOT_SAFE)
          || base.ordinaryChecks()
              .filter(c -> c.danger() && c.who() != Role.CALLER)
              .allMatch(c -> unavailable.contains(c.id()));
    }

    private boolean isMendedSince(long event) {
      return state.work().deeds().stream()
          .anyMatch(d -> d.number() > event && d.event() instanceof Event.Repaired);
    }

    private boolean isProof(String card) {
      return base.checks().get(card).kind() == Check.Kind.PROOF;
    }

    private Object madeSafe(Stop stop, Mark mark) {
      Entry done = state.madeSafe().get(stop.id());
      boolean since = done != null && done.number() > mark.number();
      return List.of(since, since && done.by() == Role.CALLER);
    }

    /**
     * Of each proof its result, as far as it counts. One that passed counts while the gate is held
     * for cured: before it is so again something is repaired, and then it is due again. One that
     * cannot be made counts whenever that was said.
     */
    private Map<String, Object> proofs() {
      Map<String, Object> proofs = new TreeMap<>();
      for (CaseState.Answered a : state.answers()) {
        if (base.checks().get(a.check()).kind() == Check.Kind.PROOF) {
          proofs.remove(a.check());
          result(a).ifPresent(r -> proofs.put(a.check(), r));
        }
      }
      return proofs;
    }

    private Optional<List<Object>> result(CaseState.Answered a) {
      boolean now = a.epoch() == state.work().epoch();
      boolean since = a.event() > Proofs.lastDanger(base, state);
      if (a.answer().hopeless()) {
        return Optional.of(List.of(a.answer(), a.by() == Role.CALLER));
      }
      return a.answer().is(Check.FAIL) || now && state.work().cured()
          ? Optional.of(List.of(a.answer(), now, since))
          : Optional.empty();
    }

    private Map<String, Object> followUps() {
      Map<String, Object> due = new HashMap<>();
      concluded
          .judgement()
          .followUps()
          .forEach(
              f ->
                  due.put(
                      f.card(),
                      List.of(
                          state.work().declined().containsKey(f.card()),
                          state.answer(f.card()).map(a -> a.answer().toString()),
                          state.latest(f.card()).map(a -> a.answer().hopeless()))));
      return due;
    }

    /** Repairs to which a failed proof points, and that could not be done. */
    private Set<String> declined() {
      return state.answers().stream()
          .filter(a -> a.epoch() == state.work().epoch() && a.answer().is(Check.FAIL))
          .flatMap(a -> rules.pointedTo(a.check()).stream())
          .filter(state.work().declined()::containsKey)
          .collect(Collectors.toSet());
    }

    /** Repairs to which a failed proof points, and that were done and did not make it pass. */
    private Set<String> inVain() {
      Set<String> inVain = new HashSet<>();
      for (CaseState.Answered a : state.answers()) {
        if (state.latest(a.check()).filter(l -> l.answer().is(Check.FAIL)).isPresent()
            && a.answer().is(Check.FAIL)) {
          Set<String> pointedTo = rules.pointedTo(a.check());
          state.work().deeds().stream()
              .filter(d -> d.number() > a.event() && d.event() instanceof Event.Repaired)
              .map(d -> ((Event.Repaired) d.event()).repair())
              .filter(pointedTo::contains)
              .forEach(inVain::add);
        }
      }
      return inVain;
    }

    /** A case is solved on the telephone by nothing but what a caller did. */
    private boolean isCallersWork() {
      return state.work().deeds().stream()
          .filter(d -> d.event() instanceof Event.Repaired)
          .map(d -> base.repairs().get(((Event.Repaired) d.event()).repair()))
          .allMatch(
              r ->
                  r.who() == Role.CALLER
                      && r.proofs().stream()
                          .map(base.checks()::get)
                          .allMatch(p -> p == null || p.who() == Role.CALLER));
    }
  }
}
