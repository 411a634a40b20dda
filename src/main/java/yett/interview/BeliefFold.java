package yett.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.belief.Observation;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;
import yett.rules.Judgement;

/**
 * Works out the belief from findings and deeds in their order. What did not change since the last
 * time is kept, so that a new answer costs one update; the result is the same as starting over.
 */
final class BeliefFold {
  /** One thing that moves the belief. */
  private sealed interface Deed {}

  private record Learn(long event, String check, List<Double> weights, String words, String reason)
      implements Deed {}

  private record Mend(long event, String repair) implements Deed {}

  private record Try(long event, boolean cured) implements Deed {}

  private final RuleBase base;
  private final Outset outset;
  private final double[] retestFails;
  private Map<String, Double> odds;
  private final List<Deed> deeds = new ArrayList<>();
  private final List<Belief> beliefs = new ArrayList<>();
  private final List<double[]> chances = new ArrayList<>();

  BeliefFold(RuleBase base, Outset outset) {
    this.base = base;
    this.outset = outset;
    this.retestFails = base.causes().values().stream().mapToDouble(c -> c.retestFails()).toArray();
  }

  record Result(Belief belief, Trail trail) {}

  Result fold(CaseState state, Judgement judgement) {
    Map<String, Double> factors = judgement.oddsFactors();
    if (!factors.equals(odds)) {
      odds = factors;
      deeds.clear();
      beliefs.clear();
      chances.clear();
      Belief prior = outset.belief(factors);
      beliefs.add(prior);
      chances.add(prior.atCallOut());
    }
    List<Deed> wanted = deeds(state, judgement);
    int same = 0;
    while (same < wanted.size()
        && same < deeds.size()
        && wanted.get(same).equals(deeds.get(same))) {
      same++;
    }
    truncate(deeds, same);
    truncate(beliefs, same + 1);
    truncate(chances, same + 1);
    for (Deed deed : wanted.subList(same, wanted.size())) {
      Belief next = apply(beliefs.get(beliefs.size() - 1), deed);
      deeds.add(deed);
      beliefs.add(next);
      chances.add(next.atCallOut());
    }
    return new Result(beliefs.get(beliefs.size() - 1), trail());
  }

  private static void truncate(List<?> list, int size) {
    list.subList(size, list.size()).clear();
  }

  private List<Deed> deeds(CaseState state, Judgement judgement) {
    List<Deed> all = new ArrayList<>();
    List<Finding> findings = judgement.findings();
    findings.stream().filter(f -> f.event() == 0).map(this::learn).forEach(all::add);
    Stream<long[]> told =
        findings.stream().filter(f -> f.event() > 0).map(f -> new long[] {f.event(), 0});
    Stream<long[]> done = state.deeds().stream().map(d -> new long[] {d.number(), 1});
    for (long[] at :
        Stream.concat(told, done).sorted((a, b) -> Long.compare(a[0], b[0])).toList()) {
      if (at[1] == 0) {
        all.add(learn(judgement.finding(at[0]).orElseThrow()));
      } else {
        state.deeds().stream().filter(d -> d.number() == at[0]).map(this::deed).forEach(all::add);
      }
    }
    return all;
  }

  private Deed learn(Finding finding) {
    return new Learn(
        finding.event(),
        finding.check(),
        finding.weights(),
        finding.outcome(),
        finding.reason().words());
  }

  private Deed deed(Entry entry) {
    return entry.event() instanceof Event.Repaired r
        ? new Mend(entry.number(), r.repair())
        : new Try(entry.number(), ((Event.Retested) entry.event()).cured());
  }

  private Belief apply(Belief belief, Deed deed) {
    if (deed instanceof Learn learn) {
      return belief.learn(new Observation(learn.check(), learn.weights()));
    }
    if (deed instanceof Mend mend) {
      return belief.repaired(base.repairs().get(mend.repair()).removes());
    }
    return belief.retested(((Try) deed).cured(), retestFails);
  }

  private Trail trail() {
    List<Trail.Move> moves = new ArrayList<>();
    for (int i = 0; i < deeds.size(); i++) {
      moves.add(move(deeds.get(i), chances.get(i), chances.get(i + 1)));
    }
    return new Trail(chances.get(0), List.copyOf(moves));
  }

  private Trail.Move move(Deed deed, double[] before, double[] after) {
    if (deed instanceof Learn learn) {
      Check check = base.checks().get(learn.check());
      return new Trail.Move(
          learn.event(),
          learn.check(),
          learn.words(),
          learn.reason(),
          check.source(),
          before,
          after);
    }
    if (deed instanceof Mend mend) {
      return new Trail.Move(
          mend.event(),
          mend.repair(),
          "done",
          "a repair changes the gate, not what was wrong with it",
          base.repairs().get(mend.repair()).source(),
          before,
          after);
    }
    Try tried = (Try) deed;
    return new Trail.Move(
        tried.event(),
        "retest",
        tried.cured() ? "the gate runs" : "the gate still fails",
        "a repair that cured, or did not, tells what was wrong",
        "the repair's card",
        before,
        after);
  }
}
