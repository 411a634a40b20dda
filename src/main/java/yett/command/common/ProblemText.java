package yett.command.common;

import java.util.Map;
import java.util.Optional;
import yett.bench.Checker;
import yett.knowledge.Problem;

/** Shows a problem of a rule base together with the line in question. */
public final class ProblemText {
  private static final int WIDTH = 96;

  private ProblemText() {}

  public static String of(Problem problem, Map<String, String> files) {
    String[] parts = problem.toString().split("\n", 2);
    Optional<String> line = Checker.line(problem, files).filter(text -> !text.isBlank());
    StringBuilder text = new StringBuilder(parts[0]);
    line.ifPresent(l -> text.append('\n').append(quoted(l, problem.column())));
    if (parts.length > 1) {
      text.append('\n').append(parts[1]);
    }
    return text.toString();
  }

  /** The line with a mark below the column; of a long line only the part around it. */
  private static String quoted(String line, int column) {
    String plain = line.replace('\t', ' ').replaceAll("\\p{Cntrl}", "?");
    int at = Math.max(0, Math.min(column - 1, plain.length() - 1));
    int from = plain.length() <= WIDTH ? 0 : Math.max(0, at - WIDTH / 2);
    int to = Math.min(plain.length(), from + WIDTH);
    String before = from > 0 ? "…" : "";
    String shown = before + plain.substring(from, to) + (to < plain.length() ? "…" : "");
    return "    " + shown + "\n    " + " ".repeat(at - from + before.length()) + "^";
  }
}
