package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.AddOn;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Planner;
import yett.rules.RuleCache;
import yett.rules.RuleEngine;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Safety is looked for over all states that can be reached, not over random cases: see {@link
 * SafeStates} for what counts as a state and {@link Invariants} for what holds in each.
 */
class SafeStatesTest {
  private static final Set<Role> ALL = EnumSet.allOf(Role.class);

  /** Enough to come to what is unsafe when it is put in. */
  private static final int ENOUGH = 20_000;

  /** Of the proofs the one for which the leaf is released: a fault may keep it from being made. */
  @Test
  void nothing_unsafe_can_be_reached_with_any_danger_or_known_fault() {
    explore(few(Shipped.QUICK, 1, Map.of(), RELEASE, false, false), NEAR);
  }

  /** To its end in every run. */
  @Test
  void nothing_unsafe_can_be_reached_with_every_kind_of_proof() {
    explore(few(Shipped.QUICK, 0, Map.of(), p -> true, true, false), Integer.MAX_VALUE);
  }

  @Test
  void nothing_unsafe_can_be_reached_with_what_repairs_entail() {
    explore(few(Shipped.QUICK, 0, Map.of(), RELEASE, true, true), NEAR);
  }

  /**
   * Whoever may go on after each goes on; what either forbids is forbidden. Of the dangers one of
   * each safe state, and little work: what is done beside one danger is in the first of these.
   */
  @Test
  void nothing_unsafe_can_be_reached_with_two_dangers_at_once() {
    Set<List<String>> work = Set.of(List.of("locked-off"));
    explore(
        new Representatives(
            Shipped.QUICK,
            2,
            Map.of(),
            p -> p.id().equals("usual-run"),
            false,
            false,
            work::contains,
            false),
        NEAR);
  }

  /** Where other cards apply: others may be asked, and fewer prove it. */
  @ParameterizedTest
  @MethodSource
  void nothing_unsafe_can_be_reached_on_another_site(Map<String, String> site) {
    explore(few(Shipped.QUICK, 1, site, RELEASE, false, false), NEAR / 4);
  }

  static Stream<Map<String, String>> nothing_unsafe_can_be_reached_on_another_site() {
    return Stream.of(
        Map.of("batteries", "none"),
        Map.of("supply", "solar", "batteries", "flooded"),
        Map.of("marker", "none", "beams", "none", "edges", "none", "loops", "none"),
        Map.of("support", "cantilever", "leaf-mass", "1000 kg", "grade", "4 %"));
  }

  private static final Predicate<Check> RELEASE = p -> p.id().equals("manual-release-works");

  /** So many in the usual run, where it is not said that all are. */
  private static final int NEAR = 4_000;

  /**
   * To the end in the long run.
   *
   * @param near so many in the usual run
   */
  private static void explore(Representatives few, int near) {
    int most = Size.of(near, Integer.MAX_VALUE);
    try (SafeStates states = new SafeStates(few)) {
      assertThat(states.explore(ALL, most)).isEmpty();
      assertThat(states.isWhole() || states.states() >= most).isTrue();
      assertThat(states.states()).isGreaterThan(Math.min(near, NEAR) / 4);
    }
  }

  @Test
  void a_leaf_that_may_be_released_under_power_is_found() {
    RuleBase loose =
        altered(
            "safety/set-ups.yaml",
            "within: [locked-off]\nexcludes: [gate-running]",
            "excludes: [gate-running]");
    assertThat(first(quick(loose), Role.TECHNICIAN, (state, step) -> step))
        .contains("the leaf is released and power is on");
  }

  @Test
  void a_gate_that_is_tried_with_its_cover_off_is_found() {
    assertThat(
            first(
                Shipped.QUICK,
                Role.TECHNICIAN,
                (state, step) ->
                    step instanceof Step.Leave l
                            && l.setUp().id().equals(SetUp.COVER_OFF)
                            && l.purpose().kind() == Purpose.Kind.TRIAL
                        ? new Step.Retest()
                        : step))
        .contains("the gate runs with its cover off");
  }

  @Test
  void a_gate_that_is_switched_on_again_at_the_hand_over_is_found() {
    RuleBase before = altered("safety/set-ups.yaml", "set-up: " + SetUp.OUT_OF_USE, "set-up: left");
    assertThat(first(quick(before), Role.TECHNICIAN, (state, step) -> step))
        .contains("left as it is");
  }

  @Test
  void a_failed_proof_after_which_it_is_run_under_watch_is_found() {
    assertThat(
            first(
                Shipped.QUICK,
                Role.TECHNICIAN,
                (state, step) ->
                    step instanceof Step.DecideFailedProof
                            && state.work().setUps().contains(SetUp.GATE_RUNNING)
                        ? new Step.Retest()
                        : step))
        .contains("failed, and the gate is run before anything was mended");
  }

  @Test
  void hands_that_go_in_before_dead_is_proved_are_found() {
    RuleBase base = Shipped.BASE;
    assertThat(
            first(
                Shipped.QUICK,
                Role.TECHNICIAN,
                (state, step) ->
                    step instanceof Step.Enter e
                            && e.setUp().id().equals("locked-off")
                            && e.purpose().kind() == Purpose.Kind.REPAIR
                        ? new Step.Mend(
                            base.repairs().get(e.purpose().card()),
                            base.cautionsFor(base.repairs().get(e.purpose().card()).hazards()),
                            java.util.Optional.empty(),
                            Occasion.of(Occasion.Kind.WORTH))
                        : step))
        .contains("locked-off is not in force");
  }

  @Test
  void a_caller_who_runs_a_gate_whose_chain_may_be_off_is_found() {
    AddOn off =
        new AddOn(
            "off",
            "Off",
            "off/",
            List.of(),
            List.of(),
            List.of("rule a caller does not run a gate whose chain may be off"));
    // The chain is then no longer looked at before all else either.
    RuleBase base = altered("use/complaints.yaml", "look-first: chain-looks\n", "");
    RuleBase without = base.ruledBy(base.rules(), base.tables(), List.of(off));
    assertThat(first(quick(without), Role.CALLER, (state, step) -> step))
        .contains("a caller runs a gate whose chain may be off");
  }

  /** That the motor is cut off is enough where the gate moved by itself, and nowhere else. */
  @Test
  void a_gate_that_gives_a_shock_and_is_opened_under_power_is_found() {
    RuleBase before =
        altered(
            "safety/stops.yaml",
            "leaves: isolated\ngoes-on: electrician",
            "leaves: motor-off\ngoes-on: electrician");
    assertThat(first(quick(before), 1, Role.ELECTRICIAN, (state, step) -> step))
        .contains("a danger forbids it, and power is on");
  }

  private static String first(
      Expertise expertise, Role role, BiFunction<CaseState, Step, Step> defect) {
    return first(expertise, 0, role, defect);
  }

  private static String first(
      Expertise expertise, int atOnce, Role role, BiFunction<CaseState, Step, Step> defect) {
    Set<String> proofs = Set.of("manual-release-works", "reversal-closing");
    Representatives few =
        few(expertise, atOnce, Map.of(), p -> proofs.contains(p.id()), true, false);
    try (SafeStates states = new SafeStates(few, defect)) {
      List<String> found = states.explore(Set.of(role), ENOUGH);
      assertThat(found).isNotEmpty();
      return found.get(0);
    }
  }

  private static Representatives few(
      Expertise expertise,
      int atOnce,
      Map<String, String> site,
      Predicate<Check> proofs,
      boolean failing,
      boolean entailing) {
    return new Representatives(
        expertise, atOnce, site, proofs, failing, entailing, needs -> true, true);
  }

  private static RuleBase altered(String file, String text, String other) {
    Map<String, String> texts =
        new LinkedHashMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    assertThat(texts.get(file)).contains(text);
    texts.put(file, texts.get(file).replace(text, other));
    return RuleBase.read(() -> new TreeMap<>(texts));
  }

  private static Expertise quick(RuleBase base) {
    RuleEngine rules = RuleEngine.of(base, new RuleCache(Path.of("target/rule-cache")));
    return new Expertise(base, rules, Shipped.QUICK.model(), new Planner(base));
  }
}
