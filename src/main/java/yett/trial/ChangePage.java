package yett.trial;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.paper.Page;
import yett.replay.Score;

/** Writes a change to the rule base as a page to print, for people who have to approve it. */
public final class ChangePage {
  private final Comparison comparison;
  private final List<String> costs;
  private final ChangedCards cards;
  private final Markup page;

  private ChangePage(Comparison comparison, List<String> costs, ChangedCards cards, Markup page) {
    this.comparison = comparison;
    this.costs = costs;
    this.cards = cards;
    this.page = page;
  }

  /**
   * @param costs the new cards because of which cases went wrong
   * @param title what is compared with what
   * @param paper the word for the paper size
   */
  public static String of(
      Comparison comparison,
      List<String> costs,
      RuleBase before,
      RuleBase now,
      String title,
      String paper) {
    return Page.of(
        "A change to the rule base",
        "What a change to the rule base does to its cases",
        paper,
        page ->
            new ChangePage(comparison, costs, new ChangedCards(before, now), page)
                .write(title, before, now));
  }

  private void write(String title, RuleBase before, RuleBase now) {
    page.leaf("h1", "A change to the rule base");
    page.leaf("p", title);
    verdict();
    list("What it adds", cards.added(), "No card.");
    list("What it changes", cards.altered(), "No card.");
    if (!cards.gone().isEmpty()) {
      list("What it takes away", cards.gone(), "");
    }
    if (!cards.switchedOff().isEmpty()) {
      list("What it switches off", cards.switchedOff(), "");
    }
    if (!cards.switchedOn().isEmpty()) {
      list("What it no longer switches off", cards.switchedOn(), "");
    }
    cases("Cases that it breaks", d -> d.turn() == Difference.Turn.WORSE, "None.");
    if (!costs.isEmpty()) {
      page.leaf("h3", "The card behind it").open("ul");
      costs.forEach(c -> page.leaf("li", c));
      page.close();
    }
    cases("Cases that it mends", d -> d.turn() == Difference.Turn.BETTER, "None.");
    cases(
        "Cases that it moves, as right or wrong as before",
        d -> d.turn() == Difference.Turn.NONE && !d.slight(),
        "None.");
    sums();
    agreed();
    page.leaf(
        "p",
        "First rule base " + before.fingerprint() + ", second " + now.fingerprint() + ".",
        "class",
        "note");
  }

  private void verdict() {
    int broken = count(Difference.Turn.WORSE);
    int mended = count(Difference.Turn.BETTER);
    page.leaf(
        "p",
        String.format(
            Locale.ROOT,
            "It breaks %s and mends %s of %d cases that were looked at.",
            broken == 0 ? "none" : broken,
            mended == 0 ? "none" : mended,
            comparison.first().cases() + comparison.untouched()),
        "class",
        broken == 0 ? "state" : "state stop");
  }

  private int count(Difference.Turn turn) {
    return (int) comparison.differences().stream().filter(d -> d.turn() == turn).count();
  }

  private void list(String heading, List<String> all, String none) {
    page.leaf("h2", heading);
    if (all.isEmpty()) {
      page.leaf("p", none);
      return;
    }
    page.open("ul");
    all.forEach(words -> page.leaf("li", words));
    page.close();
  }

  private void cases(String heading, Predicate<Difference> which, String none) {
    List<Difference> some = comparison.differences().stream().filter(which).toList();
    page.leaf("h2", heading + (some.isEmpty() ? "" : " (" + some.size() + ")"));
    if (some.isEmpty()) {
      page.leaf("p", none);
    }
    for (Difference difference : some) {
      page.leaf("h3", difference.name()).open("ul");
      difference.words().forEach(words -> page.leaf("li", words));
      page.close();
    }
  }

  private void sums() {
    page.leaf("h2", "All cases of both");
    page.open("table", "class", "facts").open("tbody");
    row("First", comparison.first());
    row("Second", comparison.second());
    for (String sum : comparison.sums()) {
      String[] parts = sum.split(": ", 2);
      page.fact(parts[0], parts[1]);
    }
    long slight = comparison.differences().stream().filter(Difference::slight).count();
    page.fact("Only a chance moved, by less than 5 points", slight + " cases");
    comparison.notReplayed().ifPresent(words -> page.fact("Not replayed", words));
    page.close().close();
    if (!comparison.alone().isEmpty()) {
      page.leaf("p", "Not compared: " + String.join(", ", comparison.alone()) + ".");
    }
  }

  private void row(String name, Score score) {
    page.fact(name, score.words());
  }

  private void agreed() {
    page.open("table", "class", "signatures").open("tbody").open("tr");
    for (String who : List.of("Proposed by, date", "Agreed by, date")) {
      page.open("td").open("div", "class", "line").text("").close().text(who).close();
    }
    page.close().close().close();
  }
}
