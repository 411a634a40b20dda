package yett.command.calculate;

import java.util.List;
import java.util.Optional;
import yett.command.common.UsageException;

/**
 * A calculation could not be done. The message is for people; the list of problems is for other
 * programs.
 */
public final class CalculationRefused extends UsageException {
  private final transient Optional<String> calculation;
  private final transient List<Problem> problems;

  /**
   * One problem.
   *
   * @param input the input concerned; empty if it concerns several or the calculation itself
   */
  public record Problem(Optional<String> input, String text) {}

  public CalculationRefused(Optional<String> calculation, String message, List<Problem> problems) {
    super(message);
    this.calculation = calculation;
    this.problems = List.copyOf(problems);
  }

  /** A refusal with one problem that does not belong to a single input. */
  public static CalculationRefused whole(Optional<String> calculation, String message) {
    return new CalculationRefused(
        calculation, message, List.of(new Problem(Optional.empty(), message)));
  }

  /** The name of the calculation; empty if the words named none that exists. */
  public Optional<String> calculation() {
    return calculation;
  }

  public List<Problem> problems() {
    return problems;
  }
}
