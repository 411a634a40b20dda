package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import yett.knowledge.Mentions;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteCard;
import yett.knowledge.SiteQuestion;

/**
 * Finds answers that a folder adds to a site question. Older cards that list the answers at which
 * they apply do not list the new one, so they silently leave out such gates.
 */
public final class NewChoices {
  private static final int MOST = 6;

  private final RuleBase base;

  private NewChoices(RuleBase base) {
    this.base = base;
  }

  /**
   * Remarks on what is worth a second look, in sentences.
   *
   * @param below the rule base without the folder
   */
  public static List<String> remarks(RuleBase below, RuleBase base) {
    NewChoices choices = new NewChoices(base);
    List<String> remarks = new ArrayList<>();
    for (SiteQuestion question : base.siteQuestions().values()) {
      SiteQuestion before = below.siteQuestions().get(question.id());
      if (before != null) {
        Set<String> fresh = new TreeSet<>(question.choices().keySet());
        fresh.removeAll(before.choices().keySet());
        fresh.forEach(choice -> remarks.addAll(choices.on(question.id(), choice)));
      }
    }
    return remarks;
  }

  private List<String> on(String question, String choice) {
    List<String> remarks = new ArrayList<>();
    List<String> without =
        cards(base)
            .filter(c -> lists(c, question) && !lists(c, question, choice))
            .map(NewChoices::name)
            .toList();
    boolean used =
        cards(base).anyMatch(c -> lists(c, question, choice))
            || Stream.of(base.rules(), base.tables())
                .map(Map::values)
                .flatMap(Collection::stream)
                .anyMatch(text -> Mentions.of(text, choice));
    String answer = "The answer " + choice + " of " + question;
    if (!used) {
      remarks.add(answer + " is new, and nothing depends on it yet.");
    }
    if (!without.isEmpty()) {
      remarks.add(
          answer
              + " is new; at such a gate these are left out, for they list the answers at which they"
              + " apply and it is not among them: "
              + String.join(", ", without.subList(0, Math.min(MOST, without.size())))
              + (without.size() > MOST ? " and " + (without.size() - MOST) + " more" : "")
              + ".");
    }
    return remarks;
  }

  private static Stream<SiteCard> cards(RuleBase base) {
    return Stream.<Collection<? extends SiteCard>>of(
            base.causes().values(),
            base.checks().values(),
            base.repairs().values(),
            base.siteQuestions().values())
        .flatMap(Collection::stream);
  }

  private static String name(SiteCard card) {
    return card.getClass().getSimpleName().toLowerCase(Locale.ROOT).replace("sitequestion", "site")
        + " "
        + card.id();
  }

  private static boolean lists(SiteCard card, String question) {
    return card.onlyIf().containsKey(question);
  }

  private static boolean lists(SiteCard card, String question, String choice) {
    return card.onlyIf().getOrDefault(question, List.of()).contains(choice);
  }
}
