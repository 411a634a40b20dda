package yett.interview.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yett.interview.course.Interview;
import yett.interview.course.RandomCase;
import yett.interview.course.SafeStates;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.interview.watch.SafetyWatch;
import yett.interview.watch.Watches;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.rules.Interpretation;
import yett.testing.Shipped;
import yett.testing.Size;

class InspectionTest {
  /** What may be typed at a usual gate: more and nobody inspects with a computer in hand. */
  private static final int MOST_ENTRIES = 60;

  /**
   * A new gate is not run before all is seen, so its cover comes off twice; and what needs power is
   * looked at by itself, after all that needs none.
   */
  private static final int MOST_WHEN_NEW = 66;

  private final List<Entry> entries = new ArrayList<>();

  @ParameterizedTest
  @EnumSource
  void a_usual_gate_takes_few_entries_and_nothing_is_asked_twice(InspectionKind kind) {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      int typed = inspect(interview, kind, Map.of());
      assertThat(typed)
          .isLessThanOrEqualTo(kind == InspectionKind.COMMISSIONING ? MOST_WHEN_NEW : MOST_ENTRIES);
      assertThat(state().closed()).contains(Ending.INSPECTED);
      Inspection inspection = inspection(interview);
      assertThat(inspection.results(Verdict.FAIL)).isEmpty();
      assertThat(inspection.results(Verdict.OPEN))
          .as("what a technician may do is done")
          .allMatch(r -> r.check().who() == Role.ELECTRICIAN);
      assertThat(inspection.results(Verdict.PASS)).hasSizeGreaterThan(50);
    }
  }

  /** What is looked at once, before the operator is mounted. */
  @Test
  void a_new_gate_has_its_pad_and_conduits_inspected_and_a_serviced_one_does_not() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      for (InspectionKind kind : InspectionKind.values()) {
        entries.clear();
        say(new Event.Opened("any", Role.TECHNICIAN, "any", Optional.of(kind), List.of()));
        assertThat(inspection(interview).results())
            .extracting(r -> r.check().id())
            .filteredOn(List.of("pad-as-drawn", "conduits")::contains)
            .hasSize(kind == InspectionKind.COMMISSIONING ? 2 : 0);
      }
    }
  }

  @Test
  void a_new_gate_is_run_only_after_all_that_can_be_seen_and_measured_while_it_stands() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.COMMISSIONING, Map.of());
      List<String> asked =
          entries.stream()
              .filter(e -> e.event() instanceof Event.Answered)
              .map(e -> ((Event.Answered) e.event()).check())
              .toList();
      int first = asked.indexOf("stop-button-works");
      assertThat(asked.subList(0, first))
          .contains("battery-wiring-look", "bypass-look")
          .doesNotContain("battery-running-voltage", "opens-which-way");
      assertThat(asked.indexOf("opens-which-way"))
          .isBetween(first, asked.indexOf("battery-running-voltage"));
    }
  }

  /** Its earth and the setting for its supply are seen before anything is read under power. */
  @Test
  void what_needs_a_new_gate_dead_comes_before_what_needs_it_powered() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.COMMISSIONING, Map.of());
      List<Set<String>> needs =
          entries.stream()
              .filter(e -> e.event() instanceof Event.Answered)
              .map(e -> Shipped.BASE.checks().get(((Event.Answered) e.event()).check()))
              .filter(c -> c.kind() == Check.Kind.CHECK && !c.danger())
              .map(c -> Set.copyOf(c.needs()))
              .toList();
      int powered = first(needs, Set.of(SetUp.POWERED, SetUp.COVER_OFF));
      assertThat(needs.subList(0, powered)).anyMatch(n -> n.contains(SetUp.LOCKED_OFF));
      assertThat(needs.subList(powered, needs.size())).noneMatch(n -> n.contains(SetUp.LOCKED_OFF));
    }
  }

  private static int first(List<Set<String>> needs, Set<String> any) {
    return IntStream.range(0, needs.size())
        .filter(i -> needs.get(i).stream().anyMatch(any::contains))
        .findFirst()
        .orElseThrow();
  }

  /** An operator is looked at before it is opened: its earth, its release, what lives in it. */
  @ParameterizedTest
  @EnumSource
  void what_can_be_seen_as_the_gate_stands_comes_before_any_set_up(InspectionKind kind) {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, kind, Map.of());
      List<Event> events = entries.stream().map(Entry::event).toList();
      int entered =
          events.indexOf(
              events.stream().filter(Event.SetUpEntered.class::isInstance).findFirst().get());
      assertThat(events.subList(0, entered))
          .filteredOn(Event.Answered.class::isInstance)
          .extracting(e -> ((Event.Answered) e).check())
          .contains("breaker-position", "end-stop-look", "chain-looks");
    }
  }

  @Test
  void a_set_up_is_entered_once_each() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.SERVICE, Map.of());
      List<String> entered =
          entries.stream()
              .filter(e -> e.event() instanceof Event.SetUpEntered)
              .map(e -> ((Event.SetUpEntered) e.event()).setUp())
              .toList();
      assertThat(entered).doesNotHaveDuplicates().contains(SetUp.LOCKED_OFF, SetUp.GATE_RUNNING);
    }
  }

  /** Whoever watches the other runs relies on it; runs in the open operator are work inside. */
  @ParameterizedTest
  @EnumSource
  void the_stop_button_is_proved_before_any_other_run_with_the_covers_on(InspectionKind kind) {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, kind, Map.of());
      assertThat(runs()).hasSizeGreaterThan(5).startsWith("stop-button-works");
    }
  }

  private List<String> runs() {
    return entries.stream()
        .filter(e -> e.event() instanceof Event.Answered)
        .map(e -> ((Event.Answered) e.event()).check())
        .filter(id -> SafeStates.runs(Shipped.BASE.checks().get(id).needs()))
        .filter(id -> Shipped.BASE.checks().get(id).needs().contains(SetUp.COVERS_ON))
        .toList();
  }

  @Test
  void after_a_stop_button_that_fails_the_gate_is_not_run_again() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.SERVICE, Map.of("stop-button-works", Check.FAIL));
      assertThat(state().closed()).contains(Ending.OUT_OF_SERVICE);
      assertThat(runs()).containsExactly("stop-button-works");
    }
  }

  @Test
  void a_failed_proof_leaves_the_gate_out_of_use_and_all_else_is_still_inspected() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.SERVICE, Map.of("edge-reverses", Check.FAIL));
      assertThat(state().closed()).contains(Ending.OUT_OF_SERVICE);
      assertThat(state().work().setUps()).contains(SetUp.LOCKED_OFF, SetUp.OUT_OF_USE);
      assertThat(inspection(interview).results(Verdict.FAIL))
          .extracting(r -> r.check().id())
          .containsExactly("edge-reverses");
    }
  }

  @Test
  void what_is_dirty_is_a_remark_what_is_bent_fails_and_words_make_a_remark_of_what_passed() {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.SERVICE, Map.of("track-look", "dirty"));
      say(new Event.Noted("a little sand at the far end", Optional.of("chain-looks")));
      Inspection inspection = inspection(interview);
      assertThat(inspection.result("track-look").orElseThrow().verdict()).isEqualTo(Verdict.REMARK);
      assertThat(inspection.result("chain-looks").orElseThrow().verdict())
          .isEqualTo(Verdict.REMARK);
      assertThat(state().closed()).contains(Ending.INSPECTED);
    }
    entries.clear();
    try (Interview interview = Shipped.QUICK.newInterview()) {
      inspect(interview, InspectionKind.SERVICE, Map.of("track-look", "bent"));
      assertThat(inspection(interview).result("track-look").orElseThrow().verdict())
          .isEqualTo(Verdict.FAIL);
    }
  }

  /** Whoever takes it up after the program was killed is asked what would have been asked. */
  @Test
  void an_inspection_that_is_cut_off_anywhere_goes_on_there() {
    try (Interview along = Shipped.QUICK.newInterview()) {
      inspect(along, InspectionKind.SERVICE, Map.of());
      List<Entry> all = List.copyOf(entries);
      for (int cut = 3; cut < all.size(); cut += 9) {
        List<Entry> left = all.subList(0, cut);
        try (Interview fresh = Shipped.QUICK.newInterview()) {
          assertThat(fresh.at(left).step().card()).isEqualTo(along.at(left).step().card());
        }
      }
    }
  }

  @Test
  void nothing_unsafe_comes_up_and_a_gate_passes_only_with_every_proof() {
    int stopped = 0;
    try (Interview interview = Shipped.QUICK.newInterview()) {
      for (long seed = 1; seed <= Size.of(12, 120); seed++) {
        SafetyWatch watch = new SafetyWatch(Shipped.BASE);
        List<Role> roles =
            seed % 4 == 0 ? List.of(Role.TRAINEE) : List.of(Role.TECHNICIAN, Role.ELECTRICIAN);
        InspectionKind kind = seed % 2 == 0 ? InspectionKind.SERVICE : InspectionKind.COMMISSIONING;
        List<Entry> played = new RandomCase(interview, seed, roles, Optional.of(kind)).play(watch);
        stopped += Watches.sawStop(watch) ? 1 : 0;
        Optional<Ending> ending = CaseState.of(played).closed();
        assertThat(ending).isPresent();
        assertThat(Watches.sawClosedAsRepaired(watch)).isEqualTo(ending.get() == Ending.INSPECTED);
      }
    }
    assertThat(stopped).isPositive();
  }

  /** Goes through a usual gate with ordinary answers, all but these, and counts what is typed. */
  private int inspect(Interview interview, InspectionKind kind, Map<String, String> other) {
    SafetyWatch watch = new SafetyWatch(Shipped.BASE);
    Set<String> asked = new HashSet<>();
    Set<String> known = new HashSet<>();
    int typed = 0;
    say(
        new Event.Opened(
            "Harrow Quay, north gate", Role.TECHNICIAN, "any", Optional.of(kind), List.of()));
    while (true) {
      Moment moment = interview.at(entries);
      watch.accept(moment, Role.TECHNICIAN);
      Step step = moment.step();
      if (step instanceof Step.Finished) {
        return typed;
      }
      typed++;
      if (step instanceof Step.AskDangers s) {
        s.dangers().forEach(d -> say(ordinary(moment, d, other)));
      } else if (step instanceof Step.AskSite) {
        say(new Event.SiteTaken());
      } else if (step instanceof Step.LookRound s) {
        s.looks().forEach(l -> assertThat(asked.add(l.card())).as(l.card()).isTrue());
        s.looks().forEach(l -> say(ordinary(moment, l.check(), other)));
      } else if (step instanceof Step.Ask s) {
        assertThat(asked.add(s.card())).as(s.card()).isTrue();
        say(ordinary(moment, s.check(), other));
      } else if (step instanceof Step.Enter s) {
        typed += known.add(s.setUp().id()) ? 1 : 0; // the cautions are read by themselves
        say(s.done());
      } else if (step instanceof Step.Leave s) {
        say(s.done());
      } else if (step instanceof Step.CloseRepaired s) {
        say(new Event.Closed(s.ending()));
      } else {
        say(new Event.Closed(((Step.HandOver) step).ending()));
      }
    }
  }

  private static Event ordinary(Moment moment, Check check, Map<String, String> other) {
    if (!check.measured()) {
      String usual = check.outcomes().get(0).id();
      return new Event.Answered(
          check.id(), new Answer.Chosen(other.getOrDefault(check.id(), usual)));
    }
    double[] ends = Interpretation.range(check, 0, moment.judgement().expectation(check.id()));
    double low = Math.max(ends[0], check.measures().orElseThrow().least());
    double high = Math.min(ends[1], check.measures().orElseThrow().most());
    double value =
        check.id().equals("battery-running-voltage") ? low + 0.5 : (low + high) / 2; // sags a bit
    return new Event.Answered(
        check.id(), new Answer.Read(check.measures().orElseThrow().show(value), value));
  }

  private Inspection inspection(Interview interview) {
    return Inspection.of(Shipped.BASE, interview.at(entries)).orElseThrow();
  }

  private CaseState state() {
    return CaseState.of(entries);
  }

  private void say(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }
}
