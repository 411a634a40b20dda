package yett.worksheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A calculation that a person can ask for: what it needs, what it tells, and how that is meant. A
 * subclass declares it in its constructor; asking, reading, units, uncertainties and printing
 * follow from that. The formula itself is a class of {@code yett.calculation}, which the rules may
 * use as well.
 *
 * <pre>{@code
 * final class LeafWeight extends Worksheet {
 *   LeafWeight() {
 *     super(Subject.LEAF, "leaf-weight", "weight of the leaf");
 *     asks(reading("mass", Unit.KILOGRAM, "mass of the leaf").possible(5, 20_000));
 *     tells(number("weight", Unit.NEWTON, "weight").by(v -> v.of("mass") * Gravity.STANDARD));
 *     formula("F = m g; m mass");
 *     validity("Any leaf.");
 *     source("mechanics textbooks");
 *     says(when(v -> v.of("weight") > 9000, "It weighs {weight}: a crane."), otherwise("A jack."));
 *   }
 * }
 * }</pre>
 */
public abstract class Worksheet extends Spec {
  private final Subject subject;
  private final String id;
  private final String title;

  /**
   * @param id what people type, words with hyphens
   * @param title what it calculates, no full stop
   */
  protected Worksheet(Subject subject, String id, String title) {
    this.subject = subject;
    this.id = id;
    this.title = title;
  }

  public final Subject subject() {
    return subject;
  }

  public final String id() {
    return id;
  }

  public final String title() {
    return title;
  }

  /** The inputs in the order in which they are asked. */
  public final List<Input> inputs() {
    return inputs;
  }

  /** The results in the order in which they are shown. */
  public final List<Output> outputs() {
    return outputs;
  }

  public final String formula() {
    return formula;
  }

  public final String validity() {
    return validity;
  }

  public final String source() {
    return source;
  }

  public final Optional<String> lastWord() {
    return lastWord;
  }

  public final List<Note> notes() {
    return notes;
  }

  /**
   * All results in canonical units; NaN for one that is left out or is in words.
   *
   * @throws InputException if inputs that are possible one by one contradict each other
   * @throws IllegalArgumentException if a formula refuses a value
   */
  final double[] work(Values values) {
    for (Statement refusal : refusals) {
      if (refusal.when().test(values)) {
        throw new InputException(refusal.said(values).get(0));
      }
    }
    return outputs.stream()
        .mapToDouble(o -> values.has(o.id()) ? values.canonical(o.id()) : Double.NaN)
        .toArray();
  }

  /** Remarks where these inputs together are outside the range of the formula; sentences. */
  final Stream<String> remarks(Values values) {
    return remarks.stream()
        .filter(remark -> remark.when().test(values))
        .flatMap(remark -> remark.said(values).stream());
  }

  /** The meaning of these results, whose uncertainties are already known. */
  final Meaning meaning(Values values) {
    List<Statement> said =
        says.stream()
            .flatMap(group -> group.stream().filter(say -> say.when().test(values)).limit(1))
            .toList();
    return new Meaning(
        said.stream().flatMap(say -> say.said(values).stream()).toList(),
        said.stream().flatMap(say -> say.note().stream()).toList());
  }

  @Override
  public final String toString() {
    return id;
  }
}
