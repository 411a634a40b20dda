package yett.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;

class CaseFiguresTest {
  private static final Instant YEAR = Instant.parse("2026-01-01T00:00:00Z");
  private static final Instant END = Instant.parse("2027-01-01T00:00:00Z");

  private final List<PastCase> cases = new ArrayList<>();

  private void add(String site, int day, String cause, Ending ending, int visits, double ratio) {
    cases.add(
        new PastCase(
            "2026-" + (1000 + cases.size()),
            site,
            YEAR.plus(Duration.ofDays(day)),
            cause,
            Optional.ofNullable(ending),
            visits,
            20 * ratio,
            20,
            Optional.empty(),
            false));
  }

  private void held(String desk, int visits, Ending ending, boolean sent) {
    cases.add(
        new PastCase(
            "2026-" + (1000 + cases.size()),
            "ferry",
            YEAR,
            "",
            Optional.ofNullable(ending),
            visits,
            0,
            0,
            Optional.of(desk),
            sent));
  }

  /** Calls that nobody took are counted as such, and so the shares of the agents are seen whole. */
  @Test
  void a_call_that_nobody_took_is_counted_for_nobody() {
    List<Entry> call =
        List.of(
            new Entry(1, YEAR, Role.CALLER, new Event.Opened("ferry", Role.CALLER, "f")),
            new Entry(2, YEAR, Role.CALLER, new Event.Closed(Ending.WORKS_AGAIN)));
    PastCase past = PastCase.of("1", "ferry", YEAR, "", call, SmallRuleBase.base());
    assertThat(past.desk()).contains(PastCase.NOBODY);
  }

  @Test
  void the_calls_of_a_desk_are_counted_and_few_of_them_give_no_share() {
    for (int i = 0; i < 6; i++) {
      held("Ina", i % 2, i % 2 == 0 ? Ending.SOLVED : Ending.REPAIRED, i % 2 == 1);
    }
    held("Tom", 0, Ending.WORKS_AGAIN, false);
    held("Tom", 0, Ending.CANCELLED, false);
    held("Tom", 0, null, true); // somebody was sent, and has not closed it yet
    held("Eve", 0, null, false); // the caller is still on the line

    assertThat(figures().desks())
        .containsExactly(new CaseFigures.Share("Ina", 3, 6), new CaseFigures.Share("Tom", 1, 3));
    assertThat(figures().desks()).extracting(CaseFigures.Share::isFew).containsExactly(false, true);
  }

  @Test
  void two_cases_of_one_day_are_no_number_a_year() {
    add("fish-dock", 0, "", null, 0, 1);
    add("fish-dock", 0, "", null, 0, 1);

    assertThat(CaseFigures.of(cases, YEAR, YEAR.plus(Duration.ofDays(1))).isShort()).isTrue();
    assertThat(CaseFigures.of(cases, YEAR, YEAR.plus(Duration.ofDays(89))).isShort()).isTrue();
    assertThat(figures().isShort()).isFalse();
  }

  private CaseFigures figures() {
    return CaseFigures.of(cases, YEAR, END);
  }

  @Test
  void causes_count_in_cured_cases_only() {
    add("fish-dock", 1, "chain-slack", Ending.REPAIRED, 1, 1);
    add("ferry", 2, "chain-slack", Ending.REPAIRED, 1, 1);
    add("ferry", 3, "charger-dead", Ending.REPAIRED, 1, 1);
    add("ferry", 4, "charger-dead", Ending.HANDED_OVER, 1, 1);
    add("ferry", 5, "charger-dead", null, 0, 1);

    assertThat(figures().causes())
        .containsExactly(
            new CaseFigures.Share("chain-slack", 2, 3),
            new CaseFigures.Share("charger-dead", 1, 3));
    assertThat(figures().cases()).isEqualTo(5);
  }

  @Test
  void cases_are_counted_by_gate_and_year() {
    for (int i = 0; i < 10; i++) {
      add("fish-dock", i, "", null, 0, 1);
    }

    var rate = figures().sites().get(0);

    assertThat(rate.name()).isEqualTo("fish-dock");
    assertThat(rate.aYear()).isCloseTo(10, within(0.01));
    assertThat(rate.range().low()).isCloseTo(4.80, within(0.01)); // Garwood, see SmallNumbersTest
    assertThat(rate.range().high()).isCloseTo(18.4, within(0.02));
  }

  @Test
  void a_first_visit_cures_or_does_not() {
    add("fish-dock", 1, "chain-slack", Ending.REPAIRED, 1, 1);
    add("ferry", 2, "chain-slack", Ending.REPAIRED, 2, 1);
    add("ferry", 3, "charger-dead", Ending.OUT_OF_SERVICE, 1, 1);
    add("ferry", 4, "nothing-wrong", Ending.SOLVED, 0, 1);
    add("ferry", 5, "charger-dead", null, 1, 1);

    assertThat(figures().atOnce()).isEqualTo(new CaseFigures.Share("at once", 1, 3));
    assertThat(figures().onTelephone()).isEqualTo(new CaseFigures.Share("on the telephone", 1, 4));
  }

  @Test
  void a_fault_repeats_at_the_same_gate_with_the_same_cause_within_its_time() {
    add("fish-dock", 1, "chain-slack", Ending.REPAIRED, 1, 1);
    add("fish-dock", 60, "chain-slack", Ending.REPAIRED, 1, 1);
    add("fish-dock", 70, "charger-dead", Ending.REPAIRED, 1, 1);
    add("ferry", 80, "chain-slack", Ending.REPAIRED, 1, 1);
    add("fish-dock", 200, "chain-slack", Ending.REPAIRED, 1, 1); // too late to be the same
    add("ferry", 300, "chain-slack", Ending.REPAIRED, 1, 1); // 90 days are not over

    assertThat(figures().repeated()).isEqualTo(new CaseFigures.Share("repeated", 1, 5));
    assertThat(figures().repeats())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.site() + " " + r.cause()).isEqualTo("fish-dock chain-slack");
              assertThat(r.cases()).containsExactly(cases.get(0), cases.get(1));
            });
  }

  @Test
  void minutes_are_set_against_those_expected() {
    for (double ratio : new double[] {0.5, 0.8, 1, 1.2, 1.5, 3}) {
      add("ferry", 1, "chain-slack", Ending.REPAIRED, 1, ratio);
    }

    assertThat(figures().minutes().median()).isCloseTo(1.1, within(1e-9));
    assertThat(figures().minutes().range().low()).isEqualTo(0.5);
    assertThat(figures().minutes().range().high()).isEqualTo(3);
  }

  @Test
  void no_case_gives_no_figures_and_no_mistake() {
    assertThat(figures().causes()).isEmpty();
    assertThat(figures().minutes().cases()).isZero();
  }

  private static Entry entry(int number, int minute, Role by, Event event) {
    return new Entry(number, YEAR.plus(Duration.ofMinutes(minute)), by, event);
  }

  @Test
  void visits_and_minutes_follow_from_the_events() {
    Event lit = new Event.Answered("display-lit", new Answer.Chosen("steady"));
    Event sag = new Event.Answered("chain-sag", new Answer.Read("250 mm", 250));
    List<Entry> entries =
        List.of(
            entry(1, 0, Role.CALLER, new Event.Opened("Ferry", Role.CALLER, "f")),
            entry(2, 5, Role.CALLER, lit),
            entry(3, 100, Role.TECHNICIAN, sag),
            entry(4, 110, Role.TECHNICIAN, lit), // 10 minutes on site
            entry(5, 170, Role.TECHNICIAN, sag), // a break
            entry(6, 175, Role.TECHNICIAN, new Event.Retracted(5)),
            entry(7, 1600, Role.TECHNICIAN, lit), // the next day
            entry(8, 1604, Role.TECHNICIAN, new Event.Closed(Ending.REPAIRED)));

    var past = PastCase.of("2026-0001", "ferry", YEAR, "", entries, SmallRuleBase.base());

    assertThat(past.visits()).isEqualTo(2);
    assertThat(past.spent()).isCloseTo(14, within(1e-9));
    assertThat(past.expected()).isCloseTo(3 + 0.5 + 0.5, within(1e-9)); // minutes of the cards
    assertThat(past.cured()).isTrue();
    assertThat(past.curedAtOnce()).isFalse();
  }
}
