package yett.benchmark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import yett.belief.Belief;
import yett.belief.Observation;
import yett.interview.state.CaseState;
import yett.interview.event.Entry;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;

/**
 * How the work grows with the rule base: listing the sets, weighing an answer, choosing the next
 * step, from an answer to the next question, and a whole case.
 *
 * <pre>{@code
 * mvn -q -Pbenchmark -DskipTests package exec:exec@benchmark
 * }</pre>
 */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@BenchmarkMode(Mode.SampleTime)
@Warmup(iterations = 1, time = 8)
@Measurement(iterations = 1, time = 10)
@Fork(1)
public class Growth {
  private static final int CASES = 5;

  @Param({"60", "200", "600", "2000"})
  public int causes;

  private Expertise expertise;
  private List<List<Entry>> cases;
  private List<Moment> moments;
  private List<Set<String>> open;
  private Interview interview;
  private int which;
  private int answered;
  private int moment;

  @Setup
  public void invent() {
    RuleBase base = InventedRuleBase.of(causes, 1);
    expertise = Expertise.of(base, Path.of("target", "benchmark-rules"));
    cases = new ArrayList<>();
    for (long seed = 1; seed <= CASES; seed++) {
      cases.add(new InventedCase(expertise, seed).play());
    }
    moments = new ArrayList<>();
    try (Interview first = expertise.newInterview()) {
      for (int at = 4; at <= cases.get(0).size(); at++) {
        moments.add(first.at(cases.get(0).subList(0, at)));
      }
    }
    open = moments.stream().map(this::open).toList();
    Belief start = Belief.atReport(expertise.model());
    System.out.printf(
        "%d causes: %d sets listed, %.3f of the chance left out; events a case: %s%n",
        causes, start.hypotheses(), start.neglected(), cases.stream().map(List::size).toList());
    interview = expertise.newInterview();
    which = 0;
    answered = 3;
  }

  private Set<String> open(Moment now) {
    Set<String> open = new HashSet<>(expertise.base().checks().keySet());
    expertise.base().complaints().forEach(c -> open.remove(c.id()));
    now.state().answers().forEach(a -> open.remove(a.check()));
    return open;
  }

  /** The next event of a case; after its end the next case begins. */
  @Setup(Level.Invocation)
  public void event() {
    answered++;
    if (answered > cases.get(which).size()) {
      which = (which + 1) % cases.size();
      answered = 4;
      interview.close();
      interview = expertise.newInterview();
      interview.at(cases.get(which).subList(0, 3));
    }
    moment = (moment + 1) % moments.size();
  }

  @Benchmark
  public Belief list() {
    return Belief.atReport(expertise.model());
  }

  @Benchmark
  public Belief learn() {
    int check = (moment * 7) % (2 * causes);
    while (!open.get(moment).contains("check-" + check)) {
      check = (check + 1) % (2 * causes); // one that has been answered has no other answer now
    }
    String id = "check-" + check;
    int outcomes = expertise.model().table(id).outcomes();
    return moments.get(moment).belief().learn(Observation.of(id, moment % outcomes, outcomes));
  }

  @Benchmark
  public Advice choose() {
    Moment now = moments.get(moment);
    CaseState state = now.state();
    return expertise
        .planner()
        .advise(
            now.belief(),
            new Planner.Options(
                open.get(moment),
                expertise.base().repairs().keySet(),
                state.work().setUps(),
                state.work().cured()));
  }

  @Benchmark
  public Moment next() {
    return interview.at(cases.get(which).subList(0, answered));
  }

  /** A recorded case from the first question to the last, as a replay goes through it. */
  @Benchmark
  public Moment replay() {
    List<Entry> events = cases.get(which);
    try (Interview again = expertise.newInterview()) {
      Moment last = null;
      for (int at = 1; at <= events.size(); at++) {
        last = again.at(events.subList(0, at));
      }
      return last;
    }
  }
}
