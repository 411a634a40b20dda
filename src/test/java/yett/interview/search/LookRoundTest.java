package yett.interview.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.desk.Undo;
import yett.interview.course.Advised;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.interview.watch.UnsafeStep;
import yett.interview.watch.Watches;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Telling;
import yett.testing.Advices;
import yett.testing.Shipped;

/** Which looks are made in one round, what holds of it, and that it is no more than its answers. */
class LookRoundTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

  private final List<Entry> entries = new ArrayList<>();
  private Interview interview;
  private Role person = Role.TECHNICIAN;

  @AfterEach
  void close() {
    if (interview != null) {
      interview.close();
    }
  }

  private void begin(String wanted, String... complaints) {
    interview =
        Advised.interview(
            Shipped.QUICK,
            (belief, options) ->
                options.checks().contains(wanted) && !options.cured()
                    ? Advices.asking(wanted)
                    : Advices.nothing());
    say(new Event.Opened("Harrow Quay, north gate", person, "any"));
    ((Step.AskDangers) step()).dangers().forEach(c -> say(ordinary(c)));
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of(complaints)));
    say(new Event.Pressed(List.of()));
    say(new Event.Happened(List.of()));
    confirmSetUps();
  }

  private static Event ordinary(Check check) {
    return new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(0).id()));
  }

  private void confirmSetUps() {
    while (step() instanceof Step.Enter || step() instanceof Step.Leave) {
      say(step() instanceof Step.Enter s ? s.done() : ((Step.Leave) step()).done());
    }
  }

  private void say(Event... events) {
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, at(events), person, event));
    }
  }

  private final List<Event[]> acts = new ArrayList<>();

  /** Events of one act share their instant. */
  private Instant at(Event[] act) {
    if (!acts.contains(act)) {
      acts.add(act);
    }
    return NOW.plusSeconds(acts.indexOf(act));
  }

  private Moment moment() {
    return interview.at(entries, person);
  }

  private Step step() {
    return moment().step();
  }

  private Step.LookRound round() {
    assertThat(step()).isInstanceOf(Step.LookRound.class);
    return (Step.LookRound) step();
  }

  private List<String> ids() {
    return round().looks().stream().map(Step::card).toList();
  }

  @Test
  void the_look_that_was_chosen_comes_first_and_the_most_telling_of_its_place_follow() {
    begin("alarm-heard", "does-nothing");
    List<String> ids = ids();
    assertThat(ids.get(0)).isEqualTo("alarm-heard");
    List<String> others = ids.subList(1, ids.size());
    List<String> byBits =
        Telling.of(moment().belief(), others).stream().map(Telling.Told::check).toList();
    assertThat(others).isEqualTo(byBits).hasSizeGreaterThan(2).contains("display-lit");
    assertThat(round().looks())
        .allMatch(l -> l.check().place().equals(Optional.of(round().place())));
    assertThat(round().advice()).map(Advice::kind).contains(Advice.Kind.ASK);
  }

  static Stream<String> looks() {
    return Place.all().stream()
        .flatMap(
            p ->
                BASE.checks().values().stream()
                    .filter(c -> c.place().equals(Optional.of(p)))
                    .limit(3))
        .map(Check::id);
  }

  @ParameterizedTest
  @MethodSource("looks")
  void a_round_has_two_to_nine_looks_in_one_state_of_the_work_with_all_their_cautions(String look) {
    begin(look, "does-nothing", "slow");
    if (!(step() instanceof Step.LookRound)) {
      assertThat(step().card()).isIn(look, "");
      return;
    }
    Step.LookRound round = round();
    assertThat(round.looks().size()).isBetween(2, Step.LookRound.MOST);
    assertThat(ids()).doesNotHaveDuplicates();
    assertThat(round.needs()).containsAll(round.place().needs());
    assertThat(moment().state().work().setUps())
        .containsAll(
            round.place().needs().stream()
                .filter(n -> !BASE.setUps().get(n).isCondition())
                .toList());
    for (Step.Ask each : round.looks()) {
      assertThat(round.needs()).containsAll(each.check().needs());
      assertThat(round.cautions()).extracting(Caution::hazard).containsAll(each.check().hazards());
      assertThat(person.may(each.check().who())).isTrue();
    }
  }

  @Test
  void every_place_has_looks_enough_for_a_round() {
    assertThat(Place.all())
        .allSatisfy(
            p ->
                assertThat(BASE.checks().values())
                    .filteredOn(c -> c.place().equals(Optional.of(p)))
                    .hasSizeGreaterThan(1));
  }

  @Test
  void what_was_answered_is_not_looked_at_again() {
    begin("alarm-heard", "does-nothing");
    String second = ids().get(1);
    say(ordinary(BASE.checks().get(second)));
    assertThat(ids()).startsWith("alarm-heard").doesNotContain(second);
  }

  @Test
  void what_was_not_looked_at_is_put_off_and_the_round_is_not_proposed_again() {
    begin("alarm-heard", "does-nothing");
    say(
        ids().stream()
            .map(id -> new Event.Answered(id, new Answer.NotNow()))
            .toArray(Event[]::new));
    assertThat(step()).isInstanceOf(Step.Ask.class); // put off, and nothing else is left
    say(new Event.Answered("alarm-heard", new Answer.NotNow()));
    confirmSetUps();
    assertThat(step()).isInstanceOf(Step.HandOver.class);
  }

  @Test
  void a_caller_is_asked_one_thing_at_a_time() {
    person = Role.CALLER;
    begin("alarm-heard", "does-nothing");
    assertThat(step()).isInstanceOf(Step.Ask.class);
  }

  @ParameterizedTest
  @EnumSource(
      value = Role.class,
      names = {"TRAINEE", "ELECTRICIAN"})
  void nobody_is_given_a_look_that_is_reserved(Role role) {
    person = role;
    begin("beam-path", "closes-partway");
    List<String> ids = new ArrayList<>();
    if (step() instanceof Step.LookRound r) {
      r.looks().forEach(l -> ids.add(l.card()));
    }
    assertThat(BASE.checks().get("beam-light").who()).isEqualTo(Role.TECHNICIAN);
    assertThat(ids.contains("beam-light")).isEqualTo(role == Role.ELECTRICIAN);
  }

  @Test
  void a_run_that_is_forbidden_is_not_made_for_the_sake_of_a_round() {
    begin("noise-kind", "noisy-chain");
    assertThat(round().place().id()).isEqualTo("one-run");
    assertThat(moment().state().work().setUps()).contains("gate-running");
    say(new Event.Answered("chain-looks", new Answer.Chosen("parted")));
    confirmSetUps();
    assertThat(step()).isInstanceOf(Step.Ask.class);
    assertThat(step().card()).isEqualTo("noise-kind"); // told from memory
  }

  @Test
  void the_set_up_of_the_place_is_entered_for_the_look_that_was_chosen() {
    begin("cabinet-look", "does-nothing");
    Event.SetUpEntered entered =
        entries.stream()
            .map(Entry::event)
            .filter(Event.SetUpEntered.class::isInstance)
            .map(Event.SetUpEntered.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(entered).isEqualTo(new Event.SetUpEntered("cover-off", "cabinet-look"));
    assertThat(ids()).startsWith("cabinet-look");
  }

  @Test
  void belief_after_a_round_is_that_after_the_same_answers_one_by_one() {
    begin("alarm-heard", "does-nothing");
    List<Event> answers = new ArrayList<>();
    for (Step.Ask look : round().looks()) {
      List<Check.Outcome> outcomes = look.check().outcomes();
      String outcome = outcomes.get(answers.size() == 1 ? outcomes.size() - 1 : 0).id();
      answers.add(new Event.Answered(look.card(), new Answer.Chosen(outcome)));
    }
    List<Entry> before = List.copyOf(entries);
    say(answers.toArray(Event[]::new));
    double[] together = moment().belief().atCallOut();
    entries.clear();
    entries.addAll(before);
    for (Event answer : answers) {
      say(answer);
      moment();
    }
    assertThat(moment().belief().atCallOut()).containsExactly(together, within(1e-12));
  }

  @Test
  void back_takes_a_round_back_as_one_act_and_an_answer_before_it_stays() {
    begin("alarm-heard", "does-nothing");
    say(ordinary(BASE.checks().get("release-state"))); // of the same place, by itself
    Step.LookRound round = round();
    Set<Long> given = new HashSet<>();
    for (int i = 0; i < round.looks().size(); i++) {
      given.add(entries.size() + 1L + i);
    }
    say(round.looks().stream().map(l -> ordinary(l.check())).toArray(Event[]::new));
    List<Long> last = Undo.last(entries, BASE);
    assertThat(last).containsExactlyInAnyOrderElementsOf(given);
    say(last.stream().map(Event.Retracted::new).toArray(Event[]::new));
    assertThat(round()).isEqualTo(round);
  }

  @Test
  void the_watch_objects_to_a_round_for_a_caller_or_without_its_cautions() {
    begin("noise-kind", "noisy-chain");
    Step.LookRound round = round();
    Watches watches = new Watches(BASE, entries);
    watches.step(person, round);
    Step.LookRound bare =
        new Step.LookRound(round.place(), round.looks(), round.needs(), List.of());
    assertUnsafe(() -> watches.step(person, bare), "no caution for");
    assertUnsafe(() -> watches.step(Role.CALLER, round), "a caller");
    Watches idle = new Watches(BASE, entries.subList(0, entries.size() - 1));
    assertUnsafe(() -> idle.step(person, round), "not in force");
  }

  private static void assertUnsafe(Runnable watch, String words) {
    assertThat(org.assertj.core.api.Assertions.catchThrowable(watch::run))
        .isInstanceOf(UnsafeStep.class)
        .hasMessageContaining(words);
  }
}
