package yett.knowledge;

import java.util.List;
import java.util.stream.Collectors;

/** A rule base that cannot be used, with every problem found in it. */
public final class KnowledgeException extends RuntimeException {
  private final transient List<Problem> problems;

  public KnowledgeException(List<Problem> problems) {
    this(problems, "the rule base");
  }

  /**
   * @param what has the problems, if it is not the rule base
   */
  KnowledgeException(List<Problem> problems, String what) {
    super(
        problems.size()
            + (problems.size() == 1 ? " problem" : " problems")
            + " in "
            + what
            + ":\n"
            + problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<Problem> problems() {
    return problems;
  }
}
