package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Effect;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.wording.Wording;

/**
 * Writes the upper part of a cause's page: what it is, its effects on the machine, and what is
 * seen.
 */
record CauseOnPage(RuleBase base, Cause cause, Markup page) {
  /** How many rows fit below the facts of most causes on the first sheet. */
  private static final int MOST_DRAWN = 12;

  void write() {
    facts();
    effects();
    signs();
  }

  private void facts() {
    page.open("table", "class", "facts").open("tbody");
    fact("Name in files", cause.id());
    fact("Area", cause.area());
    fact("How often", Priors.words(cause.prior()));
    cause.onlyIf().forEach((question, answers) -> fact("Only where", where(question, answers)));
    fact("How it arises", cause.arises());
    fact("How to prevent it", cause.prevent());
    fact("Brings about", names(cause.consequences()));
    fact("If it is left", hundred(cause.retestFails()) + " such gates fail when they are tried");
    page.close().close();
  }

  private String where(String question, List<String> answers) {
    var card = base.siteQuestions().get(question);
    return card.name()
        + ": "
        + answers.stream().map(a -> Wording.site(card, a)).collect(Collectors.joining(" or "));
  }

  private String names(Map<String, Double> causes) {
    return causes.entrySet().stream()
        .map(e -> base.causes().get(e.getKey()).name() + " (" + hundred(e.getValue()) + ")")
        .collect(Collectors.joining("; "));
  }

  static String hundred(double chance) {
    return String.format(Locale.ROOT, "%.0f of a hundred", 100 * chance);
  }

  private void fact(String name, String value) {
    if (!value.isBlank()) {
      page.fact(name, value);
    }
  }

  private void effects() {
    Map<Effect, Double> all = base.effectRows().chances(cause);
    if (all.isEmpty()) {
      return;
    }
    page.leaf("h2", "How the machine behaves").open("ul");
    all.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .forEach(e -> page.leaf("li", effect(e.getKey(), e.getValue())));
    page.close();
  }

  private String effect(Effect effect, double chance) {
    return effect.name()
        + ": "
        + LikelihoodWords.nearest(chance)
        + " ("
        + hundred(chance)
        + (cause.leadsTo().containsKey(effect.id()) ? ")" : "), by way of others");
  }

  private void signs() {
    List<Sign> all = Sign.of(cause, base);
    page.leaf("h2", "Its signs");
    if (all.isEmpty()) {
      page.leaf("p", "The cards know none.");
      return;
    }
    page.open("div", "class", "drawing");
    new SignPicture(cause.name(), all.subList(0, Math.min(MOST_DRAWN, all.size()))).draw(page);
    page.leaf(
        "p",
        "A bar reaches as far as the sign is seen in a hundred such gates, the mark as far as on a"
            + " sound gate. The figure is what seeing it says for this cause against a sound gate:"
            + " 10 dB is ten times the odds."
            + (all.size() > MOST_DRAWN ? " Weaker ones are only named." : ""),
        "class",
        "note");
    page.close();
    Map<String, List<Sign>> byOrigin = new LinkedHashMap<>();
    all.forEach(s -> byOrigin.computeIfAbsent(s.origin(), o -> new ArrayList<>()).add(s));
    page.open("ul");
    byOrigin.forEach(
        (origin, signs) ->
            page.open("li")
                .leaf("strong", origin)
                .text(
                    ": "
                        + signs.stream()
                            .map(Sign::brief)
                            .distinct()
                            .collect(Collectors.joining("; ")))
                .close());
    page.close();
  }
}
