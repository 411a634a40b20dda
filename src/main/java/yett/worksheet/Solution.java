package yett.worksheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A solved calculation.
 *
 * @param plot a drawing of the data, if there is one
 * @param remarks on inputs outside the range of the formula
 */
public record Solution(
    Worksheet sheet,
    List<Given> inputs,
    List<Line> lines,
    Optional<Plot> plot,
    List<String> remarks,
    Meaning meaning) {

  /**
   * One result.
   *
   * @param value in the canonical unit; empty for a result in words
   * @param standardUncertainty combined, in the canonical unit; empty if no input has one that
   *     matters here
   * @param text for people, without the uncertainty
   */
  public record Line(
      Output output, OptionalDouble value, OptionalDouble standardUncertainty, String text) {}

  /** The result with this id. */
  public Line line(String id) {
    return lines.stream()
        .filter(line -> line.output().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no result " + id));
  }
}
