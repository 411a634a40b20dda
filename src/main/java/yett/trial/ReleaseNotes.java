package yett.trial;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import yett.knowledge.RuleBase;
import yett.record.Markdown;

/**
 * Writes what is new in a version of a rule base or add-on, from the result of a comparison, as
 * Markdown.
 */
public final class ReleaseNotes {
  private final Comparison comparison;
  private final Markdown notes = new Markdown();

  private ReleaseNotes(Comparison comparison) {
    this.comparison = comparison;
  }

  /**
   * @param costs the new cards because of which cases went wrong
   */
  public static String of(
      Comparison comparison, List<String> costs, RuleBase before, RuleBase now) {
    return new ReleaseNotes(comparison).write(costs, before, now);
  }

  private String write(List<String> costs, RuleBase before, RuleBase now) {
    notes.title("What is new in " + name(now));
    notes.paragraph("Compared with " + name(before) + ".");
    ChangedCards cards = new ChangedCards(before, now);
    section("Added", cards.added());
    section("Changed", cards.altered());
    section("Removed", cards.gone());
    section("Switched off", cards.switchedOff());
    section("No longer switched off", cards.switchedOn());
    notes.heading("What it does to the cases");
    int looked = comparison.first().cases() + comparison.untouched();
    notes.paragraph(
        String.format(
            Locale.ROOT,
            "Of %d cases that both can run, %d are right now that were not, %d are no longer right,"
                + " and %d come out as before in another way.",
            looked,
            count(d -> d.turn() == Difference.Turn.BETTER),
            count(d -> d.turn() == Difference.Turn.WORSE),
            count(d -> d.turn() == Difference.Turn.NONE && !d.slight())));
    comparison.sums().forEach(notes::item);
    cases("Right now", d -> d.turn() == Difference.Turn.BETTER);
    cases("No longer right", d -> d.turn() == Difference.Turn.WORSE);
    costs.forEach(notes::item);
    if (!comparison.alone().isEmpty()) {
      section("Cases that only one of the two has", comparison.alone());
    }
    return notes.toString();
  }

  private static String name(RuleBase base) {
    String content = "content " + base.fingerprint().substring(0, 12);
    return base.versions().isEmpty()
        ? "a rule base without a version (" + content + ")"
        : String.join(", ", base.versions()) + " (" + content + ")";
  }

  private long count(Predicate<Difference> which) {
    return comparison.differences().stream().filter(which).count();
  }

  private void section(String heading, List<String> items) {
    if (!items.isEmpty()) {
      notes.heading(heading);
      items.forEach(notes::item);
    }
  }

  private void cases(String heading, Predicate<Difference> which) {
    section(
        heading, comparison.differences().stream().filter(which).map(Difference::name).toList());
  }
}
