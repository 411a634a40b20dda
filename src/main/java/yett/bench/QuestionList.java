package yett.bench;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Card;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteCard;
import yett.knowledge.SiteQuestion;
import yett.knowledge.Stop;

/**
 * Lists everything that a case file can answer, for people who write cases without seeing the rule
 * base (docs/field-set.md): ids, questions and outcomes in words, and the names of stops and
 * causes. Which cause shows what, and how often, is left out.
 */
public final class QuestionList {
  private QuestionList() {}

  /** Lines by the field of a case file to which they belong, each in the order of the cards. */
  public static Map<String, List<Candidate>> of(RuleBase base) {
    Map<String, List<Candidate>> list = new LinkedHashMap<>();
    list.put("site", list(base.siteQuestions().values(), QuestionList::site));
    list.put("complaints", list(base.complaints(), Check::ask));
    list.put("history", list(base.histories().values(), History::name));
    list.put("answers: dangers", list(checks(base, true), QuestionList::check));
    list.put("answers: checks", list(checks(base, false), QuestionList::check));
    list.put("answers: proofs", list(base.proofs(), QuestionList::check));
    list.put("stop", list(base.stops().values(), Stop::name));
    list.put("truth", list(base.causes().values(), QuestionList::cause));
    return list;
  }

  private static List<Check> checks(RuleBase base, boolean dangers) {
    return base.ordinaryChecks().filter(c -> c.danger() == dangers).toList();
  }

  private static <C extends Card> List<Candidate> list(
      Collection<C> cards, Function<C, String> words) {
    return cards.stream().map(c -> new Candidate(c.id(), words.apply(c))).toList();
  }

  private static String site(SiteQuestion question) {
    return sentences(
        question.ask(),
        question.measures().map(QuestionList::reading).orElse(choices(question.choices())),
        "Usual: " + question.usual() + ".",
        onlyIf(question));
  }

  private static String check(Check check) {
    Map<String, String> outcomes = new LinkedHashMap<>();
    check.outcomes().forEach(o -> outcomes.put(o.id(), o.text()));
    return sentences(
        check.ask(),
        check.how(),
        check.measures().map(m -> reading(m) + " Or:").orElse(""),
        choices(outcomes),
        onlyIf(check));
  }

  private static String cause(Cause cause) {
    return sentences(cause.name() + ".", cause.arises(), onlyIf(cause));
  }

  private static String reading(Measures measures) {
    return "A reading in " + measures.unitWord() + ".";
  }

  private static String choices(Map<String, String> words) {
    return words.entrySet().stream()
        .map(e -> e.getValue().isEmpty() ? e.getKey() : e.getKey() + " (" + e.getValue() + ")")
        .collect(Collectors.joining(", ", "", "."));
  }

  private static String onlyIf(SiteCard card) {
    return card.onlyIf().isEmpty()
        ? ""
        : card.onlyIf().entrySet().stream()
            .map(e -> e.getKey() + " " + String.join(" or ", e.getValue()))
            .collect(Collectors.joining(", ", "Only with ", "."));
  }

  private static String sentences(String... parts) {
    return Stream.of(parts).filter(p -> !p.isBlank()).collect(Collectors.joining(" "));
  }
}
