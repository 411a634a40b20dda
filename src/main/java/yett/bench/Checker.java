package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.RuleBaseFiles;
import yett.rules.DecisionTables;

/**
 * Finds everything that is wrong with a rule base: its cards, the names in its rules, and the cases
 * next to them. When it is used again after a change, it checks only what the change can affect.
 */
public final class Checker {
  private static final Comparator<Problem> BY_PLACE =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column);

  private final RuleBaseFiles cards = new RuleBaseFiles();
  private final CaseFiles cases = new CaseFiles();
  private final Function<RuleBase, List<Problem>> compiler;

  /** Without a compiler, only the names in the rules are checked. */
  public Checker() {
    this(base -> List.of());
  }

  /**
   * @param compiler finds what is wrong with the rules of a rule base whose cards are valid
   */
  public Checker(Function<RuleBase, List<Problem>> compiler) {
    this.compiler = compiler;
  }

  /**
   * Checks a rule base.
   *
   * @param files contents by path
   */
  public Checked check(SortedMap<String, String> files) {
    RuleBaseFiles.Look look = cards.look(files);
    List<Problem> problems = new ArrayList<>(look.problems());
    int count = 0;
    if (look.whole()) {
      problems.addAll(RuleNames.problems(look.base()));
      problems.addAll(DecisionTables.problems(look.base()));
      problems.addAll(compiler.apply(look.base()));
      count = cases.check(files, look.base(), problems);
    }
    return new Checked(look.base(), ordered(problems), count);
  }

  private static List<Problem> ordered(List<Problem> problems) {
    return problems.stream().distinct().sorted(BY_PLACE).toList();
  }

  /** The text of the line in which a problem is, if it is known. */
  public static Optional<String> line(Problem problem, Map<String, String> files) {
    String text = files.get(problem.file());
    return text == null || problem.line() < 1
        ? Optional.empty()
        : text.lines().skip(problem.line() - 1L).findFirst();
  }
}
