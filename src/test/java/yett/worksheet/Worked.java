package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import yett.worksheet.catalogue.Catalogue;

/** A calculation filled in and worked out, for tests of what it tells. */
public final class Worked {
  private final Solution solution;

  private Worked(Solution solution) {
    this.solution = solution;
  }

  /**
   * Works a calculation out.
   *
   * @param inputs as typed, {@code "length=50 ft"}
   */
  public static Worked out(String calculation, String... inputs) {
    Filling filling = new Filling(Catalogue.named(calculation).orElseThrow());
    for (String input : inputs) {
      String[] parts = input.split("=", 2);
      filling.add(parts[0], parts[1]);
    }
    return new Worked(filling.solve());
  }

  public Solution solution() {
    return solution;
  }

  /** The result of that id in its metric unit, as four significant digits tell it. */
  public Worked gives(String id, double expected) {
    return gives(id, expected, Math.abs(expected) * 6e-4);
  }

  public Worked gives(String id, double expected, double tolerance) {
    Solution.Line line = solution.line(id);
    assertThat(line.output().unit().orElseThrow().fromCanonical(line.value().orElseThrow()))
        .as(id)
        .isCloseTo(expected, within(tolerance));
    return this;
  }

  /** The standard uncertainty of that result in its metric unit. */
  public Worked isUncertainBy(String id, double expected) {
    Solution.Line line = solution.line(id);
    assertThat(
            line.standardUncertainty().orElseThrow()
                / line.output().unit().orElseThrow().differenceToCanonical(1))
        .as("u of " + id)
        .isCloseTo(expected, within(expected * 6e-3));
    return this;
  }

  public Worked says(String id, String text) {
    assertThat(solution.line(id).text()).isEqualTo(text);
    return this;
  }

  /** Parts of what it means at the gate. */
  public Worked means(String... parts) {
    assertThat(String.join(" ", solution.meaning().sentences()).replace('\u00a0', ' '))
        .contains(parts);
    return this;
  }

  public Worked doesNotTell(String id) {
    assertThat(solution.lines().stream().map(l -> l.output().id())).doesNotContain(id);
    return this;
  }
}
