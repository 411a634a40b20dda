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

/** The ids of a rule base with the words that they stand for, by kind, each kind by id. */
public final class Vocabulary {
  private final RuleBase base;

  public Vocabulary(RuleBase base) {
    this.base = base;
  }

  /** Everything, under the names of the kinds. */
  public Map<String, List<Known>> all() {
    Map<String, List<Known>> all = new LinkedHashMap<>();
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

  List<Known> causes() {
    return of(base.causes().values(), Cause::name);
  }

  List<Known> checks() {
    return of(base.ordinaryChecks().toList(), Check::ask);
  }

  List<Known> complaints() {
    return of(base.complaints(), Check::ask);
  }

  List<Known> proofs() {
    return of(base.proofs(), Check::ask);
  }

  List<Known> repairs() {
    return of(base.repairs().values(), Repair::name);
  }

  List<Known> setUps() {
    return of(base.setUps().values(), SetUp::name);
  }

  List<Known> histories() {
    return of(base.histories().values(), History::name);
  }

  /** A hazard has no card; the first caution about it tells what it is. */
  List<Known> hazards() {
    Map<String, String> hazards = new TreeMap<>();
    base.cautions().values().forEach(c -> hazards.putIfAbsent(c.hazard(), c.what()));
    return known(hazards);
  }

  List<Known> areas() {
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

  static List<Known> outcomes(Check check) {
    return check.outcomes().stream().map(o -> new Known(o.id(), o.text())).toList();
  }

  /** What may stand behind an id for how often. */
  static List<Known> chances() {
    return LikelihoodWords.all().entrySet().stream()
        .map(e -> new Known(e.getKey(), "a chance of " + e.getValue()))
        .toList();
  }

  static List<Known> both(List<Known> some, List<Known> others) {
    return Stream.concat(some.stream(), others.stream()).toList();
  }

  private static <C extends Card> List<Known> of(Collection<C> cards, Function<C, String> words) {
    List<Known> known = new ArrayList<>();
    cards.forEach(c -> known.add(new Known(c.id(), words.apply(c))));
    known.sort(Comparator.comparing(Known::id));
    return List.copyOf(known);
  }

  private static List<Known> known(Map<String, String> words) {
    return words.entrySet().stream().map(e -> new Known(e.getKey(), e.getValue())).toList();
  }
}
