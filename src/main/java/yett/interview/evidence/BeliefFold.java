package yett.interview.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.belief.Conflicts;
import yett.belief.ImpossibleEvidence;
import yett.belief.Observation;
import yett.belief.Retest;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;
import yett.rules.Judgement;

/**
 * Works out the belief from findings, repairs and retests in the order of the case. Results are
 * kept between calls, so a new answer costs one update; the result is the same as from the start.
 */
public final class BeliefFold {
  /** One thing that changes the belief: a finding, a repair or a retest. */
  private sealed interface Deed {}

  private record Learn(Finding finding) implements Deed {
    long event() {
      return finding.event();
    }

    String check() {
      return finding.check();
    }

    String words() {
      return finding.outcome();
    }
  }

  private record Mend(long event, String repair) implements Deed {}

  private record Try(long event, Event.Retested tried) implements Deed {}

  /**
   * The state after a deed.
   *
   * @param belief null where it was let go
   * @param known position of the last standing before which something was repaired or tried.
   *     Answers after it are searched together for a conflict.
   * @param bits conflict among those answers
   * @param found the latest set of answers found to conflict
   */
  private record Standing(
      Belief belief, double[] chances, int known, double bits, Optional<Conflict> found) {
    Standing withoutBelief() {
      return new Standing(null, chances, known, bits, found);
    }
  }

  /**
   * How many of the latest beliefs are held where no conflicts are looked for. A belief is half a
   * megabyte and more, and in a replay nobody goes back: holding all of them, a quarter of the
   * processor's time went into moving them about in memory. One that is needed after all is worked
   * out again.
   */
  private static final int HELD = 3;

  /** A conflict is searched for when an answer adds at least this many bits to it. */
  private static final double WORSE_BY = 1;

  private final RuleBase base;
  private final Outset outset;
  private final double[] retestFails;
  private final boolean conflicts;
  private Map<String, Double> odds;
  private final List<Deed> deeds = new ArrayList<>();

  /** The state before the first deed and after each deed: one more than {@link #deeds}. */
  private final List<Standing> standings = new ArrayList<>();

  /**
   * @param conflicts whether answers are looked for that hardly fit together; nothing that is
   *     believed depends on it
   */
  public BeliefFold(RuleBase base, Outset outset, boolean conflicts) {
    this.conflicts = conflicts;
    this.base = base;
    this.outset = outset;
    this.retestFails = base.causes().values().stream().mapToDouble(c -> c.retestFails()).toArray();
  }

  /** The belief after all events, how it came about, and the answers that hardly fit together. */
  public record Result(Belief belief, Trail trail, Optional<Conflict> conflict) {}

  /** The result after the events of this state, with the findings of the rules. */
  public Result fold(CaseState state, Judgement judgement) {
    Map<String, Double> factors = judgement.oddsFactors();
    if (!factors.equals(odds)) {
      odds = factors;
      deeds.clear();
      standings.clear();
      Belief prior = outset.belief(factors);
      standings.add(new Standing(prior, prior.atCallOut(), 0, 0, Optional.empty()));
    }
    List<Deed> wanted = deeds(state, judgement);
    int same = 0;
    while (same < wanted.size()
        && same < deeds.size()
        && wanted.get(same).equals(deeds.get(same))) {
      same++;
    }
    while (standings.get(same).belief() == null) {
      same--;
    }
    truncate(deeds, same);
    truncate(standings, same + 1);
    for (Deed deed : wanted.subList(same, wanted.size())) {
      Standing next = after(standings.get(standings.size() - 1), deed);
      deeds.add(deed);
      standings.add(next);
      letGo(standings.size() - 1 - HELD);
    }
    Standing last = standings.get(standings.size() - 1);
    return new Result(last.belief(), trail(), last.found().filter(c -> !explained(c, last)));
  }

  /** Lets go of a belief, except of the first. */
  private void letGo(int standing) {
    if (!conflicts && standing > 0) {
      standings.set(standing, standings.get(standing).withoutBelief());
    }
  }

  /**
   * The state after a deed. Evidence that no set of causes allows is ignored: somebody was wrong,
   * and the case goes on without it.
   */
  private Standing after(Standing before, Deed deed) {
    if (deed instanceof Learn learn) {
      return after(before, learn);
    }
    Belief belief = before.belief();
    try {
      belief = apply(belief, deed);
    } catch (ImpossibleEvidence e) {
      // The gate runs although a cause that prevents it is certain: keep the belief.
    }
    return new Standing(belief, belief.atCallOut(), standings.size(), 0, before.found());
  }

  private Standing after(Standing before, Learn learn) {
    Observation seen = observation(learn);
    Belief belief = before.belief();
    double chance = 0;
    try {
      belief = belief.learn(seen);
      chance = Math.exp(belief.logEvidence() - before.belief().logEvidence());
    } catch (ImpossibleEvidence e) {
      // No set of causes allows it: keep the belief.
    }
    if (!conflicts) {
      return new Standing(belief, belief.atCallOut(), before.known(), 0, Optional.empty());
    }
    double apart = standings.get(before.known()).belief().chanceOf(seen);
    double worse = apart > 0 ? Conflicts.bits(apart, chance) : Conflicts.MOST;
    double bits = chance > 0 ? before.bits() + worse : before.bits();
    Optional<Conflict> found = before.found();
    if (learn.event() > 0 && worse >= WORSE_BY && before.bits() + worse >= Conflicts.TOLD) {
      found = conflict(before.known(), learn, chance > 0).or(before::found);
    }
    return new Standing(belief, belief.atCallOut(), before.known(), bits, found);
  }

  /** Looks for the answers that the last answer conflicts with. */
  private Optional<Conflict> conflict(int known, Learn last, boolean weighed) {
    List<Learn> answers = new ArrayList<>();
    deeds.subList(known, deeds.size()).forEach(d -> answers.add((Learn) d));
    answers.add(last);
    List<Observation> seen = answers.stream().map(this::observation).toList();
    List<Integer> named =
        IntStream.range(0, answers.size()).filter(i -> said(answers.get(i))).boxed().toList();
    Belief before = standings.get(known).belief();
    List<Integer> set = Conflicts.smallest(before, seen, named, answers.size() - 1);
    if (set.isEmpty() && weighed) {
      return Optional.empty();
    }
    List<Integer> told = set.isEmpty() ? List.of(answers.size() - 1) : set;
    return Optional.of(
        new Conflict(
            told.stream().map(answers::get).map(BeliefFold::part).toList(),
            weighed ? Conflicts.of(before, told.stream().map(seen::get).toList()) : Conflicts.MOST,
            weighed));
  }

  private static Conflict.Part part(Learn learn) {
    return new Conflict.Part(learn.event(), learn.check(), learn.words(), learn.finding().also());
  }

  /**
   * Whether it was said by the person. A complaint that nobody made is evidence too, but not an
   * answer.
   */
  private static boolean said(Learn learn) {
    return learn.event() > 0 || learn.words().equals(Check.SAID);
  }

  /**
   * Whether a rare cause explains the answers: its probability rose by at least as many bits as the
   * answers conflict.
   */
  private boolean explained(Conflict conflict, Standing now) {
    double[] outset = standings.get(0).chances();
    List<String> causes = now.belief().model().causes();
    return IntStream.range(0, outset.length)
        .filter(c -> now.chances()[c] >= 0.5 && !causes.get(c).equals(Cause.NOT_IN_RULE_BASE))
        .anyMatch(c -> Conflicts.bits(now.chances()[c], outset[c]) >= conflict.bits());
  }

  private static void truncate(List<?> list, int size) {
    list.subList(size, list.size()).clear();
  }

  private List<Deed> deeds(CaseState state, Judgement judgement) {
    List<Deed> all = new ArrayList<>();
    List<Finding> findings = judgement.findings();
    findings.stream().filter(f -> f.event() == 0).map(Learn::new).forEach(all::add);
    Stream<long[]> told =
        findings.stream().filter(f -> f.event() > 0).map(f -> new long[] {f.event(), 0});
    Stream<long[]> done = state.work().deeds().stream().map(d -> new long[] {d.number(), 1});
    for (long[] at :
        Stream.concat(told, done).sorted((a, b) -> Long.compare(a[0], b[0])).toList()) {
      if (at[1] == 0) {
        all.add(new Learn(judgement.finding(at[0]).orElseThrow()));
      } else {
        state.work().deeds().stream()
            .filter(d -> d.number() == at[0])
            .map(this::deed)
            .forEach(all::add);
      }
    }
    return all;
  }

  private Deed deed(Entry entry) {
    return entry.event() instanceof Event.Repaired r
        ? new Mend(entry.number(), r.repair())
        : new Try(entry.number(), (Event.Retested) entry.event());
  }

  private Belief apply(Belief belief, Deed deed) {
    if (deed instanceof Mend mend) {
      return belief.repaired(base.repairs().get(mend.repair()).removes());
    }
    Event.Retested tried = ((Try) deed).tried();
    Belief after = belief.retested(retest(tried), retestFails);
    for (String complaint : tried.anew()) {
      Check check = base.checks().get(complaint);
      after =
          after.learn(
              Observation.of(complaint, check.indexOf(Check.SAID), check.outcomes().size()));
    }
    return after;
  }

  private Retest retest(Event.Retested tried) {
    List<Observation> told = complaints();
    if (tried.cured() || told.isEmpty()) {
      return Retest.of(tried.cured() ? Retest.How.RAN : Retest.How.FAILED, told);
    }
    if (!tried.left().isEmpty()) {
      return new Retest(
          Retest.How.SHOWED,
          told,
          told.stream().map(o -> tried.left().contains(o.check())).toList());
    }
    return tried
        .same()
        .map(same -> same ? Retest.same(told) : Retest.of(Retest.How.OTHERWISE, told))
        .orElse(Retest.of(Retest.How.FAILED, told));
  }

  /** Complaints that were made and had not gone when the gate was last tried. */
  private List<Observation> complaints() {
    return deeds.stream()
        .filter(d -> d instanceof Learn learn && learn.event() == 0 && said(learn))
        .map(d -> observation((Learn) d))
        .filter(o -> deeds.stream().noneMatch(d -> d instanceof Try t && isGone(o.check(), t)))
        .toList();
  }

  private static boolean isGone(String complaint, Try t) {
    return !t.tried().left().isEmpty() && !t.tried().left().contains(complaint);
  }

  private Observation observation(Learn learn) {
    return Observed.of(learn.finding(), base.checks().get(learn.check()));
  }

  private Trail trail() {
    List<Trail.Move> moves = new ArrayList<>();
    for (int i = 0; i < deeds.size(); i++) {
      moves.add(move(deeds.get(i), standings.get(i).chances(), standings.get(i + 1).chances()));
    }
    return new Trail(standings.get(0).chances(), List.copyOf(moves));
  }

  private Trail.Move move(Deed deed, double[] before, double[] after) {
    if (deed instanceof Learn learn) {
      Check check = base.checks().get(learn.check());
      return new Trail.Move(
          learn.event(),
          learn.check(),
          learn.words(),
          learn.finding().also(),
          learn.finding().reason().words(),
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
        "the gate " + tried.tried().words(),
        "whether a repair helped shows what was wrong",
        "the repair's card",
        before,
        after);
  }
}
