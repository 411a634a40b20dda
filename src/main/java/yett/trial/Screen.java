package yett.trial;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.belief.ImpossibleEvidence;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.evidence.Observed;
import yett.knowledge.RuleBase;
import yett.replay.AsTold;
import yett.replay.RecordedCase;
import yett.rules.Conclusion;
import yett.rules.Conclusion.Finding;
import yett.rules.Conclusion.Odds;
import yett.rules.Conclusion.Unavailable;
import yett.rules.Judgement;

/**
 * Decides which cases do not have to be replayed to compare two rule bases. For some it is certain
 * that nothing differs, because nothing that was changed can be at their gates. For the others it
 * takes a quick look, which proves nothing: it applies the answers of the file in their order, and
 * each on its own, under both rule bases with few sets of causes in view, and without planning. A
 * case is passed over only if no chance ever differs and no cause stands out about which a card was
 * added or changed.
 */
final class Screen implements AutoCloseable {
  /** A chance that differs by this much may turn a plan; considered judgement. */
  static final double SHIFT = 0.03;

  /** From this chance a cause influences what is asked; considered judgement. */
  private static final double STANDS_OUT = 0.05;

  /** Smaller chances are ignored. */
  private static final double LEAST = 0.005;

  /**
   * A case as the quick look saw it.
   *
   * @param moves the most by which the chance of a cause differs anywhere; more than 1 where
   *     something else differs too. The cases that a change moves most are replayed first.
   */
  record Seen(Verdict verdict, double moves) {}

  /** What is decided about a case. */
  enum Verdict {
    /** Nothing can differ. */
    ELSEWHERE,
    /** Nothing seems to differ. */
    PASSED_OVER,
    TO_REPLAY
  }

  private final Side first;
  private final Side second;
  private final Change change;

  Screen(Expertise first, Expertise second) {
    this.first = new Side(first.rough());
    this.second = new Side(second.rough());
    this.change = new Change(first.base(), second.base());
  }

  /**
   * A rule base with the rule sessions that are at rest: to begin one takes longer than to look.
   */
  private record Side(Expertise expertise, Queue<Interview> idle) {
    Side(Expertise expertise) {
      this(expertise, new ConcurrentLinkedQueue<>());
    }

    Judgement judgement(RecordedCase recorded) {
      Interview one = idle.poll();
      Interview interview = one == null ? expertise.newInterviewWithoutConflicts() : one;
      Judgement judgement = interview.judgement(AsTold.entries(recorded, expertise.base()));
      idle.add(interview);
      return judgement;
    }
  }

  @Override
  public void close() {
    Stream.of(first, second).forEach(side -> side.idle().forEach(Interview::close));
  }

  Verdict of(RecordedCase recorded) {
    return look(recorded).verdict();
  }

  Seen look(RecordedCase recorded) {
    if (change.isElsewhere(recorded.site())) {
      return new Seen(Verdict.ELSEWHERE, 0);
    }
    Told before = told(first, recorded);
    Told now = told(second, recorded);
    double moves = moves(before.standings(), now.standings());
    if (!change.inCardsOnly() && !judged(before).equals(judged(now))) {
      moves += 1;
    }
    boolean differs =
        moves >= SHIFT
            || !before.standings().keySet().equals(now.standings().keySet())
            || before.standings().keySet().stream()
                .anyMatch(m -> standsOut(before.standings().get(m), now.standings().get(m)));
    return new Seen(
        change.inCardsAndTablesOnly() && !differs ? Verdict.PASSED_OVER : Verdict.TO_REPLAY, moves);
  }

  /**
   * What the rules conclude that is not in the chances already, about cards that both rule bases
   * have.
   */
  private Set<Conclusion> judged(Told told) {
    return told.judgement().conclusions().stream()
        .filter(c -> !(c instanceof Odds))
        .filter(c -> !(c instanceof Unavailable u) || change.isInBoth(u.card()))
        .collect(Collectors.toSet());
  }

  private static double moves(
      Map<String, Map<String, Double>> before, Map<String, Map<String, Double>> now) {
    double most = 0;
    for (Map.Entry<String, Map<String, Double>> at : before.entrySet()) {
      Map<String, Double> then = now.getOrDefault(at.getKey(), at.getValue());
      Set<String> causes = new HashSet<>(at.getValue().keySet());
      causes.addAll(then.keySet());
      for (String cause : causes) {
        double was = at.getValue().getOrDefault(cause, 0.0);
        most = Math.max(most, Math.abs(was - then.getOrDefault(cause, 0.0)));
      }
    }
    return most;
  }

  /** Whether a cause stands out about which a card was added or changed. */
  private boolean standsOut(Map<String, Double> before, Map<String, Double> now) {
    return Stream.of(before, now)
        .flatMap(chances -> chances.entrySet().stream())
        .anyMatch(e -> e.getValue() >= STANDS_OUT && change.touches(e.getKey()));
  }

  /** What a case tells, as one of the rule bases takes it. */
  private record Told(Judgement judgement, Map<String, Map<String, Double>> standings) {}

  private static Told told(Side side, RecordedCase recorded) {
    Judgement judgement = side.judgement(recorded);
    return new Told(judgement, standings(side.expertise(), judgement));
  }

  /**
   * The chances of the causes, without negligible ones: after the complaints, after each answer,
   * and after each answer as if it had been asked first. The last is needed because a cause may
   * stand out while only some answers are known, although all answers of the file together rule it
   * out.
   */
  private static Map<String, Map<String, Double>> standings(
      Expertise expertise, Judgement judgement) {
    RuleBase base = expertise.base();
    List<String> causes = expertise.model().causes();
    Belief belief = expertise.atReport(judgement.oddsFactors());
    Map<String, Map<String, Double>> standings = new HashMap<>();
    standings.put("reported", chances(causes, belief));
    for (Finding complaint : judgement.findings()) {
      belief = complaint.event() == 0 ? after(belief, complaint, base) : belief;
    }
    standings.put("told", chances(causes, belief));
    Belief told = belief;
    for (Finding answer : judgement.findings()) {
      if (answer.event() > 0) {
        belief = after(belief, answer, base);
        standings.put("after " + answer.check(), chances(causes, belief));
        standings.put("alone " + answer.check(), chances(causes, after(told, answer, base)));
      }
    }
    return standings;
  }

  /** The belief after a finding. A finding that no cause allows is not weighed. */
  private static Belief after(Belief belief, Finding finding, RuleBase base) {
    try {
      return belief.learn(Observed.of(finding, base.checks().get(finding.check())));
    } catch (ImpossibleEvidence e) {
      return belief;
    }
  }

  private static Map<String, Double> chances(List<String> causes, Belief belief) {
    double[] chances = belief.atCallOut();
    Map<String, Double> by = new HashMap<>();
    for (int c = 0; c < chances.length; c++) {
      if (chances[c] >= LEAST) {
        by.put(causes.get(c), chances[c]);
      }
    }
    return by;
  }
}
