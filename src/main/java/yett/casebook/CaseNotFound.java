package yett.casebook;

import java.util.List;
import java.util.stream.Collectors;

/** The typed text names no case, or several. */
public final class CaseNotFound extends CasebookException {
  private final transient List<CaseId> candidates;

  private CaseNotFound(String message, List<CaseId> candidates) {
    super(message);
    this.candidates = List.copyOf(candidates);
  }

  static CaseNotFound none(String typed, List<CaseId> nearest) {
    return new CaseNotFound(
        "There is no case \""
            + typed
            + "\". "
            + (nearest.isEmpty()
                ? "The casebook is empty: open a case first."
                : "The nearest: " + listed(nearest) + "."),
        nearest);
  }

  static CaseNotFound several(String typed, List<CaseId> meant) {
    int shown = Math.min(meant.size(), 6);
    return new CaseNotFound(
        "\""
            + typed
            + "\" could be "
            + listed(meant.subList(0, shown))
            + (shown < meant.size() ? " or " + (meant.size() - shown) + " more" : "")
            + ". Write more of it.",
        meant);
  }

  /** The cases that may be meant, or the nearest ones; empty if there are no cases. */
  public List<CaseId> candidates() {
    return candidates;
  }

  private static String listed(List<CaseId> ids) {
    return ids.stream().map(CaseId::toString).collect(Collectors.joining(", "));
  }
}
