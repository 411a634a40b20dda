package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Card;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.History;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.SiteQuestion;

/** Lists the ids of a rule base with the words for which they stand, by kind and then by id. */
public final class Vocabulary {
  private final RuleBase base;

  public Vocabulary(RuleBase base) {
    this.base = base;
  }

  /** All of them, by the name of the kind. */
  public Map<String, List<Candidate>> all() {
    Map<String, List<Candidate>> all = new LinkedHashMap<>();
    all.put("causes", causes());
    all.put("effects", of(base.effects().values(), Effect::name));
    all.put("checks", checks());
    all.put("complaints", complaints());
    all.put("repairs", repairs());
    all.put("proofs", proofs());
    all.put("set-ups", setUps());
    all.put("hazards", hazards());
    all.put("histories", histories());
    all.put("site questions", of(base.siteQuestions().values(), SiteQuestion::ask));
    all.put("areas", areas());
    return all;
  }

  List<Candidate> causes() {
    return of(base.causes().values(), Cause::name);
  }

  List<Candidate> checks() {
    return of(base.ordinaryChecks().toList(), Check::ask);
  }

  List<Candidate> complaints() {
    return of(base.complaints(), Check::ask);
  }

  List<Candidate> proofs() {
    return of(base.proofs(), Check::ask);
  }

  List<Candidate> repairs() {
    return of(base.repairs().values(), Repair::name);
  }

  List<Candidate> setUps() {
    return of(base.setUps().values(), SetUp::name);
  }

  List<Candidate> histories() {
    return of(base.histories().values(), History::name);
  }

  /** The hazards. They have no cards, so the first caution about a hazard explains it. */
  List<Candidate> hazards() {
    Map<String, String> hazards = new TreeMap<>();
    base.cautions().values().forEach(c -> hazards.putIfAbsent(c.hazard(), c.what()));
    return known(hazards);
  }

  List<Candidate> areas() {
    Map<String, List<String>> areas =
        base.causes().values().stream()
            .filter(c -> !c.area().isEmpty())
            .collect(
                Collectors.groupingBy(
                    Cause::area,
                    TreeMap::new,
                    Collectors.mapping(Cause::name, Collectors.toList())));
    Map<String, String> words = new TreeMap<>();
    areas.forEach((area, names) -> words.put(area, "such as: " + names.get(0)));
    return known(words);
  }

  static List<Candidate> outcomes(Check check) {
    return check.outcomes().stream().map(o -> new Candidate(o.id(), o.text())).toList();
  }

  /** The words for how often, which may follow an id. */
  static List<Candidate> chances() {
    return LikelihoodWords.all().entrySet().stream()
        .map(e -> new Candidate(e.getKey(), Candidate.CHANCE + e.getValue()))
        .toList();
  }

  static List<Candidate> both(List<Candidate> some, List<Candidate> others) {
    return Stream.concat(some.stream(), others.stream()).toList();
  }

  private static <C extends Card> List<Candidate> of(
      Collection<C> cards, Function<C, String> words) {
    List<Candidate> known = new ArrayList<>();
    cards.forEach(c -> known.add(new Candidate(c.id(), words.apply(c))));
    known.sort(Comparator.comparing(Candidate::id));
    return List.copyOf(known);
  }

  private static List<Candidate> known(Map<String, String> words) {
    return words.entrySet().stream().map(e -> new Candidate(e.getKey(), e.getValue())).toList();
  }
}
