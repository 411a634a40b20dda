package yett.interview.course;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.Judgement;

/** The states of the work and what may be done in each, in Markdown, from cards and rules. */
final class StatesPage {
  private final Expertise expertise;
  private final RuleBase base;

  StatesPage(Expertise expertise) {
    this.expertise = expertise;
    this.base = expertise.base();
  }

  String text() {
    return picture() + work() + dangers() + faults();
  }

  private Stream<SetUp> states() {
    return base.setUps().values().stream().filter(s -> !s.isCondition());
  }

  private String picture() {
    StringBuilder text = new StringBuilder();
    text.append("\n### States and the states within them\n");
    text.append(
        "A state that lies within another is entered after it and left before it. Work can go");
    text.append(
        " from any outer state to any other\nouter state; states that exclude each other are left");
    text.append(" first.\n\n```mermaid\nstateDiagram-v2\n  [*] --> free\n");
    text.append("  state \"Nothing done yet\" as free\n");
    states().filter(s -> s.within().isEmpty()).forEach(s -> draw(s, "  ", text));
    states()
        .filter(s -> s.within().isEmpty())
        .forEach(s -> text.append("  free --> ").append(name(s.id())).append('\n'));
    return text.append("```\n").toString();
  }

  private void draw(SetUp setUp, String indent, StringBuilder text) {
    List<SetUp> inner = states().filter(s -> s.within().contains(setUp.id())).toList();
    text.append(indent).append("state \"").append(setUp.name()).append("\" as ");
    text.append(name(setUp.id()));
    if (!inner.isEmpty()) {
      text.append(" {\n");
      inner.forEach(s -> draw(s, indent + "  ", text));
      text.append(indent).append('}');
    }
    text.append('\n');
  }

  private static String name(String id) {
    return id.replace('-', '_');
  }

  private String work() {
    StringBuilder text = new StringBuilder("\n### Work allowed in each state\n");
    text.append(
        "The least qualified person who may enter the state, and how many of the cards that");
    text.append(
        " need it each role adds to what the roles\nbefore it may do. A card that needs several");
    text.append(" states is counted under each.\n\n");
    text.append("| state | entered by | checks | repairs | proofs | not together with |\n");
    text.append("|---|---|---|---|---|---|\n");
    row(text, "none", "", List::isEmpty, Set.of());
    base.setUps()
        .values()
        .forEach(
            s ->
                row(
                    text,
                    s.name(),
                    s.isCondition() ? "(a condition)" : s.who().word(),
                    needs -> needs.contains(s.id()),
                    excluded(s)));
    return text.toString();
  }

  private void row(
      StringBuilder text,
      String name,
      String who,
      Predicate<List<String>> here,
      Collection<String> not) {
    Stream<Role> checks =
        base.ordinaryChecks().filter(c -> !c.danger() && here.test(c.needs())).map(Check::who);
    Stream<Role> repairs =
        base.repairs().values().stream().filter(r -> here.test(r.needs())).map(Repair::who);
    String proofs =
        base.proofs().stream()
            .filter(p -> here.test(p.needs()))
            .map(p -> p.id().replace('-', ' ') + " (" + p.who().word() + ")")
            .collect(Collectors.joining(", "));
    cells(text, name, who, counts(checks), counts(repairs), proofs, String.join(", ", not));
  }

  private static String counts(Stream<Role> least) {
    Map<Role, Integer> counts = new EnumMap<>(Role.class);
    least.forEach(r -> counts.merge(r, 1, Integer::sum));
    return counts.entrySet().stream()
        .map(e -> e.getKey().word() + " " + e.getValue())
        .collect(Collectors.joining(", "));
  }

  /** As said on either card. */
  private Set<String> excluded(SetUp setUp) {
    Set<String> excluded = new LinkedHashSet<>();
    base.setUps()
        .values()
        .forEach(
            other -> {
              if (setUp.excludes().contains(other.id()) || other.excludes().contains(setUp.id())) {
                excluded.add(other.id().replace('-', ' '));
              }
            });
    return excluded;
  }

  private String dangers() {
    StringBuilder text = new StringBuilder("\n### The gate after a danger\n");
    text.append(
        "| danger | state of the gate | who goes on | states not allowed until it is over"
            + " |\n");
    text.append("|---|---|---|---|\n");
    for (Stop stop : base.stops().values()) {
      SetUp safe = stop.leaves().map(base.setUps()::get).orElse(null);
      cells(
          text,
          stop.name(),
          safe == null ? "" : safe.name(),
          stop.goesOn().map(Role::word).orElse("nobody: handed over"),
          safe == null ? "" : String.join(", ", safe.excludes()).replace('-', ' '));
    }
    return text.append(together()).toString();
  }

  private String together() {
    StringBuilder text = new StringBuilder("\n### Two dangers at once\n");
    text.append("Both are made safe, people first, and the gate is put into both safe states. ");
    text.append("An instruction for one danger that another rules out is left out:\n\n");
    text.append(
        "| during this danger | never told to a caller | never told to anybody at the gate |\n");
    text.append("|---|---|---|\n");
    Map<String, Set<String>> caller = withheld(Role.CALLER);
    Map<String, Set<String>> electrician = withheld(Role.ELECTRICIAN);
    for (Stop stop : base.stops().values()) {
      if (!caller.getOrDefault(stop.id(), Set.of()).isEmpty()) {
        cells(
            text,
            stop.name(),
            String.join(", ", caller.get(stop.id())).replace('-', ' '),
            String.join(", ", electrician.get(stop.id())).replace('-', ' '));
      }
    }
    return text.toString();
  }

  /** Of each danger that one answer raises, what it rules out. */
  private Map<String, Set<String>> withheld(Role role) {
    Map<String, Set<String>> withheld = new HashMap<>();
    try (Judge judge = expertise.rules().newJudge()) {
      for (Check check : base.ordinaryChecks().filter(Check::danger).toList()) {
        for (Answer answer : Representatives.answers(check)) {
          Set<Fact> facts = new HashSet<>(new SiteFacts(base).facts(Map.of()));
          facts.add(new Fact.Person(role));
          facts.add(Representatives.fact(check, answer, role, 1));
          Judgement judgement = judge.judge(facts);
          judgement
              .stops()
              .forEach(s -> withheld.put(s.stop(), new TreeSet<>(judgement.withheld())));
        }
      }
    }
    return withheld;
  }

  private String faults() {
    StringBuilder text = new StringBuilder("\n### Known faults with which the gate must not run\n");
    text.append(
        "Found by giving the rules every answer by itself, for an electrician at the usual");
    text.append(" gate.\n\n| seen or measured | because | until |\n|---|---|---|\n");
    SiteFacts sites = new SiteFacts(base);
    Set<Fact> ground = new HashSet<>(sites.facts(Map.of()));
    ground.add(new Fact.Person(Role.ELECTRICIAN));
    try (Judge judge = expertise.rules().newJudge()) {
      for (Check check : base.ordinaryChecks().filter(c -> !c.danger()).toList()) {
        Set<String> seen = new HashSet<>();
        for (Answer answer : Representatives.answers(check)) {
          Set<Fact> facts = new HashSet<>(ground);
          facts.add(Representatives.fact(check, answer, Role.ELECTRICIAN, 1));
          Judgement judgement = judge.judge(facts);
          boolean forbids =
              judgement.stops().isEmpty() && judgement.forbidden().contains(SetUp.GATE_RUNNING);
          if (forbids && seen.add(because(judgement))) {
            String shown = answer.choice().map(c -> outcome(check, c)).orElse("see the rule");
            cells(text, check.ask() + " " + shown, because(judgement), until(judge, facts));
          }
        }
      }
    }
    return text.toString();
  }

  private static String because(Judgement judgement) {
    return judgement.conclusions().stream()
        .filter(yett.rules.Conclusion.Forbidden.class::isInstance)
        .map(yett.rules.Conclusion.Forbidden.class::cast)
        .filter(f -> f.setUp().equals(SetUp.GATE_RUNNING))
        .map(f -> f.reason().because().replaceAll(" *[(;:] *it read .*", ""))
        .findFirst()
        .orElse("");
  }

  private static String outcome(Check check, String id) {
    return check.outcomes().get(check.indexOf(id)).text();
  }

  private String until(Judge judge, Set<Fact> facts) {
    List<String> ends = new ArrayList<>();
    for (Repair repair : base.repairs().values()) {
      Set<Fact> done = new HashSet<>(facts);
      done.add(new Fact.Done(repair.id(), 1));
      if (!judge.judge(done).forbidden().contains(SetUp.GATE_RUNNING)) {
        ends.add(repair.name().toLowerCase(java.util.Locale.ROOT));
      }
    }
    return String.join(", or ", ends);
  }

  private static void cells(StringBuilder text, String... cells) {
    text.append("| ");
    text.append(
        Stream.of(cells)
            .map(c -> c.isEmpty() ? "none" : c.replace("|", "\\|"))
            .collect(Collectors.joining(" | ")));
    text.append(" |\n");
  }
}
