package yett.record.handout;

import java.util.Optional;
import yett.paper.Markup;

/** Tables that both pages have. */
final class Tables {
  private Tables() {}

  /**
   * Writes the readings under their heading, each with its range, its verdict and the number of its
   * place; nothing if there are none.
   */
  static void measured(Markup page, Findings findings) {
    if (findings.readings().isEmpty()) {
      return;
    }
    page.leaf("h2", "What was measured");
    page.open("table").open("thead").open("tr");
    head(page, "No.", "number");
    head(page, "Measured", "");
    head(page, "As found", "short");
    head(page, "As left", "short");
    head(page, "Usual here", "short");
    boolean compared = findings.readings().stream().anyMatch(r -> !r.baseline().isEmpty());
    if (compared) {
      head(page, "When in order", "short");
    }
    head(page, "Verdict", "short");
    page.close().close().open("tbody");
    for (Measured row : findings.readings()) {
      page.open("tr");
      page.leaf("td", findings.spots().number(row.spot()).map(String::valueOf).orElse(""));
      page.leaf("td", row.asked());
      page.leaf("td", unbroken(row.found()));
      page.leaf("td", unbroken(row.left()));
      page.leaf("td", unbroken(row.usual()));
      if (compared) {
        page.leaf("td", unbroken(row.baseline()));
      }
      page.leaf("td", row.verdict(), "class", tone(row.fine()));
      page.close();
    }
    page.close().close();
  }

  /**
   * Puts no-break spaces between a figure and its unit and into dates, to keep them on one line.
   */
  private static String unbroken(String words) {
    return words
        .replaceAll("(?<=\\d) (?=[^\\d\\s])(?!to |on )", "\u00a0")
        .replaceAll("(?<=\\d)-(?=\\d)", "\u2011");
  }

  private static void head(Markup page, String words, String kind) {
    page.leaf("th", words, "scope", "col", "class", kind);
  }

  private static String tone(Optional<Boolean> fine) {
    return fine.map(f -> f ? "good" : "bad").orElse("");
  }
}
