package yett.interview.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What is asked of a caller, by the cards and the plan as they are. */
class CallPolicyTest {
  private final List<Entry> entries = new ArrayList<>();

  static List<String> complaints() {
    return Shipped.BASE.complaints().stream()
        .filter(c -> Role.CALLER.may(c.who()))
        .map(Check::id)
        .toList();
  }

  /** Whatever is complained of. */
  private String unsure = "";

  @ParameterizedTest
  @MethodSource("complaints")
  void who_can_tell_nothing_is_asked_at_most_five_questions(String complaint) {
    assertThat(complaints()).hasSizeGreaterThan(30);
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      assertThat(asked(interview, complaint, Map.of())).hasSizeLessThanOrEqualTo(5);
      assertThat(interview.at(entries, Role.CALLER).step()).isInstanceOf(Step.HandOver.class);
    }
  }

  /** The commonest thing that a caller puts right. */
  @ParameterizedTest
  @ValueSource(strings = {"", "none", "agm"})
  void breaker_switch_and_plug_come_among_the_first_three_at_a_dead_gate(String batteries) {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      Map<String, String> site = batteries.isEmpty() ? Map.of() : Map.of("batteries", batteries);
      assertThat(asked(interview, "does-nothing", site).subList(0, 3)).contains("breaker-position");
    }
  }

  /** It spares whoever goes the search, though the caller switches nothing on. */
  @Test
  void the_breaker_is_looked_at_though_a_danger_is_not_excluded() {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      unsure = "danger-conductors";
      assertThat(asked(interview, "does-nothing", Map.of()))
          .contains("breaker-position")
          .allMatch(c -> !Shipped.BASE.checks().get(c).needs().contains("able-to-run"));
    }
  }

  @Test
  void where_there_is_no_mains_no_breaker_is_asked_after() {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      assertThat(asked(interview, "does-nothing", Map.of("supply", "solar")))
          .isNotEmpty()
          .doesNotContain("breaker-position");
    }
  }

  /** A stop button is pressed, and no command does anything; the rest is as it should be. */
  @Test
  void what_costs_nothing_is_tried_before_somebody_is_sent() {
    Map<String, String> dead = Map.of("which-commands", "all-fail", "which-side", "both-fail");
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      open("stays-shut", Map.of());
      say(new Event.Answered("stop-button-look", new Answer.Chosen("pressed-or-broken")));
      while (interview.at(entries, Role.CALLER).step() instanceof Step.Ask step) {
        String id = step.check().id();
        String ordinary = step.check().outcomes().get(0).id();
        say(new Event.Answered(id, new Answer.Chosen(dead.getOrDefault(id, ordinary))));
      }
      assertThat(interview.at(entries, Role.CALLER).step())
          .isInstanceOfSatisfying(
              Step.Mend.class,
              m -> {
                assertThat(m.repair().id()).isEqualTo("release-stop-button");
                assertThat(m.occasion().kind()).isEqualTo(Occasion.Kind.LAST_TRY);
              });
      say(new Event.Repaired("release-stop-button", true));
      say(new Event.Retested(false));
      assertThat(interview.at(entries, Role.CALLER).step()).isNotInstanceOf(Step.Mend.class);
    }
  }

  /** A try tells more than further questions. */
  @Test
  void what_somebody_keeps_open_is_let_go_at_once() {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      open("stays-open", Map.of());
      say(new Event.Answered("timer-or-schedule", new Answer.Chosen("meant")));
      assertThat(interview.at(entries, Role.CALLER).step())
          .isInstanceOfSatisfying(
              Step.Mend.class, m -> assertThat(m.repair().id()).isEqualTo("end-hold-open"));
    }
  }

  /** A switch that was found to hold the gate is let go before anything else is asked. */
  @ParameterizedTest
  @ValueSource(strings = {"stays-open", "stays-shut"})
  void a_switch_that_was_found_to_hold_it_is_put_back_at_once(String complaint) {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      open(complaint, Map.of());
      say(new Event.Answered("held-devices", new Answer.Chosen("one")));
      assertThat(interview.at(entries, Role.CALLER).step())
          .isInstanceOfSatisfying(
              Step.Ask.class, a -> assertThat(a.check().id()).isEqualTo("which-held"));
      say(new Event.Answered("which-held", new Answer.Chosen("hold")));
      List<String> asked = new ArrayList<>();
      while (interview.at(entries, Role.CALLER).step() instanceof Step.Ask step) {
        asked.add(step.check().id());
        say(
            new Event.Answered(
                step.check().id(), new Answer.Chosen(step.check().outcomes().get(0).id())));
      }
      assertThat(asked).hasSizeLessThanOrEqualTo(1);
      assertThat(interview.at(entries, Role.CALLER).step()).isInstanceOf(Step.Mend.class);
    }
  }

  /** The commonest fault that a caller puts right: somebody pressed the stop button. */
  @Test
  void a_stop_button_that_is_in_is_let_out_before_anything_else_is_asked() {
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      open("does-nothing", Map.of());
      say(new Event.Answered("held-devices", new Answer.Chosen("one")));
      say(new Event.Answered("which-held", new Answer.Chosen("stop-button")));
      assertThat(interview.at(entries, Role.CALLER).step())
          .isInstanceOfSatisfying(
              Step.Mend.class, m -> assertThat(m.repair().id()).isEqualTo("release-stop-button"));
    }
  }

  /** What is asked of somebody who can tell nothing. */
  private List<String> asked(Interview interview, String complaint, Map<String, String> site) {
    open(complaint, site);
    List<String> asked = new ArrayList<>();
    while (interview.at(entries, Role.CALLER).step() instanceof Step.Ask step) {
      asked.add(step.check().id());
      say(new Event.Answered(step.check().id(), new Answer.CannotTell()));
    }
    return asked;
  }

  /** Up to the first question about the fault. */
  private void open(String complaint, Map<String, String> site) {
    entries.clear();
    say(new Event.Opened("Harrow Quay, north gate", Role.CALLER, "any"));
    Shipped.BASE
        .ordinaryChecks()
        .filter(Check::danger)
        .filter(d -> Role.CALLER.may(d.who()))
        .forEach(
            d ->
                say(
                    new Event.Answered(
                        d.id(),
                        d.id().equals(unsure)
                            ? new Answer.CannotTell()
                            : new Answer.Chosen(d.outcomes().get(0).id()))));
    site.forEach((question, answer) -> say(new Event.SiteAnswered(question, answer)));
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of(complaint)));
    say(new Event.Pressed(List.of()));
    say(new Event.Happened(List.of()));
  }

  private void say(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.CALLER, event));
  }
}
