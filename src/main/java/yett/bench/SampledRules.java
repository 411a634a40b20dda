package yett.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yett.bench.Anomaly.Found;
import yett.bench.Anomaly.Kind;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.rules.Conclusion;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.RuleEngine;

/**
 * Tries the rules on gates drawn at random. It finds rules that never conclude anything, and pairs
 * of rules that compute different usual ranges for the same reading. A gate that was not drawn may
 * differ.
 */
public final class SampledRules {
  private final RuleBase base;
  private final Random random;
  private final Set<String> silent;
  private final Map<String, String> against = new TreeMap<>();

  private SampledRules(RuleBase base, RuleEngine engine, long seed) {
    this.base = base;
    this.random = new Random(seed);
    this.silent = new TreeSet<>(engine.ruleNames());
  }

  /**
   * Judges many gates.
   *
   * @param after called after each gate
   */
  public static List<Anomaly> of(
      RuleBase base, RuleEngine engine, int gates, long seed, Runnable after) {
    SampledRules sample = new SampledRules(base, engine, seed);
    try (Judge judge = engine.newJudge()) {
      for (int i = 0; i < gates; i++) {
        sample.look(judge.judge(sample.gate()).conclusions());
        after.run();
      }
    }
    List<Anomaly> found = new ArrayList<>();
    sample.silent.forEach(
        r ->
            found.add(
                new Anomaly(
                    Kind.UNREACHABLE,
                    Found.SAMPLED,
                    "rule \"" + r + "\"",
                    "concluded nothing on " + gates + " gates")));
    sample.against.forEach(
        (rules, check) ->
            found.add(
                new Anomaly(
                    Kind.CONTRADICTORY,
                    Found.SAMPLED,
                    rules,
                    "computed two usual ranges for " + check + " at the same gate")));
    return found;
  }

  /**
   * Looks for two usual ranges of one reading. Odds for and against one cause are no contradiction.
   */
  private void look(List<Conclusion> conclusions) {
    Map<String, Conclusion.Expectation> usual = new TreeMap<>();
    for (Conclusion conclusion : conclusions) {
      silent.remove(conclusion.reason().rule());
      if (conclusion instanceof Conclusion.Expectation range) {
        Conclusion.Expectation other = usual.putIfAbsent(range.check(), range);
        if (other != null && (other.low() != range.low() || other.high() != range.high())) {
          against.putIfAbsent(
              "rules \"" + other.reason().rule() + "\" and \"" + range.reason().rule() + "\"",
              range.check());
        }
      }
    }
  }

  /** Draws a gate, a person, and some possible answers. */
  private Set<Fact> gate() {
    Set<Fact> facts = new HashSet<>();
    Role role = Role.values()[random.nextInt(Role.values().length)];
    facts.add(new Fact.Person(role, role == Role.CALLER && random.nextInt(8) == 0));
    facts.add(new Fact.ComplaintsTaken());
    for (SiteQuestion question : base.siteQuestions().values()) {
      facts.add(answered(question));
    }
    base.complaints().stream()
        .filter(c -> random.nextInt(12) == 0)
        .forEach(c -> facts.add(new Fact.Complained(c.id())));
    base.histories().keySet().stream()
        .filter(h -> random.nextInt(6) == 0)
        .forEach(h -> facts.add(new Fact.Happened(h)));
    int epochs = 0;
    for (String repair : base.repairs().keySet()) {
      if (random.nextInt(8) == 0) {
        facts.add(new Fact.Done(repair, ++epochs));
      }
    }
    long event = 1;
    for (Check check : base.checks().values()) {
      if (check.kind() != Check.Kind.COMPLAINT && random.nextInt(4) > 0) {
        facts.add(given(check, role, event++, random.nextInt(2) * epochs));
      }
    }
    return facts;
  }

  private Fact answered(SiteQuestion question) {
    Optional<Measures> measures = question.measures();
    if (measures.isPresent()) {
      return Fact.Site.measured(question.id(), reading(measures.get()));
    }
    List<String> choices = List.copyOf(question.choices().keySet());
    return Fact.Site.chosen(question.id(), choices.get(random.nextInt(choices.size())));
  }

  private Fact given(Check check, Role role, long event, int epoch) {
    if (check.measures().isPresent()) {
      double value = reading(check.measures().get());
      return new Fact.Given(check.id(), "", value, true, role, event, epoch);
    }
    String outcome = check.outcomes().get(random.nextInt(check.outcomes().size())).id();
    return new Fact.Given(check.id(), outcome, Double.NaN, false, role, event, epoch);
  }

  private double reading(Measures measures) {
    double least = Double.isFinite(measures.least()) ? measures.least() : 0;
    double most = Double.isFinite(measures.most()) ? measures.most() : least + 100;
    double part = random.nextDouble();
    return least + (most - least) * (random.nextBoolean() ? part : part * part * part);
  }
}
