package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

/**
 * The shipped rules, tried on a site that has all the usual answers but those that a test gives.
 */
final class Rules {
  static final RuleBase BASE = Shipped.BASE;
  private static final RuleEngine ENGINE = Shipped.EXPERTISE.rules();

  /** One for all examples: what one leaves behind would show in the others. */
  private static final Judge JUDGE = ENGINE.newJudge();

  private static final Judgement AFRESH = afresh();

  private static final Pattern NAME = Pattern.compile("^rule \"([^\"]+)\"", Pattern.MULTILINE);
  private static final Pattern FIRST_CELL = Pattern.compile("^(?:\"([^\"]*)\"|([^,]*)),.*$");

  /** A situation in which a rule speaks. */
  record Example(String rule, List<Fact> facts) {
    @Override
    public String toString() {
      return rule + " " + facts;
    }
  }

  private Rules() {}

  static Example example(String rule, Fact... facts) {
    return new Example(rule, List.of(facts));
  }

  static Fact site(String question, String answer) {
    return BASE.siteQuestions()
        .get(question)
        .measures()
        .map(m -> Fact.Site.measured(question, m.parse(answer)))
        .orElseGet(() -> Fact.Site.chosen(question, answer));
  }

  static Fact said(long event, String check, String outcome) {
    return said(event, 0, Role.TECHNICIAN, check, outcome);
  }

  static Fact said(long event, int epoch, Role by, String check, String outcome) {
    assertThat(BASE.checks().get(check).indexOf(outcome)).as(check + " " + outcome).isNotNegative();
    return new Fact.Given(check, outcome, Double.NaN, false, by, event, epoch);
  }

  static Fact read(long event, String check, String reading) {
    return read(event, 0, Role.TECHNICIAN, check, reading);
  }

  static Fact read(long event, int epoch, Role by, String check, String reading) {
    double value = BASE.checks().get(check).measures().orElseThrow().parse(reading);
    return new Fact.Given(check, "", value, true, by, event, epoch);
  }

  static Fact done(String repair, int epoch) {
    assertThat(BASE.repairs()).containsKey(repair);
    return new Fact.Done(repair, epoch);
  }

  static Fact happened(String history) {
    assertThat(BASE.histories()).containsKey(history);
    return new Fact.Happened(history);
  }

  static Fact complained(String complaint) {
    assertThat(BASE.checks().get(complaint).kind()).isEqualTo(Check.Kind.COMPLAINT);
    return new Fact.Complained(complaint);
  }

  /** What follows on the usual site, with these facts on top or in place of a usual answer. */
  static Judgement judge(Fact... facts) {
    return judge(Arrays.asList(facts));
  }

  static Judgement judge(Collection<Fact> facts) {
    return JUDGE.judge(onUsualSite(facts));
  }

  /** What follows on the usual site alone, from a session that has seen nothing else. */
  static Judgement judgeAfresh() {
    return AFRESH;
  }

  private static Judgement afresh() {
    try (Judge judge = ENGINE.newJudge()) {
      return judge.judge(onUsualSite(List.of()));
    }
  }

  /** What is left of the examples' conclusions after their facts are taken back one by one. */
  static Judgement afterTakingBack(Example example) {
    for (int kept = example.facts().size(); kept >= 0; kept--) {
      judge(example.facts().subList(0, kept));
    }
    return judge();
  }

  /** What is left once nothing at all is known any more. */
  static Judgement afterTakingBackEverything(Example example) {
    judge(example.facts());
    return JUDGE.judge(Set.of());
  }

  /** What is left of the usual site once the answer to a question is taken away. */
  static Judgement afterForgetting(String question) {
    Set<Fact> site = onUsualSite(List.of());
    JUDGE.judge(site);
    site.removeIf(f -> f instanceof Fact.Site s && s.question().equals(question));
    return JUDGE.judge(site);
  }

  static Set<String> speaking(Judgement judgement) {
    return judgement.conclusions().stream()
        .map(c -> c.reason().rule())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  static Set<String> speaking(Stream<Example> examples) {
    return examples
        .flatMap(e -> speaking(judge(e.facts())).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Names of the rules of a kind, of whatever area; all of them were compiled. */
  static Set<String> of(String kind) {
    Set<String> names = new TreeSet<>();
    files(kind).values().forEach(names::addAll);
    assertThat(ENGINE.ruleNames()).containsAll(names);
    return names;
  }

  /** Names of the rules and rows in each file of a kind, by its path. */
  static Map<String, List<String>> files(String kind) {
    Map<String, List<String>> files = new TreeMap<>();
    Pattern named = Pattern.compile("[a-z]+/" + kind + "(\\.drl|\\.table\\.csv)");
    Stream.of(BASE.rules(), BASE.tables())
        .flatMap(texts -> texts.entrySet().stream())
        .filter(file -> named.matcher(file.getKey()).matches())
        .forEach(file -> files.put(file.getKey(), names(file.getKey(), file.getValue())));
    assertThat(files).isNotEmpty();
    return files;
  }

  private static List<String> names(String file, String text) {
    return file.endsWith(".drl")
        ? NAME.matcher(text).results().map(r -> r.group(1)).toList()
        : text.lines().skip(1).map(row -> FIRST_CELL.matcher(row).replaceFirst("$1$2")).toList();
  }

  /** Names of all compiled rules, as often as they occur. */
  static List<String> names() {
    return ENGINE.ruleNames();
  }

  private static Set<Fact> onUsualSite(Collection<Fact> facts) {
    Map<String, Fact> site = new LinkedHashMap<>();
    BASE.siteQuestions().values().forEach(q -> site.put(q.id(), site(q.id(), q.usual())));
    Set<Fact> all = new HashSet<>();
    for (Fact fact : facts) {
      if (fact instanceof Fact.Site answer) {
        site.put(answer.question(), answer);
      } else {
        all.add(fact);
      }
    }
    BASE.siteQuestions().values().stream()
        .filter(q -> q.onlyIf().keySet().stream().anyMatch(c -> !allows(q.onlyIf(), site, c)))
        .forEach(q -> site.remove(q.id()));
    all.addAll(site.values());
    return all;
  }

  private static boolean allows(
      Map<String, List<String>> onlyIf, Map<String, Fact> site, String question) {
    return site.get(question) instanceof Fact.Site s && onlyIf.get(question).contains(s.choice());
  }
}
