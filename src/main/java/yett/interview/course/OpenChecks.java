package yett.interview.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.search.BestWork;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Advice;

/** The checks that this person may make now, the most useful first. */
public final class OpenChecks {
  /** Least change of a chance, as a share of it, for a check to count as bearing on a cause. */
  private static final double WORTH_ASKING = 0.05;

  private final Expertise expertise;
  private final Moment moment;
  private final RuleBase base;

  /**
   * Whether no repair is worth trying before more is known; then the minutes saved cannot be given.
   */
  private final boolean findingOut;

  private final List<Open> all = new ArrayList<>();

  public OpenChecks(Expertise expertise, Moment moment) {
    this.expertise = expertise;
    this.moment = moment;
    this.base = expertise.base();
    BestWork work = BestWork.at(moment, base, expertise.planner());
    Advice choice = work.choice();
    this.findingOut = choice.findingOut();
    Set<String> told = new HashSet<>();
    for (Advice.Candidate candidate : choice.candidates()) {
      told.add(candidate.check());
      all.add(open(candidate.check(), Optional.of(candidate.saves())));
    }
    work.checks(true).stream()
        .filter(id -> !told.contains(id))
        .forEach(id -> all.add(open(id, Optional.empty())));
  }

  /**
   * A check that can be made.
   *
   * @param saves average minutes saved by beginning with it; empty where the plan did not evaluate
   *     it because it tells almost nothing now
   * @param enter set-ups still to be entered for it, in their order
   */
  public record Open(Check check, Optional<Double> saves, List<SetUp> enter) {
    /** Usual minutes of the check and of the set-ups still to be entered. */
    public double minutes() {
      return check.minutes() + enter.stream().mapToDouble(SetUp::enterMinutes).sum();
    }
  }

  /**
   * A check that tests a cause.
   *
   * @param moved by how much the chance of the cause changes on average, 0 to 1
   */
  public record Settling(Open open, double moved) {}

  private Open open(String id, Optional<Double> saves) {
    Check check = base.checks().get(id);
    List<SetUp> enter =
        expertise.planner().change(moment.state().work().setUps(), check.needs()).enter().stream()
            .map(base.setUps()::get)
            .toList();
    return new Open(check, saves, enter);
  }

  public List<Open> all() {
    return List.copyOf(all);
  }

  /** How many of them bear on anything now: they come first. */
  public int paying() {
    return (int) all.stream().filter(OpenChecks::pays).count();
  }

  private static boolean pays(Open open) {
    return open.saves().filter(saves -> saves > 0).isPresent();
  }

  /** Those that pay, the most useful first; then the others, by place as one walks. */
  public List<Open> inOrder() {
    List<String> places = Place.all().stream().map(Place::id).toList();
    return Stream.concat(
            all.stream().filter(OpenChecks::pays),
            all.stream()
                .filter(o -> !pays(o))
                .sorted(
                    Comparator.comparingInt(
                        o -> o.check().place().map(p -> places.indexOf(p.id())).orElse(99))))
        .toList();
  }

  public boolean findingOut() {
    return findingOut;
  }

  /** The check that changes the chance of a cause most; empty if none changes it enough. */
  public Optional<Settling> settling(String cause) {
    Belief belief = moment.belief();
    int c = belief.model().indexOf(cause);
    double now = belief.atCallOut()[c];
    return all.stream()
        .filter(o -> o.saves().isPresent() || o.check().likelihood().containsKey(cause))
        .map(
            o ->
                new Settling(
                    o,
                    Prospects.of(belief, o.check(), Optional.empty()).stream()
                        .mapToDouble(p -> p.chance() * Math.abs(p.then()[c] - now))
                        .sum()))
        .filter(s -> s.moved() >= WORTH_ASKING * now)
        .max(Comparator.comparingDouble(Settling::moved));
  }
}
