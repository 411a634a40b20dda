package yett.interview.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.belief.Belief;
import yett.interview.course.Advised;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.HandOverReason;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.plan.Telling;
import yett.testing.Advices;
import yett.testing.Shipped;

/** What is asked where nothing is left that the person at the gate may repair. */
class ReservedWorkTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

  /** The plan thinks this look worth it only for the sake of a repair. */
  private static final String LOOK = "track-look";

  private static final String REPAIR = "replace-wheel";

  private final List<Entry> entries = new ArrayList<>();

  @Test
  void whoever_may_not_repair_it_narrows_it_down_for_who_comes_next() {
    assertThat(BASE.repairs().get(REPAIR).who()).isEqualTo(Role.TECHNICIAN);
    assertThat(after(Role.TRAINEE)).isInstanceOfAny(Step.Ask.class, Step.LookRound.class);
  }

  @Test
  void nothing_is_asked_when_no_repair_of_anybody_would_gain_by_it() {
    assertThat(after(Role.TRAINEE, "no such look")).isInstanceOf(Step.HandOver.class);
  }

  @Test
  void whoever_may_do_the_repair_has_been_asked_by_the_plan_already() {
    assertThat(offers(Role.TRAINEE)).hasSize(2).anyMatch(offer -> offer.contains(REPAIR));
    assertThat(offers(Role.ELECTRICIAN)).hasSize(1);
  }

  /** A technician may set the selector, but not read the mains that says how. */
  @Test
  void a_repair_that_waits_for_a_reading_is_named_with_who_reads_it() {
    assertThat(BASE.repairs().get("correct-supply-setting").who()).isEqualTo(Role.TECHNICIAN);
    try (Interview interview =
        Advised.interview(Shipped.QUICK, (belief, options) -> Advices.nothing())) {
      begun(interview, Role.TECHNICIAN);
      say(Role.TECHNICIAN, new Event.Answered("supply-setting", new Answer.Chosen("next-to-it")));
      say(
          Role.TECHNICIAN,
          new Event.Answered("dc-supply-voltage", new Answer.Read("26.5 V", 26.5)));
      while (interview.at(entries).step() instanceof Step.Enter enter) {
        say(Role.TECHNICIAN, enter.done());
      }
      Step.HandOver handOver = (Step.HandOver) interview.at(entries).step();
      assertThat(((HandOverReason.NothingLeft) handOver.because()).reserved())
          .anySatisfy(
              r -> {
                assertThat(r.repair().id()).isEqualTo("correct-supply-setting");
                assertThat(r.first()).map(Check::id).contains("mains-at-terminals");
              });
    }
  }

  @Test
  void a_repair_for_somebody_else_that_is_not_likely_yet_waits_for_a_look_that_pays() {
    Advice.Candidate look = new Advice.Candidate(LOOK, 2, 5);
    Advice repair =
        new Advice(
            Advice.Kind.REPAIR, List.of(look), List.of(new Advice.Job(REPAIR, 1)), 60, 65, false);
    try (Interview interview =
        Advised.interview(
            Shipped.QUICK,
            (belief, options) ->
                options.repairs().contains(REPAIR) && options.checks().contains(LOOK)
                    ? repair
                    : Advices.nothing())) {
      assertThat(begun(interview, Role.TRAINEE).card()).isEqualTo(LOOK);
    }
  }

  @Test
  void
      while_nothing_is_found_the_look_that_tells_most_for_its_minutes_is_made_for_who_comes_next() {
    assertThat(telling(0.05, 0.3)).isEqualTo(LOOK);
    assertThat(telling(0.4, 0.3)).as("dearer, and tells little more").isEqualTo(LOOK);
    assertThat(telling(0.05, 0.05)).as("too little to be worth a look").isNotEqualTo(LOOK);
  }

  /**
   * The card of the step where no look pays.
   *
   * @param dear bits of a look of twenty minutes
   * @param cheap bits of {@link #LOOK}, of two minutes
   */
  private String telling(double dear, double cheap) {
    Advice left =
        new Advice(
            Advice.Kind.NOTHING_LEFT,
            List.of(new Advice.Candidate("wheels-look", 20, -5), new Advice.Candidate(LOOK, 2, -5)),
            List.of(),
            60,
            60,
            false);
    Adviser adviser =
        new Adviser() {
          @Override
          public Advice advise(Belief belief, Planner.Options options) {
            return left;
          }

          @Override
          public List<Telling.Told> tells(Belief belief, Collection<String> checks) {
            return List.of(new Telling.Told("wheels-look", dear), new Telling.Told(LOOK, cheap));
          }
        };
    try (Interview interview = Advised.interview(Shipped.QUICK, adviser)) {
      return begun(interview, Role.TRAINEE).card();
    }
  }

  @Test
  void what_was_put_off_is_asked_for_who_comes_next_before_it_is_handed_over() {
    try (Interview interview = asking(LOOK)) {
      begun(interview, Role.TRAINEE);
      say(Role.TRAINEE, new Event.Answered(LOOK, new Answer.NotNow()));
      assertThat(interview.at(entries).step().card()).isEqualTo(LOOK);
      say(Role.TRAINEE, new Event.Answered(LOOK, new Answer.NotNow()));
      assertThat(interview.at(entries).step()).isInstanceOf(Step.HandOver.class);
    }
  }

  @Test
  void what_was_put_off_is_asked_for_a_repair_that_somebody_else_will_have_to_do() {
    try (Interview interview =
        Advised.interview(
            Shipped.QUICK,
            (belief, options) ->
                !options.repairs().contains(REPAIR)
                    ? Advices.nothing()
                    : options.checks().contains(LOOK)
                        ? Advices.asking(LOOK)
                        : Advices.repairing(REPAIR))) {
      begun(interview, Role.TECHNICIAN);
      say(Role.TECHNICIAN, new Event.Answered(LOOK, new Answer.NotNow()));
      say(Role.TECHNICIAN, new Event.Repaired(REPAIR, false));
      assertThat(interview.at(entries).step().card()).isEqualTo(LOOK);
      say(Role.TECHNICIAN, new Event.Answered(LOOK, new Answer.CannotTell()));
      assertThat(interview.at(entries).step())
          .isInstanceOfSatisfying(
              Step.Enter.class,
              s -> assertThat(s.purpose()).isEqualTo(Purpose.of(Purpose.Kind.CLOSING)));
    }
  }

  private Step after(Role person) {
    return after(person, LOOK);
  }

  private Step after(Role person, String look) {
    try (Interview interview = asking(look)) {
      return begun(interview, person);
    }
  }

  private static Interview asking(String look) {
    return Advised.interview(
        Shipped.QUICK,
        (belief, options) ->
            options.repairs().contains(REPAIR) && options.checks().contains(look)
                ? Advices.asking(look)
                : Advices.nothing());
  }

  /** The different sets of repairs that the plan is asked about. */
  private Set<Set<String>> offers(Role person) {
    Set<Set<String>> offers = new HashSet<>();
    try (Interview interview =
        Advised.interview(
            Shipped.QUICK,
            (belief, options) -> {
              offers.add(options.repairs());
              return Advices.nothing();
            })) {
      begun(interview, person);
    }
    return offers;
  }

  private Step begun(Interview interview, Role person) {
    entries.clear();
    say(person, new Event.Opened("Harrow Quay, north gate", person, "any"));
    ((Step.AskDangers) interview.at(entries).step())
        .dangers()
        .forEach(
            c ->
                say(
                    person,
                    new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    say(person, new Event.SiteTaken());
    say(person, new Event.Complained(List.of("scrapes")));
    say(person, new Event.Happened(List.of()));
    return interview.at(entries).step();
  }

  private void say(Role person, Event event) {
    entries.add(new Entry(entries.size() + 1L, NOW, person, event));
  }
}
