package yett.interview.inspection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.moment.Present;
import yett.interview.proof.Proofs;
import yett.interview.setup.SetUpSteps;
import yett.interview.site.SiteFacts;
import yett.interview.step.HandOverReason;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Place;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.plan.Planner;

/**
 * Chooses the next step of an inspection: the remaining checks, place by place, then the closing.
 */
public final class InspectionSteps {
  private final Present present;
  private final SetUpSteps steps;
  private final Planner planner;
  private final InspectionItems items;
  private final List<Check> all;
  private final List<Check> proofs;

  /** The steps of this inspection, with the items that belong to it. */
  public InspectionSteps(
      Present present, SiteFacts sites, InspectionItems items, Planner planner, SetUpSteps steps) {
    this.present = present;
    this.steps = steps;
    this.planner = planner;
    this.items = items;
    var site = present.state().told().site();
    this.all = items.of(present.state().inspection().orElseThrow(), sites.site(site));
    this.proofs = sites.proofs(site);
  }

  /** The next step; once all is checked, the closing or the hand-over. */
  public Step step() {
    List<Check> due = all.stream().filter(c -> isDue(c, false)).toList();
    List<Check> left = due.isEmpty() ? all.stream().filter(c -> isDue(c, true)).toList() : due;
    return wished().or(() -> next(left)).orElseGet(this::ending);
  }

  private Optional<Step> wished() {
    return present
        .state()
        .work()
        .askedFor()
        .map(present.base().checks()::get)
        .filter(c -> c != null && !c.danger() && isDue(c, true))
        .map(c -> steps.ask(c, Optional.empty(), Occasion.of(Occasion.Kind.ASKED_FOR)));
  }

  /** Whether a check has still to be made, by this person and in the present state of the gate. */
  private boolean isDue(Check check, boolean alsoPutOff) {
    Optional<Answer> answer = present.answerAfter(since(check), check.id());
    return present.isOpenTo(check)
        && !present.isHopeless(check.id())
        && answer.map(a -> alsoPutOff && a.putOff()).orElse(true)
        && mayBeBroughtAbout(check);
  }

  /**
   * The event from which proofs count: what passed before a danger is proved again, also when the
   * danger is over.
   */
  private long since(Check check) {
    return check.kind() == Check.Kind.PROOF
        ? Proofs.lastDanger(present.base(), present.state())
        : 0;
  }

  private boolean mayBeBroughtAbout(Check check) {
    return present.base().withOuter(List.copyOf(needs(check))).stream()
        .allMatch(
            id -> {
              SetUp setUp = present.base().setUps().get(id);
              return setUp != null && present.role().may(setUp.who()) && !present.isForbidden(id);
            });
  }

  private Optional<Step> next(List<Check> left) {
    if (left.isEmpty()) {
      return Optional.empty();
    }
    Map<Key, List<Check>> stages = new LinkedHashMap<>();
    left.forEach(c -> stages.computeIfAbsent(key(c), n -> new ArrayList<>()).add(c));
    return Optional.of(at(begun(stages).orElseGet(() -> nearest(stages))));
  }

  /** The checks for which a set-up was just entered or left. */
  private Optional<List<Check>> begun(Map<Key, List<Check>> stages) {
    String intent = present.state().work().intent().orElse("");
    return stages.values().stream()
        .filter(checks -> checks.stream().anyMatch(c -> c.id().equals(intent)))
        .findFirst();
  }

  private List<Check> nearest(Map<Key, List<Check>> stages) {
    List<InspectionOrder.Stage> all =
        stages.entrySet().stream()
            .map(e -> new InspectionOrder.Stage(needs(e.getValue()), e.getKey().rank()))
            .toList();
    int next =
        new InspectionOrder(present.base(), planner, all).next(present.state().work().setUps());
    return List.copyOf(stages.values()).get(next);
  }

  /**
   * The set-ups that a check needs in an inspection: a look at a running gate needs a run under
   * watch.
   */
  private Collection<String> needs(Check check) {
    List<String> all = new ArrayList<>(check.needs());
    check.place().ifPresent(p -> all.addAll(p.needs()));
    return steps.needs(all);
  }

  private List<String> needs(List<Check> checks) {
    return checks.stream().flatMap(c -> needs(c).stream()).distinct().toList();
  }

  /**
   * Checks with one key are made together.
   *
   * @param entered set-ups in force, without conditions
   * @param rank checks of a lower rank come first
   */
  private record Key(Set<String> entered, int rank) {}

  private static final int STANDING = 0;

  /** On a new gate only: its earth and the setting for its supply are seen before it has power. */
  private static final int POWERED = 1;

  private static final int FIRST_RUN = 2;
  private static final int RUNNING_INSIDE = 3;

  /** The check shows the gate as its users have it, so it comes after all work inside. */
  private static final int LAST = 4;

  private Key key(Check check) {
    Set<String> needed = Set.copyOf(needs(check));
    Set<String> entered = new HashSet<>(needed);
    entered.removeIf(n -> present.base().setUps().get(n).isCondition());
    boolean running = entered.equals(Set.of(SetUp.GATE_RUNNING));
    boolean proof = check.kind() == Check.Kind.PROOF;
    return new Key(
        entered, running || proof && entered.isEmpty() ? lastOrFirst(check) : inside(needed));
  }

  /** A new gate is first run to see that it stops and that it opens the right way. */
  private int lastOrFirst(Check check) {
    return isNew() && Proofs.FIRST_RUN.contains(check.id()) ? FIRST_RUN : LAST;
  }

  private int inside(Set<String> needed) {
    if (!isNew()) {
      return STANDING;
    }
    boolean runs = needed.contains(SetUp.GATE_RUNNING) || needed.contains(SetUp.ABLE_TO_RUN);
    boolean powered = needed.contains(SetUp.COVER_OFF) || needed.contains(SetUp.POWERED);
    return runs ? RUNNING_INSIDE : powered ? POWERED : STANDING;
  }

  private boolean isNew() {
    return present.state().inspection().equals(Optional.of(InspectionKind.COMMISSIONING));
  }

  /**
   * The looks at the first place on one page, or the first measurement; of a running gate its stop
   * button before all else.
   */
  private Step at(List<Check> stage) {
    Optional<Check> stop =
        stage.stream().filter(c -> c.id().equals(Proofs.STOP_BUTTON)).findFirst();
    if (stop.isPresent()) {
      return asked(stop.get());
    }
    Place place = items.place(stage.get(0));
    List<Check> here = stage.stream().filter(c -> items.place(c).equals(place)).toList();
    List<Step.Ask> looks = new ArrayList<>();
    for (Check check : here) {
      if (isLook(check)) {
        List<Step.Ask> more = new ArrayList<>(looks);
        more.add(question(check));
        if (Step.LookRound.isOnePage(more)) {
          looks = more;
        }
      }
    }
    if (looks.size() > 1) {
      return steps.look(place, looks, needs(looks.stream().map(Step.Ask::check).toList()));
    }
    Check first = here.stream().filter(InspectionSteps::isLook).findFirst().orElse(here.get(0));
    return asked(first);
  }

  private Step asked(Check check) {
    return steps.ask(check, List.copyOf(needs(check)), Optional.empty(), occasion(check));
  }

  private static boolean isLook(Check check) {
    return !check.measured() && check.kind() == Check.Kind.CHECK;
  }

  private Step.Ask question(Check check) {
    return steps.question(check, Optional.empty(), occasion(check));
  }

  private static Occasion occasion(Check check) {
    return Occasion.of(
        check.kind() == Check.Kind.PROOF ? Occasion.Kind.PROOF : Occasion.Kind.INSPECTION);
  }

  /** The closing. A gate with a proof that has not passed is out of use until it passes. */
  private Step ending() {
    List<Stop> stops =
        present.judgement().stops().stream()
            .map(s -> present.base().stops().get(s.stop()))
            .distinct()
            .toList();
    List<Check> open =
        proofs.stream()
            .filter(
                p -> present.answerAfter(since(p), p.id()).filter(a -> a.is(Check.PASS)).isEmpty())
            .toList();
    if (!stops.isEmpty()) {
      return outOfUse(new HandOverReason.Stopped(stops));
    }
    return open.isEmpty()
        ? steps.backInUse(Ending.INSPECTED)
        : outOfUse(new HandOverReason.Unproved(open));
  }

  private Step outOfUse(HandOverReason because) {
    return steps.leftOutOfUse(new Step.HandOver(Ending.OUT_OF_SERVICE, because));
  }
}
