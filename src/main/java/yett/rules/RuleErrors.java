package yett.rules;

import java.util.List;
import java.util.stream.Collectors;
import yett.knowledge.Problem;

/** Rules that cannot be compiled. */
public final class RuleErrors extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient List<Problem> problems;

  RuleErrors(List<Problem> problems) {
    super(
        "the rules cannot be compiled:\n"
            + problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** Every problem, with file and line if known. */
  public List<Problem> problems() {
    return problems;
  }
}
