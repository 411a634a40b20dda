package yett.interview.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import yett.belief.LastFew;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.quantity.ReadingException;
import yett.rules.Fact;

/** The site as the rules see it: the answers, and the usual value where there is none. */
public final class SiteFacts {
  private final RuleBase base;

  /** Parsed answers by question and answer, so that a reading is not parsed at every step. */
  private final Map<List<String>, Fact.Site> read = new ConcurrentHashMap<>();

  /** The last result, kept because most steps do not change the site. */
  private final LastFew<Map<String, String>, Map<String, String>> last = new LastFew<>(1);

  public SiteFacts(RuleBase base) {
    this.base = base;
  }

  /** Questions that apply, given the answers so far, in the order of the cards. */
  public List<SiteQuestion> questions(Map<String, String> answers) {
    Map<String, String> all = answers(answers);
    return base.siteQuestions().values().stream().filter(q -> all.containsKey(q.id())).toList();
  }

  /** The gate with these answers, and the usual value where there is none. */
  public Site site(Map<String, String> answers) {
    return new Site(answers(answers));
  }

  /** The answer to every question that applies: a choice's id, or a reading as typed. */
  public Map<String, String> answers(Map<String, String> answers) {
    return last.get(Map.copyOf(answers), a -> Collections.unmodifiableMap(filled(a)));
  }

  private Map<String, String> filled(Map<String, String> answers) {
    Map<String, String> all = new LinkedHashMap<>();
    Site site = new Site(all);
    for (SiteQuestion question : base.siteQuestions().values()) {
      String answer = answers.get(question.id());
      all.put(question.id(), canBe(question, answer) ? answer : question.usual());
    }
    for (SiteQuestion question : base.siteQuestions().values()) {
      if (question.follows().isPresent() && !canBe(question, answers.get(question.id()))) {
        String other = question.follows().get();
        all.put(question.id(), question.usualWith(base.siteQuestions().get(other), all.get(other)));
      }
    }
    for (SiteQuestion question : base.siteQuestions().values()) {
      if (!site.allows(question)) {
        all.remove(question.id());
      }
    }
    return all;
  }

  /** The usual answer at a gate with these answers: a choice's id, or a reading. */
  public String usual(SiteQuestion question, Map<String, String> told) {
    Map<String, String> others = new LinkedHashMap<>(told);
    others.remove(question.id());
    return answers(others).getOrDefault(question.id(), question.usual());
  }

  /**
   * Whether this is a valid answer to the question. An invalid one in a case (edited by hand, or
   * the card has changed) counts as not given.
   */
  public static boolean canBe(SiteQuestion question, String answer) {
    if (answer == null || question.measures().isEmpty()) {
      return answer != null && question.choices().containsKey(answer);
    }
    if (answer.equals(question.usual())) {
      return true;
    }
    try {
      Measures measures = question.measures().get();
      return measures.possible(measures.parse(answer));
    } catch (ReadingException e) {
      return false;
    }
  }

  /** The answers, changed where they exclude a card with these conditions. */
  public Map<String, String> allowing(
      Map<String, List<String>> onlyIf, Map<String, String> answers) {
    Map<String, String> site = new LinkedHashMap<>(answers);
    allow(onlyIf, site);
    return site;
  }

  private void allow(Map<String, List<String>> onlyIf, Map<String, String> site) {
    onlyIf.forEach(
        (question, allowed) -> {
          SiteQuestion card = base.siteQuestions().get(question);
          if (!allowed.contains(site.getOrDefault(question, card.usual()))) {
            site.put(question, allowed.get(0));
          }
          allow(card.onlyIf(), site);
        });
  }

  /** What can have happened at a gate with these answers. */
  public List<History> histories(Map<String, String> answers) {
    return base.histories().values().stream().filter(site(answers)::allows).toList();
  }

  /** Proofs that a gate with these answers needs before it returns to service, whoever is there. */
  public List<Check> proofs(Map<String, String> answers) {
    return base.proofs().stream().filter(site(answers)::allows).toList();
  }

  /** The facts about a gate with these answers, for the rules. */
  public List<Fact.Site> facts(Map<String, String> answers) {
    List<Fact.Site> facts = new ArrayList<>();
    answers(answers)
        .forEach(
            (id, answer) ->
                facts.add(read.computeIfAbsent(List.of(id, answer), known -> fact(id, answer))));
    return facts;
  }

  private Fact.Site fact(String id, String answer) {
    return base.siteQuestions()
        .get(id)
        .measures()
        .map(measures -> Fact.Site.measured(id, measures.parse(answer)))
        .orElseGet(() -> Fact.Site.chosen(id, answer));
  }
}
