package yett.worksheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A calculation worked out.
 *
 * @param plot a drawing of what was read, if there is one
 * @param remarks where an input leaves what the formula is good for
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
   * @param standardUncertainty combined, in the canonical unit; empty if no input carries one that
   *     matters here
   * @param text as a person reads it, without the uncertainty
   */
  public record Line(
      Output output, OptionalDouble value, OptionalDouble standardUncertainty, String text) {}

  /** The result of that id. */
  public Line line(String id) {
    return lines.stream()
        .filter(line -> line.output().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no result " + id));
  }
}
