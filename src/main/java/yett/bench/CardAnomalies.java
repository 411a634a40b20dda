package yett.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.bench.Anomaly.Found;
import yett.bench.Anomaly.Kind;
import yett.knowledge.Card;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/** Finds weak places that follow from the cards and from the names that the rules use. */
final class CardAnomalies {
  private static final Set<String> SPECIAL = Set.of(Cause.NOTHING_WRONG, Cause.NOT_IN_RULE_BASE);

  private static final Pattern QUOTED = Pattern.compile("\"([a-z0-9-]+)\"");

  /** Matches any word, because the cells of a table have no quotes. */
  private static final Pattern WORD = Pattern.compile("([a-z0-9-]+)");

  private final RuleBase base;
  private final Set<String> named = new HashSet<>();
  private final List<Anomaly> found = new ArrayList<>();

  private CardAnomalies(RuleBase base) {
    this.base = base;
    Stream.concat(
            base.rules().values().stream().flatMap(rule -> QUOTED.matcher(rule).results()),
            base.tables().values().stream().flatMap(table -> WORD.matcher(table).results()))
        .forEach(name -> named.add(name.group(1)));
  }

  static List<Anomaly> of(RuleBase base) {
    CardAnomalies anomalies = new CardAnomalies(base);
    anomalies.repeated();
    anomalies.dominatedRepairs();
    anomalies.neverTogether();
    anomalies.mutualRepairs();
    anomalies.withoutEffect();
    anomalies.missing();
    return anomalies.found;
  }

  private void add(Kind kind, String about, String message) {
    found.add(new Anomaly(kind, Found.PROVED, about, message));
  }

  /** Finds cards of one kind that say the same under two names. */
  private void repeated() {
    same(
        base.causes().values(),
        c -> List.of(rowsOf(c.id()), repairsOf(c.id())),
        "shows and is removed as");
    same(
        base.ordinaryChecks().filter(c -> !c.danger() && c.repeats().isEmpty()).toList(),
        c -> List.of(rows(c), Arrays.toString(c.otherwise()), c.onlyIf()),
        "tells the same causes by the same rows as");
    same(base.repairs().values(), r -> List.of(r.removes(), r.steps()), "does the same as");
  }

  private <C extends Card> void same(
      Collection<C> cards, java.util.function.Function<C, List<?>> content, String how) {
    Map<List<?>, List<String>> groups =
        cards.stream()
            .filter(c -> !content.apply(c).get(0).equals(Map.of()))
            .collect(
                Collectors.groupingBy(
                    content::apply, Collectors.mapping(Card::id, Collectors.toList())));
    groups.values().stream()
        .filter(ids -> ids.size() > 1)
        .map(ids -> ids.stream().sorted().toList())
        .sorted((a, b) -> a.get(0).compareTo(b.get(0)))
        .forEach(
            ids ->
                add(
                    Kind.REDUNDANT,
                    ids.get(0),
                    how + " " + String.join(", ", ids.subList(1, ids.size()))));
  }

  private Map<String, String> rowsOf(String cause) {
    return base.checks().values().stream()
        .filter(c -> c.likelihood().containsKey(cause))
        .collect(Collectors.toMap(Check::id, c -> Arrays.toString(c.likelihood().get(cause))));
  }

  private static Map<String, String> rows(Check check) {
    return check.likelihood().entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> Arrays.toString(e.getValue())));
  }

  private Set<String> repairsOf(String cause) {
    return base.repairs().values().stream()
        .filter(r -> r.removes().containsKey(cause))
        .map(Repair::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void dominatedRepairs() {
    for (Repair repair : base.repairs().values()) {
      base.repairs().values().stream()
          .filter(other -> other != repair && !repair.removes().isEmpty())
          .filter(other -> covers(other, repair) && !(covers(repair, other)))
          .findFirst()
          .ifPresent(
              other ->
                  add(
                      Kind.SUBSUMED,
                      repair.id(),
                      other.id() + " removes as much, in no more time and for no more money"));
    }
  }

  private static boolean covers(Repair wide, Repair narrow) {
    return narrow.removes().entrySet().stream()
            .allMatch(e -> wide.removes().getOrDefault(e.getKey(), 0.0) >= e.getValue())
        && wide.minutes() <= narrow.minutes()
        && wide.price() <= narrow.price()
        && narrow.needs().containsAll(wide.needs())
        && narrow.who().may(wide.who())
        && narrow.hazards().containsAll(wide.hazards())
        && narrow.entails().containsAll(wide.entails())
        && (wide.onlyIf().isEmpty() || wide.onlyIf().equals(narrow.onlyIf()));
  }

  /** Finds pairs of cards that refer to each other but never apply to the same gate. */
  private void neverTogether() {
    for (Cause cause : base.causes().values()) {
      for (String other : cause.consequences().keySet()) {
        if (cause.neverWith(base.causes().get(other))) {
          add(Kind.CONTRADICTORY, cause.id(), "brings about " + other + never());
        }
      }
    }
    for (Check check : base.checks().values()) {
      for (String cause : check.likelihood().keySet()) {
        if (check.neverWith(base.causes().get(cause))) {
          add(Kind.CONTRADICTORY, check.id(), "has a row for " + cause + never());
        }
      }
    }
    for (Repair repair : base.repairs().values()) {
      for (String cause : repair.removes().keySet()) {
        if (repair.neverWith(base.causes().get(cause))) {
          add(Kind.CONTRADICTORY, repair.id(), "removes " + cause + never());
        }
      }
    }
  }

  private static String never() {
    return ", but by their only-if the two are never at the same gate";
  }

  /** Finds repairs that make each other necessary, so that the work would never end. */
  private void mutualRepairs() {
    for (Repair repair : base.repairs().values()) {
      Deque<String> open = new ArrayDeque<>(repair.entails());
      Set<String> seen = new HashSet<>();
      while (!open.isEmpty()) {
        String next = open.pop();
        if (next.equals(repair.id())) {
          add(Kind.CIRCULAR, repair.id(), "makes itself necessary again through what it entails");
          break;
        }
        if (seen.add(next) && base.repairs().containsKey(next)) {
          open.addAll(base.repairs().get(next).entails());
        }
      }
    }
  }

  private void withoutEffect() {
    Set<String> entailed = new HashSet<>();
    base.repairs().values().forEach(r -> entailed.addAll(r.entails()));
    base.ordinaryChecks()
        .filter(c -> c.likelihood().isEmpty() && !c.danger() && c.inspected().at().isEmpty())
        .filter(c -> !entailed.contains(c.id()) && !namedByRule(c.id()))
        .forEach(c -> add(Kind.UNREACHABLE, c.id(), "this check tells nothing of any cause"));
    base.repairs().values().stream()
        .filter(r -> r.removes().isEmpty() && r.putsRight().isEmpty())
        .filter(r -> !entailed.contains(r.id()) && !namedByRule(r.id()))
        .forEach(
            r -> add(Kind.UNREACHABLE, r.id(), "this repair removes nothing and follows nothing"));
    base.histories().values().stream()
        .filter(h -> h.odds().isEmpty() && !namedByRule(h.id()))
        .forEach(h -> add(Kind.UNREACHABLE, h.id(), "this history changes no odds"));
    base.stops().keySet().stream()
        .filter(s -> !namedByRule(s))
        .forEach(s -> add(Kind.UNREACHABLE, s, "no rule raises this stop"));
    Set<String> needed = new HashSet<>(used(Check::needs, Repair::needs));
    needed.addAll(List.of(SetUp.GATE_RUNNING, SetUp.OUT_OF_USE, SetUp.IN_USE));
    base.stops().values().forEach(s -> s.leaves().ifPresent(needed::add));
    base.setUps().keySet().stream()
        .filter(s -> !needed.contains(s))
        .forEach(s -> add(Kind.UNREACHABLE, s, "nothing needs this set-up"));
    Set<String> hazards = used(Check::hazards, Repair::hazards);
    base.setUps().values().forEach(s -> hazards.addAll(s.hazards()));
    base.cautions().values().stream()
        .filter(c -> !hazards.contains(c.hazard()))
        .forEach(c -> add(Kind.UNREACHABLE, c.id(), "nothing has the hazard " + c.hazard()));
    Set<String> asked = new HashSet<>();
    Stream.of(
            base.causes().values().stream().map(Cause::onlyIf),
            base.checks().values().stream().map(Check::onlyIf),
            base.repairs().values().stream().map(Repair::onlyIf),
            base.siteQuestions().values().stream().map(q -> q.onlyIf()))
        .flatMap(s -> s)
        .forEach(c -> asked.addAll(c.keySet()));
    base.siteQuestions().keySet().stream()
        .filter(q -> !asked.contains(q) && !namedByRule(q))
        .forEach(q -> add(Kind.UNREACHABLE, q, "nothing depends on this site question"));
  }

  private Set<String> used(
      java.util.function.Function<Check, List<String>> checks,
      java.util.function.Function<Repair, List<String>> repairs) {
    Set<String> used = new HashSet<>();
    base.checks().values().forEach(c -> used.addAll(checks.apply(c)));
    base.repairs().values().forEach(r -> used.addAll(repairs.apply(r)));
    return used;
  }

  /** Whether a rule or a table names this card. */
  private boolean namedByRule(String id) {
    return named.contains(id);
  }

  /** Finds repairs after which nothing has to be tried. */
  static List<Anomaly> unproved(RuleBase base) {
    return base.repairs().values().stream()
        .filter(r -> r.proofs().isEmpty())
        .map(
            r ->
                new Anomaly(
                    Kind.MISSING,
                    Found.PROVED,
                    r.id(),
                    "this repair names no proof: \"proofs\" says what must pass after it before the"
                        + " gate returns to service, and a call ends as solved without any"))
        .toList();
  }

  private void missing() {
    found.addAll(unproved(base));
    for (Cause cause : base.causes().values()) {
      boolean checked = base.ordinaryChecks().anyMatch(c -> c.likelihood().containsKey(cause.id()));
      if (!checked && !SPECIAL.contains(cause.id())) {
        add(Kind.MISSING, cause.id(), "no check has a row for it, so nothing can find it");
      }
    }
    base.ordinaryChecks()
        .filter(
            c ->
                c.outcomes().stream().anyMatch(o -> o.band().filter(b -> b.relative()).isPresent()))
        .filter(c -> !namedByRule(c.id()))
        .forEach(
            c -> add(Kind.MISSING, c.id(), "no rule computes the usual range that its bands need"));
  }
}
