package yett.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteCard;

/** What differs between two rule bases, by the causes and gates concerned. */
final class Change {
  private final RuleBase before;
  private final RuleBase now;
  private final SiteFacts sites;

  /** Causes about which some card says different things in the two rule bases. */
  private final Set<String> causes = new HashSet<>();

  /** Cards that differ in more than what they say about such a cause. */
  private final List<SiteCard> cards = new ArrayList<>();

  /** Whether there is a difference that concerns all gates. */
  private boolean everywhere;

  Change(RuleBase before, RuleBase now) {
    this.before = before;
    this.now = now;
    this.sites = new SiteFacts(now);
    everywhere =
        !before.siteQuestions().equals(now.siteQuestions())
            || !before.telephone().pressing().equals(now.telephone().pressing())
            || !alikeInBoth(before.mainsParts(), now.mainsParts());
    for (String id : union(before.causes(), now.causes())) {
      if (!Objects.equals(before.causes().get(id), now.causes().get(id))) {
        causes.add(id);
      }
    }
    union(before.repairs(), now.repairs())
        .forEach(id -> repair(before.repairs().get(id), now.repairs().get(id)));
    union(before.checks(), now.checks())
        .forEach(id -> check(before.checks().get(id), now.checks().get(id)));
    union(before.histories(), now.histories())
        .forEach(id -> history(before.histories().get(id), now.histories().get(id)));
    Stream.of(before, now)
        .forEach(
            base ->
                causes.stream()
                    .filter(base.causes()::containsKey)
                    .map(base.causes()::get)
                    .forEach(cards::add));
  }

  /**
   * Whether all differences are in cards that belief and plan use, and none in tables, rules,
   * set-ups or stops.
   */
  boolean inCardsOnly() {
    return before.tables().equals(now.tables()) && inCardsAndTablesOnly();
  }

  /**
   * The same, or in tables: what their rows conclude shows in what a case tells of its gate and its
   * answers. A rule may also wait for a repair or a set-up, which no case tells.
   */
  boolean inCardsAndTablesOnly() {
    return before.rules().equals(now.rules())
        && before.setUps().equals(now.setUps())
        && before.stops().equals(now.stops())
        && before.cautions().keySet().equals(now.cautions().keySet())
        && before.planning().equals(now.planning())
        && alikeInBoth(before.siteQuestions(), now.siteQuestions());
  }

  private static boolean alikeInBoth(Map<String, ?> a, Map<String, ?> b) {
    return a.entrySet().stream()
        .allMatch(e -> !b.containsKey(e.getKey()) || e.getValue().equals(b.get(e.getKey())));
  }

  /** Whether both rule bases know a card. */
  boolean isInBoth(String card) {
    return Stream.<Map<String, ?>>of(before.causes(), before.checks(), before.repairs())
            .anyMatch(cards -> cards.containsKey(card))
        && Stream.<Map<String, ?>>of(now.causes(), now.checks(), now.repairs())
            .anyMatch(cards -> cards.containsKey(card));
  }

  boolean touches(String cause) {
    return causes.contains(cause);
  }

  /**
   * Whether nothing of the change can be at a gate, so that no result there can differ
   * (docs/decisions/0036).
   *
   * @param answers what is known of the gate
   */
  boolean isElsewhere(Map<String, String> answers) {
    if (everywhere || !inCardsOnly()) {
      return false;
    }
    Site site = sites.site(answers);
    return cards.stream().noneMatch(site::allows);
  }

  /**
   * Notes how two versions of a repair differ. If only the chances differ with which it removes
   * causes, only those causes are noted.
   */
  private void repair(Repair a, Repair b) {
    Map<String, Double> was = a == null ? Map.of() : a.removes();
    Map<String, Double> is = b == null ? Map.of() : b.removes();
    Set<String> removed = union(was, is);
    if (a != null && b != null && a.withRemoves(Map.of()).equals(b.withRemoves(Map.of()))) {
      removed.removeIf(c -> was.getOrDefault(c, 0.0).equals(is.getOrDefault(c, 0.0)));
    } else {
      add(a, b);
    }
    causes.addAll(removed);
  }

  /** Notes how two versions of a check differ. If only rows differ, only their causes are noted. */
  private void check(Check a, Check b) {
    Map<String, double[]> was = a == null ? Map.of() : a.likelihood();
    Map<String, double[]> is = b == null ? Map.of() : b.likelihood();
    Set<String> shows = union(was, is);
    if (a != null && b != null && alikeBesidesRows(a, b)) {
      shows.removeIf(c -> Arrays.equals(was.get(c), is.get(c)));
    } else {
      add(a, b);
    }
    causes.addAll(shows);
  }

  private static boolean alikeBesidesRows(Check a, Check b) {
    return a.kind() == b.kind()
        && a.question().equals(b.question())
        && a.work().equals(b.work())
        && Arrays.equals(a.otherwise(), b.otherwise())
        && a.reliability().equals(b.reliability())
        && a.repeats().equals(b.repeats())
        && a.unmentioned() == b.unmentioned()
        && a.area().equals(b.area())
        && a.onlyIf().equals(b.onlyIf())
        && a.danger() == b.danger();
  }

  private void history(History a, History b) {
    Map<String, Double> was = a == null ? Map.of() : a.odds();
    Map<String, Double> is = b == null ? Map.of() : b.odds();
    Set<String> moved = union(was, is);
    moved.removeIf(c -> was.getOrDefault(c, 1.0).equals(is.getOrDefault(c, 1.0)));
    causes.addAll(moved);
    everywhere |= a == null || b == null;
  }

  private void add(SiteCard... differing) {
    Arrays.stream(differing).filter(Objects::nonNull).forEach(cards::add);
  }

  private static Set<String> union(Map<String, ?> a, Map<String, ?> b) {
    Set<String> union = new HashSet<>(a.keySet());
    union.addAll(b.keySet());
    return union;
  }
}
