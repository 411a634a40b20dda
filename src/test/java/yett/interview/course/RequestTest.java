package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.testing.Size;

/** A check that somebody asks for comes next, or it is said why not. */
class RequestTest {
  private static final Map<String, Check> CHECKS = Shipped.BASE.checks();

  private final Interview interview = Shipped.QUICK.newInterview();
  private final List<Entry> entries = new ArrayList<>();

  @AfterEach
  void close() {
    interview.close();
  }

  @Test
  void a_check_comes_next_by_way_of_its_set_ups() {
    begin(Role.TECHNICIAN);
    Request.Verdict verdict = verdict("charging-fuse");
    assertThat(verdict).isEqualTo(new Request.Granted(new Event.AskedFor("charging-fuse")));
    say(new Event.AskedFor("charging-fuse"));
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Enter.class,
            s -> {
              assertThat(s.cautions()).isNotEmpty();
              assertThat(s.purpose()).isEqualTo(new Purpose(Purpose.Kind.CHECK, "charging-fuse"));
            });
    while (step() instanceof Step.Enter enter) {
      say(enter.done());
    }
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Ask.class,
            s -> {
              assertThat(s.check().id()).isEqualTo("charging-fuse");
              assertThat(s.occasion().kind()).isEqualTo(Occasion.Kind.ASKED_FOR);
              assertThat(moment().state().work().setUps()).containsAll(s.check().needs());
            });
  }

  @Test
  void once_it_was_answered_the_plan_goes_on() {
    begin(Role.TECHNICIAN);
    say(new Event.AskedFor("display-lit"));
    assertThat(((Step.Ask) step()).check().id()).isEqualTo("display-lit");
    say(new Event.Answered("display-lit", new Answer.CannotTell()));
    assertThat(step().card()).isNotEqualTo("display-lit");
    assertThat(moment().state().work().askedFor()).isEmpty();
  }

  @Test
  void a_wish_taken_back_is_none() {
    begin(Role.TECHNICIAN);
    Step before = step();
    say(new Event.AskedFor("display-lit"));
    assertThat(step()).isNotEqualTo(before);
    say(new Event.Retracted(entries.size()));
    assertThat(step()).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource({
    "CALLER, charging-fuse, reserved for better qualified",
    "TECHNICIAN, mains-at-terminals, reserved for better qualified",
    "TECHNICIAN, limits-hold, proofs come once the gate runs again",
    "TECHNICIAN, danger-leaf, dangers are gone through together",
    "TECHNICIAN, slow, it is something noticed",
    "TECHNICIAN, panel-look, the site has nothing",
  })
  void what_cannot_be_asked_is_refused_with_the_reason(Role role, String check, String because) {
    begin(role);
    assertThat(verdict(check))
        .isInstanceOfSatisfying(
            Request.Refused.class, r -> assertThat(r.because()).contains(because));
  }

  @Test
  void what_was_answered_is_corrected_and_not_asked_again() {
    begin(Role.TECHNICIAN);
    String outcome = CHECKS.get("display-lit").outcomes().get(0).id();
    say(new Event.Answered("display-lit", new Answer.Chosen(outcome)));
    assertThat(verdict("display-lit"))
        .isInstanceOfSatisfying(
            Request.Refused.class, r -> assertThat(r.because()).contains("correct"));
  }

  @Test
  void nothing_comes_before_a_danger_is_made_safe() {
    begin(Role.TECHNICIAN);
    say(new Event.Answered("danger-person", new Answer.Chosen("hurt-or-trapped")));
    for (Check check : CHECKS.values()) {
      assertThat(verdict(check.id())).isNotInstanceOf(Request.Granted.class);
    }
    say(new Event.AskedFor("display-lit")); // nobody types it, but a file may bring it
    assertThat(step()).isInstanceOf(Step.MakeSafe.class);
  }

  @Test
  void the_try_after_a_repair_comes_first() {
    begin(Role.TECHNICIAN);
    say(new Event.Repaired("clean-beam", true));
    assertThat(verdict("display-lit"))
        .isInstanceOfSatisfying(
            Request.Later.class, l -> assertThat(l.first().card()).isNotEqualTo("display-lit"));
  }

  @Test
  void dangers_and_the_site_come_first() {
    say(new Event.Opened("East", Role.TECHNICIAN, "any"));
    assertThat(verdict("display-lit"))
        .isEqualTo(new Request.Later(step()))
        .extracting(v -> ((Request.Later) v).first())
        .isInstanceOf(Step.AskDangers.class);
  }

  @Test
  void the_open_checks_are_those_of_the_person_and_each_can_be_asked_for() {
    begin(Role.CALLER);
    OpenChecks open = new OpenChecks(Shipped.QUICK, moment());
    assertThat(open.all())
        .hasSizeGreaterThan(10)
        .allMatch(o -> o.check().who() == Role.CALLER && !o.check().danger())
        .allMatch(o -> verdict(o.check().id()) instanceof Request.Granted);
  }

  /** The check that comes next, by way of its set-ups. */
  private String next() {
    return step() instanceof Step.Enter enter ? enter.purpose().card() : step().card();
  }

  @Test
  void the_most_telling_check_is_the_one_that_the_plan_takes() {
    begin(Role.TECHNICIAN);
    List<OpenChecks.Open> all = new OpenChecks(Shipped.QUICK, moment()).all();
    assertThat(all.get(0).check().id()).isEqualTo(next());
    OpenChecks.Open fuse =
        all.stream().filter(o -> o.check().id().equals("charging-fuse")).findFirst().orElseThrow();
    assertThat(fuse.enter()).extracting(s -> s.id()).containsExactly("locked-off");
    assertThat(fuse.minutes())
        .isEqualTo(fuse.check().minutes() + fuse.enter().get(0).enterMinutes());
  }

  @Test
  void what_settles_a_cause_moves_it_more_than_other_checks() {
    begin(Role.TECHNICIAN);
    OpenChecks open = new OpenChecks(Shipped.QUICK, moment());
    OpenChecks.Settling settling = open.settling("beam-dirty").orElseThrow();
    int cause = moment().belief().model().indexOf("beam-dirty");
    double now = moment().belief().atCallOut()[cause];
    // What its own card shows on moves it most; of the others, which only explain it away, some.
    List<OpenChecks.Open> all = open.all();
    List<OpenChecks.Open> tried =
        IntStream.range(0, all.size())
            .filter(
                i ->
                    i % Size.of(6, 1) == 0
                        || all.get(i).check().likelihood().containsKey("beam-dirty"))
            .mapToObj(all::get)
            .toList();
    assertThat(tried).hasSizeGreaterThan(10);
    for (OpenChecks.Open other : tried) {
      double moved =
          Prospects.of(moment().belief(), other.check(), java.util.Optional.empty()).stream()
              .mapToDouble(p -> p.chance() * Math.abs(p.then()[cause] - now))
              .sum();
      assertThat(moved).isLessThanOrEqualTo(settling.moved() + 1e-9);
    }
    assertThat(settling.moved()).isGreaterThan(0.1 * now);
  }

  /** Whoever locks off more than before brings no power back first. */
  @Test
  void the_mains_stays_locked_off_while_the_batteries_are_taken_off_too() {
    begin(Role.TECHNICIAN);
    say(new Event.SetUpEntered("mains-off-batteries-on", ""));
    say(new Event.AskedFor("charging-fuse"));
    Step.Enter enter = (Step.Enter) step();
    assertThat(enter.setUp().id()).isEqualTo("locked-off");
    assertThat(enter.instead()).containsExactly("mains-off-batteries-on");
    say(enter.done());
    assertThat(moment().state().work().setUps()).containsExactly("locked-off");
  }

  /** The lock stays on the mains while the batteries are connected again. */
  @Test
  void batteries_are_connected_before_the_gate_runs_on_them() {
    begin(Role.TECHNICIAN);
    say(new Event.SetUpEntered("locked-off", ""));
    say(new Event.AskedFor("battery-block-difference"));
    Step.Enter enter = (Step.Enter) step();
    assertThat(enter.setUp().id()).isEqualTo("mains-off-batteries-on");
    assertThat(enter.instead()).containsExactly("locked-off");
  }

  private void begin(Role role) {
    say(new Event.Opened("East", role, "any"), role);
    for (Check check : CHECKS.values()) {
      if (check.danger()) {
        say(new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(0).id())), role);
      }
    }
    say(new Event.SiteTaken(), role);
    say(new Event.Complained(List.of("closes-partway")), role);
    if (role == Role.CALLER) {
      say(new Event.Pressed(List.of()), role);
    }
    say(new Event.Happened(List.of()), role);
  }

  private void say(Event event) {
    say(event, Role.TECHNICIAN);
  }

  private void say(Event event, Role role) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, role, event));
  }

  private Moment moment() {
    return interview.at(entries);
  }

  private Step step() {
    return moment().step();
  }

  private Request.Verdict verdict(String check) {
    return new Request(interview, moment()).of(CHECKS.get(check));
  }
}
