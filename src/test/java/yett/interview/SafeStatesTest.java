package yett.interview;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Planner;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Safety is looked for over the states that can be reached, the nearest first, not over random
 * cases: see {@link SafeStates} for what counts as a state and {@link Invariants} for what holds in
 * each.
 */
class SafeStatesTest {
  /** So many states are followed from each beginning, the nearest first. */
  private static final int MOST = Size.of(400, 150_000);

  /** Enough to come to what was unsafe before. */
  private static final int ENOUGH = 3_000;

  /** Everything up to the first check, nothing dangerous. */
  private static List<Event> begun(Event... then) {
    List<Event> events = new ArrayList<>();
    Shipped.BASE
        .ordinaryChecks()
        .filter(Check::danger)
        .forEach(
            c ->
                events.add(
                    new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    for (String fitted : List.of("beams", "edges", "loops")) { // fewer proofs, the same states
      events.add(new Event.SiteAnswered(fitted, "none"));
    }
    events.add(new Event.SiteTaken());
    events.add(new Event.Complained(List.of("slow")));
    events.add(new Event.Pressed(List.of()));
    events.add(new Event.Happened(List.of()));
    events.addAll(List.of(then));
    return events;
  }

  private static Event saw(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  @ParameterizedTest
  @EnumSource(Role.class)
  void nothing_unsafe_can_be_reached_by_anybody(Role role) {
    SafeStates states = new SafeStates(Shipped.QUICK);
    assertThat(states.explore(role, begun(), MOST)).isEmpty();
    assertThat(states.states()).isGreaterThan(400);
  }

  /** Faults that forbid running: the chain off, a wrong tap, a leaf that leans, loose anchors. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "chain-looks parted",
        "supply-setting wrong",
        "end-stop-look shifted",
        "anchor-bolts pulled-out",
        "pushes-seen pushes-on"
      })
  void nothing_unsafe_can_be_reached_with_a_known_fault(String fault) {
    String[] words = fault.split(" ");
    SafeStates states = new SafeStates(Shipped.QUICK);
    assertThat(states.explore(Role.TECHNICIAN, begun(saw(words[0], words[1])), MOST)).isEmpty();
    assertThat(states.states()).isGreaterThan(400);
  }

  /** What only somebody else may end, or is no stop of the work. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "danger-person hurt-or-trapped",
        "danger-shock shock",
        "danger-fire fire",
        "danger-shut-in needs-help",
        "danger-shut-in no-help"
      })
  void nothing_unsafe_can_be_reached_after_a_danger(String danger) {
    String[] words = danger.split(" ");
    for (Role role : List.of(Role.CALLER, Role.TECHNICIAN, Role.ELECTRICIAN)) {
      SafeStates states = new SafeStates(Shipped.QUICK);
      assertThat(states.explore(role, begun(saw(words[0], words[1])), MOST / 2)).isEmpty();
      assertThat(states.states()).isGreaterThan(10);
    }
  }

  /** Whoever comes, and says that nobody is hurt or caught any more. */
  @ParameterizedTest
  @EnumSource(Role.class)
  void nobody_works_where_somebody_was_hurt_before_the_scene_is_released(Role role) {
    List<Event> events = begun(saw("danger-person", "hurt-or-trapped"), new Event.DangersAgain());
    Shipped.BASE
        .ordinaryChecks()
        .filter(c -> c.danger() && c.who() == Role.CALLER)
        .forEach(c -> events.add(saw(c.id(), c.outcomes().get(0).id())));
    SafeStates states = new SafeStates(Shipped.QUICK);
    assertThat(states.explore(role, events, MOST / 2)).isEmpty();
    assertThat(states.states()).isGreaterThan(4);
  }

  /** What was so before comes to light when it is put back. */
  @Test
  void a_leaf_that_may_be_released_under_power_is_found() {
    RuleBase loose =
        altered(
            "safety/set-ups.yaml",
            "within: [locked-off]\nexcludes: [gate-running]",
            "excludes: [gate-running]");
    SafeStates states = new SafeStates(quick(loose));
    assertThat(states.explore(Role.TECHNICIAN, begun(), ENOUGH).get(0))
        .contains("the leaf is released and power is on");
  }

  @Test
  void a_gate_that_is_switched_on_again_at_the_hand_over_is_found() {
    RuleBase before = altered("safety/set-ups.yaml", "set-up: " + SetUp.OUT_OF_USE, "set-up: left");
    SafeStates states = new SafeStates(quick(before));
    assertThat(states.explore(Role.TECHNICIAN, begun(), ENOUGH).get(0)).contains("left as it is");
  }

  private static RuleBase altered(String file, String text, String other) {
    Map<String, String> texts =
        new LinkedHashMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    assertThat(texts.get(file)).contains(text);
    texts.put(file, texts.get(file).replace(text, other));
    return RuleBase.read(() -> new TreeMap<>(texts));
  }

  private static Expertise quick(RuleBase base) {
    return new Expertise(base, Shipped.QUICK.rules(), Shipped.QUICK.model(), new Planner(base));
  }
}
