package yett.practice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.site.SiteFacts;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;

/**
 * Draws one exercise at random from the cards: what is wrong, what that brings about, and what
 * people say of it. The same seed gives the same exercise.
 */
final class Draw {
  /** Chance of a second, independent fault if one is wanted. */
  private static final double SECOND = 0.5;

  /**
   * Power of the prior by which causes are drawn. With the square root, rare causes come more often
   * than in real work.
   */
  private static final double RARITY = 0.5;

  /** Sets how readily people mention a recent event: the chance is (odds - 1) / (odds + this). */
  private static final double UNTOLD = 9;

  private final RuleBase base;
  private final SiteFacts sites;
  private final Noise noise;
  private final SymptomDraw shows;

  Draw(RuleBase base, long seed) {
    this.base = base;
    this.sites = new SiteFacts(base);
    this.noise = new Noise(seed);
    this.shows = new SymptomDraw(base, noise);
  }

  /**
   * @param roots how many faults arose independently
   */
  record Drawn(RecordedCase told, int roots) {}

  /**
   * @param area in which the fault is to be; empty for any
   * @param two whether there may be two faults
   */
  Drawn draw(Optional<String> area, boolean two, Role role, String name) {
    List<Cause> known =
        base.causes().values().stream()
            .filter(c -> !c.id().equals(Cause.NOT_IN_RULE_BASE))
            .filter(c -> mendable(c, role))
            .toList();
    Cause first =
        pick(known.stream().filter(c -> area.isEmpty() || c.area().equals(area.get())).toList(), 1);
    Map<String, String> site = sites.allowing(first.onlyIf(), Map.of());
    Set<String> roots = new LinkedHashSet<>(Set.of(first.id()));
    if (two && noise.even("second") < SECOND) {
      List<Cause> others =
          known.stream()
              .filter(c -> !c.area().equals(first.area()) && sites.site(site).allows(c))
              .toList();
      if (!others.isEmpty()) {
        roots.add(pick(others, 2).id());
      }
    }
    Set<String> truth = withConsequences(roots, site);
    return new Drawn(told(name, role, site, truth), roots.size());
  }

  /** Whether this role may make a repair that removes the cause. */
  private boolean mendable(Cause cause, Role role) {
    return base.repairs().values().stream()
        .anyMatch(r -> role.may(r.who()) && r.removes().getOrDefault(cause.id(), 0.0) >= 0.5);
  }

  private Cause pick(List<Cause> among, int turn) {
    if (among.isEmpty()) {
      throw new IllegalArgumentException("no cause to draw from");
    }
    double sum = among.stream().mapToDouble(Draw::weight).sum();
    double left = noise.even("cause " + turn) * sum;
    for (Cause cause : among) {
      left -= weight(cause);
      if (left < 0) {
        return cause;
      }
    }
    return among.get(among.size() - 1);
  }

  private static double weight(Cause cause) {
    return Math.pow(cause.prior(), RARITY);
  }

  private Set<String> withConsequences(Set<String> roots, Map<String, String> site) {
    return base.withConsequences(
        roots,
        (cause, to, chance) ->
            sites.site(site).allows(base.causes().get(to))
                && noise.even(cause + " brings about " + to) < chance);
  }

  private RecordedCase told(String name, Role role, Map<String, String> site, Set<String> truth) {
    return RecordedCase.madeUp(
        name, role, site, complaints(truth, site), histories(truth), List.copyOf(truth));
  }

  /**
   * Draws what people say. Somebody called, so if nothing was drawn, it is the most likely
   * complaint.
   */
  private List<String> complaints(Set<String> truth, Map<String, String> site) {
    List<Check> possible =
        base.complaints().stream().filter(c -> sites.site(site).allows(c)).toList();
    List<String> said =
        possible.stream()
            .filter(c -> shows.outcome(c, truth, 0) == c.indexOf(Check.SAID))
            .filter(c -> noise.even(c.id() + " mentioned") >= c.unmentioned())
            .map(Check::id)
            .toList();
    if (!said.isEmpty()) {
      return said;
    }
    return possible.stream()
        .max((a, b) -> Double.compare(saidBecauseOf(a, truth), saidBecauseOf(b, truth)))
        .map(c -> List.of(c.id()))
        .orElse(List.of());
  }

  private static double saidBecauseOf(Check complaint, Set<String> truth) {
    int said = complaint.indexOf(Check.SAID);
    return truth.stream()
        .filter(complaint.likelihood()::containsKey)
        .mapToDouble(c -> complaint.likelihood().get(c)[said])
        .max()
        .orElse(complaint.otherwise()[said]);
  }

  private List<String> histories(Set<String> truth) {
    return base.histories().values().stream()
        .filter(h -> noise.even("lately " + h.id()) < chance(h, truth))
        .map(History::id)
        .toList();
  }

  private static double chance(History history, Set<String> truth) {
    return truth.stream()
        .mapToDouble(c -> history.odds().getOrDefault(c, 1.0))
        .map(odds -> (odds - 1) / (odds + UNTOLD))
        .max()
        .orElse(0);
  }
}
