package yett.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;

/**
 * Writes the test case for a new cause: the gate at which it was found, as far as that was told.
 */
final class FirstMet {
  static final String AFTER = "after";

  /** Looks that are likely each by itself need not go together. */
  private static final String LIKELIEST =
      "# Each look as it is likeliest by itself; take out what was not so at this gate.\n";

  private FirstMet() {}

  /**
   * @param asked checks about which the author was asked what the cause shows
   */
  static String card(
      Map<String, String> answers, SignsByEffects implied, List<Check> asked, String repair) {
    CardLines text =
        new CardLines()
            .line("case", answers.get("id") + "-first-met")
            .words("story", answers.get("story"))
            .line("person", "technician")
            .raw(OnlyIf.site(answers.getOrDefault(OnlyIf.KEY, "")))
            .ids("complaints", complaints(answers, implied))
            .ids("history", List.copyOf(RowAnswer.parts(answers.get(AFTER)).keySet()));
    Map<String, String> found = new LinkedHashMap<>(implied.telling());
    for (Check check : asked) {
      String answer = answers.getOrDefault(check.id(), "");
      if (!answer.isBlank() && check.kind() == Check.Kind.CHECK) {
        found.put(check.id(), RowAnswer.likeliest(answer));
      }
    }
    StringBuilder shown = new StringBuilder();
    found.forEach((check, outcome) -> shown.append("  " + check + ": " + outcome + "\n"));
    return text.raw(implied.telling().isEmpty() ? "" : LIKELIEST)
        .raw(shown.isEmpty() ? "" : "answers:\n" + shown)
        .line("others", "usual")
        .ids("truth", List.of(answers.get("id")))
        .ids("repairs", List.of(repair))
        .toString();
  }

  /**
   * The complaints that the author named as likely. Only if there are none, the most likely ones by
   * the effects: people who call seldom say all that they could.
   */
  private static List<String> complaints(Map<String, String> answers, SignsByEffects implied) {
    List<String> said = RowAnswer.likely(answers.get("complaints"));
    return said.isEmpty() ? implied.complaints(true) : said;
  }
}
