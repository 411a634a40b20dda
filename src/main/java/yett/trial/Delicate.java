package yett.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import yett.belief.Sensitivity.Entry;
import yett.interview.course.Expertise;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;

/**
 * A number in a likelihood row on which the conclusions of cases depend.
 *
 * @param cause whose row; empty for "otherwise"
 * @param cases in how many it matters at all
 * @param sum over all cases of the decibans, without sign, by which the right cause moves for each
 *     deciban on the number
 * @param most the largest of them in one case
 * @param mostIn name of that case
 * @param turns names of the cases in which half or twice the odds of this number would put another
 *     cause first, estimated from the slope
 */
public record Delicate(
    String check,
    String cause,
    String outcome,
    int cases,
    double sum,
    double most,
    String mostIn,
    List<String> turns) {

  /** A smaller slope does not matter. */
  private static final double LEAST = 0.05;

  /**
   * Cases that were run, without their moments, and the numbers on which they depend, the most
   * important first.
   */
  public record Study(List<Replayed> replayed, List<Delicate> numbers) {}

  private record Studied(Replayed replayed, Diagnosis diagnosis) {}

  /**
   * Runs the cases and adds up what their conclusions depend on.
   *
   * @param progress called after each case
   */
  public static Study among(
      Expertise expertise, Collection<RecordedCase> cases, Runnable progress) {
    Replayer replayer = new Replayer(expertise).withoutBeliefs();
    List<Callable<Studied>> tasks = new ArrayList<>();
    cases.forEach(c -> tasks.add(() -> study(expertise, replayer, c)));
    List<Replayed> replayed = new ArrayList<>();
    List<Diagnosis> diagnoses = new ArrayList<>();
    InOrder.run(
        tasks,
        InOrder.threads(),
        studied -> {
          replayed.add(studied.replayed());
          diagnoses.add(studied.diagnosis());
          progress.run();
        });
    return new Study(List.copyOf(replayed), sums(expertise, diagnoses));
  }

  private static Studied study(Expertise expertise, Replayer replayer, RecordedCase recorded) {
    Replayed replayed = replayer.run(recorded);
    Set<String> right = new LinkedHashSet<>();
    recorded.truth().ifPresent(right::addAll);
    recorded.expect().ifPresent(right::add);
    boolean judged = recorded.stop().isEmpty(); // a case that ends with a stop has no diagnosis
    Diagnosis diagnosis = Diagnosis.of(expertise, replayed, judged ? right : Set.of());
    return new Studied(replayed.withoutMoment(), diagnosis);
  }

  private static List<Delicate> sums(Expertise expertise, List<Diagnosis> diagnoses) {
    Map<Entry, Sum> sums = new HashMap<>();
    for (Diagnosis diagnosis : diagnoses) {
      diagnosis
          .slopes()
          .forEach(
              (entry, slope) ->
                  sums.computeIfAbsent(entry, e -> new Sum())
                      .add(diagnosis.name(), slope, diagnosis.turns().contains(entry)));
    }
    return sums.entrySet().stream()
        .filter(e -> e.getValue().cases > 0 && !followsFromOther(e.getKey(), expertise))
        .map(e -> e.getValue().of(e.getKey(), expertise))
        .sorted(
            Comparator.comparingDouble((Delicate d) -> -d.sum())
                .thenComparing(Delicate::check)
                .thenComparing(Delicate::cause)
                .thenComparing(Delicate::outcome))
        .toList();
  }

  /**
   * Whether the number follows from another one; in a row of two numbers the first follows from the
   * second.
   */
  private static boolean followsFromOther(Entry entry, Expertise expertise) {
    int outcomes = expertise.base().checks().get(entry.check()).outcomes().size();
    return outcomes == 2 && entry.outcome() == 0;
  }

  private static final class Sum {
    private final List<String> turns = new ArrayList<>();
    private int cases;
    private double sum;
    private double most;
    private String mostIn = "";

    void add(String name, double slope, boolean turn) {
      if (turn) {
        turns.add(name);
      }
      if (slope < LEAST && !turn) {
        return;
      }
      cases++;
      sum += slope;
      if (slope > most) {
        most = slope;
        mostIn = name;
      }
    }

    Delicate of(Entry entry, Expertise expertise) {
      String outcome =
          expertise.base().checks().get(entry.check()).outcomes().get(entry.outcome()).id();
      return new Delicate(
          entry.check(), entry.cause(), outcome, cases, sum, most, mostIn, List.copyOf(turns));
    }
  }
}
