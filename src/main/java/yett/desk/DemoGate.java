package yett.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Repair;
import yett.quantity.Quantity;
import yett.rules.Interpretation;

/** An invented gate with nothing or one thing wrong, which answers what a check finds there. */
final class DemoGate {
  private final Random random;
  private final Optional<String> cause;
  private final Set<String> dirty;
  private final double age;
  private boolean mended;

  /**
   * @param cause id of what is wrong; empty for nothing
   * @param dirty outcomes that looks find wherever they have them, as check and outcome
   * @param age how far each reading has moved towards the end of its ordinary range, 0 to 2
   */
  DemoGate(Random random, Optional<String> cause, Set<String> dirty, double age) {
    this.random = random;
    this.cause = cause;
    this.dirty = dirty;
    this.age = age;
  }

  /** What somebody finds who makes this check. */
  Event answer(Step.Ask step) {
    Check check = step.check();
    int outcome = outcome(check);
    return check.measured() ? read(step, outcome) : chosen(check, outcome);
  }

  /** The ordinary outcome of a check. */
  Event ordinary(Check check) {
    return chosen(check, 0);
  }

  void mend(Repair repair) {
    mended |= cause.filter(repair.removes()::containsKey).isPresent();
  }

  boolean isInOrder() {
    return mended || cause.isEmpty();
  }

  /** The complaints that are most frequent with this cause; none for a gate in order. */
  List<String> complaints(List<Check> all) {
    List<Check> likely =
        all.stream().sorted(Comparator.comparingDouble((Check c) -> -said(c))).limit(2).toList();
    return likely.stream().filter(c -> c == likely.get(0) || said(c) > 0.5).map(Check::id).toList();
  }

  private double said(Check complaint) {
    return cause
        .map(complaint.likelihood()::get)
        .map(row -> row[complaint.indexOf(Check.SAID)])
        .orElse(0.0);
  }

  private int outcome(Check check) {
    int seen =
        IntStream.range(1, check.outcomes().size())
            .filter(o -> dirty.contains(check.id() + " " + check.outcomes().get(o).id()))
            .findFirst()
            .orElse(0);
    double[] row = mended ? null : cause.map(check.likelihood()::get).orElse(null);
    return row == null
        ? seen
        : IntStream.range(0, row.length)
            .boxed()
            .max(Comparator.comparingDouble(o -> row[o]))
            .orElse(seen);
  }

  private static Event chosen(Check check, int outcome) {
    return new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(outcome).id()));
  }

  private Event read(Step.Ask step, int outcome) {
    Check check = step.check();
    Measures measures = check.measures().orElseThrow();
    if (Interpretation.relative(check) && step.expectation().isEmpty()) {
      return new Event.Answered(check.id(), new Answer.CannotTell());
    }
    double[] ends =
        outcome == 0 && step.expectation().isPresent()
            ? new double[] {step.expectation().get().low(), step.expectation().get().high()}
            : Interpretation.range(check, outcome, step.expectation());
    double low = Double.isFinite(ends[0]) ? ends[0] : Math.max(measures.least(), ends[1] * 0.9);
    double high = Double.isFinite(ends[1]) ? ends[1] : Math.min(measures.most(), low * 1.2 + 1);
    double moved = Math.min(0.9, 0.3 + 0.3 * age + 0.1 * random.nextDouble());
    boolean falls = measures.quantity() == Quantity.VOLTAGE; // batteries lose it, the rest wears
    double share = falls ? 1 - moved : moved;
    String typed = measures.showRounded(low + share * (high - low));
    return new Event.Answered(check.id(), new Answer.Read(typed, measures.parse(typed)));
  }
}
