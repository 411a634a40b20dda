package yett.command.calculate;

import java.util.List;
import java.util.Optional;
import yett.command.common.UsageException;

/**
 * A calculation that was not worked out; the message says it for people, the problems one by one
 * for other programs.
 */
public final class CalculationRefused extends UsageException {
  private final transient Optional<String> calculation;
  private final transient List<Problem> problems;

  /**
   * One thing that is wrong.
   *
   * @param input the input that it is about; empty for all together, or for the calculation
   */
  public record Problem(Optional<String> input, String text) {}

  public CalculationRefused(Optional<String> calculation, String message, List<Problem> problems) {
    super(message);
    this.calculation = calculation;
    this.problems = List.copyOf(problems);
  }

  /** A refusal with one thing wrong that no single input is to blame for. */
  public static CalculationRefused whole(Optional<String> calculation, String message) {
    return new CalculationRefused(
        calculation, message, List.of(new Problem(Optional.empty(), message)));
  }

  /** Empty if none was named that there is. */
  public Optional<String> calculation() {
    return calculation;
  }

  public List<Problem> problems() {
    return problems;
  }
}
