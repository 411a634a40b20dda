package yett.interview.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.belief.Observation;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.intake.Sense;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.Inspected;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;
import yett.testing.Shipped;
import yett.wording.Wording;

/** Outcomes of one check that are true at once, from the answer to rules and belief. */
class SeveralAnswersTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final Check NOISE = BASE.checks().get("noise-kind");
  private static final Check CABINET = BASE.checks().get("cabinet-look");

  private static Moment moment(Event... events) {
    List<Entry> entries = new ArrayList<>();
    List<Event> all = new ArrayList<>();
    all.add(new Event.Opened("Harrow Quay, gate 3", Role.TECHNICIAN, "any"));
    BASE.checks().values().stream()
        .filter(Check::danger)
        .forEach(
            c -> all.add(new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    all.add(new Event.SiteTaken());
    all.add(new Event.Complained(List.of("noisy-chain")));
    all.add(new Event.Happened(List.of()));
    all.addAll(List.of(events));
    all.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, e)));
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      return interview.at(entries);
    }
  }

  private static Event seen(Check check, String... outcomes) {
    return new Event.Answered(check.id(), Answer.Chosen.of(check, List.of(outcomes)));
  }

  private static Finding last(Moment moment) {
    return moment.judgement().finding(moment.entries().size()).orElseThrow();
  }

  @Test
  void the_one_furthest_down_the_card_shows_and_the_order_of_ticks_does_not_matter() {
    Moment moment = moment(seen(NOISE, "bang", "scrape", "slap"));
    Finding finding = last(moment);
    assertThat(finding.outcome()).isEqualTo("bang");
    assertThat(finding.also()).containsExactly("scrape", "slap");
    assertThat(moment.belief().atCallOut())
        .isEqualTo(moment(seen(NOISE, "slap", "bang", "scrape")).belief().atCallOut());
  }

  @Test
  void both_noises_count_and_no_answer_makes_a_cause_impossible() {
    Moment bang = moment(seen(NOISE, "bang"));
    Moment both = moment(seen(NOISE, "bang", "slap"));
    assertThat(both.belief().atCallOut("chain-slack"))
        .isGreaterThan(bang.belief().atCallOut("chain-slack"));
    Moment three = moment(seen(NOISE, "bang", "slap", "scrape"));
    double[] before = moment().belief().atCallOut();
    double[] after = three.belief().atCallOut();
    for (int c = 0; c < after.length; c++) {
      assertThat(after[c] > 0).isEqualTo(before[c] > 0);
    }
  }

  @Test
  void the_belief_is_that_of_the_observation() {
    Moment before = moment();
    Moment after = moment(seen(NOISE, "bang", "slap"));
    List<Double> weights = List.of(0.0, 0.0, 0.0, 0.0, 1.0);
    Observation ticks =
        new Observation("noise-kind", weights).with(Observation.Ticks.said(4, List.of(2), weights));
    assertThat(after.belief().atCallOut())
        .containsExactly(before.belief().learn(ticks).atCallOut(), within(1e-12));
  }

  /** Water is further down the card than gnawed wires; both forbid what is done in the cabinet. */
  @Test
  void rules_see_a_tick_that_is_not_the_highest() {
    List<String> reasons =
        moment(seen(CABINET, "gnawed", "water")).judgement().unavailabilities().stream()
            .map(u -> u.reason().rule())
            .distinct()
            .toList();
    assertThat(reasons)
        .contains(
            "nobody reaches into a wet cabinet under power",
            "nobody reaches between gnawed wires under power");
  }

  @Test
  void a_contradiction_sees_a_tick_that_is_not_the_highest() {
    Check path = BASE.checks().get("seen-at-the-box");
    Moment moment = moment(seen(path, "insects", "wet"), seen(CABINET, "dry"));
    assertThat(moment.judgement().contradictions()).hasSize(1);
    assertThat(moment(seen(path, "insects"), seen(CABINET, "dry")).judgement().contradictions())
        .isEmpty();
  }

  @Test
  void a_corrected_answer_leaves_nothing_of_its_ticks() {
    Moment first = moment(seen(NOISE, "bang", "slap"));
    long number = first.entries().size();
    Moment corrected =
        moment(seen(NOISE, "bang", "slap"), new Event.Corrected(number, new Answer.Chosen("bang")));
    assertThat(corrected.belief().atCallOut())
        .isEqualTo(moment(seen(NOISE, "bang")).belief().atCallOut());
  }

  @Test
  void the_ordinary_outcome_goes_with_no_other_and_most_checks_have_one_answer() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Answer.Chosen.of(NOISE, List.of("usual", "bang")));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Answer.Chosen.of(BASE.checks().get("chain-surface"), List.of("rusty", "iced")));
    List<Entry> entries = new ArrayList<>(moment().entries());
    for (Answer answer :
        List.of(
            new Answer.Chosen("bang", List.of("usual")),
            new Answer.Chosen("bang", List.of("bang")),
            new Answer.Chosen("bang", List.of("tune")))) {
      entries.add(
          new Entry(
              entries.size() + 1L,
              Instant.EPOCH,
              Role.TECHNICIAN,
              new Event.Answered("noise-kind", answer)));
    }
    assertThat(new Sense(BASE).doubts(entries))
        .extracting(Sense.Doubt::words)
        .contains("noise-kind has no such outcomes at once", "noise-kind has no such outcome");
  }

  @Test
  void all_ticks_are_told() {
    assertThat(
            new Wording(BASE)
                .answer("noise-kind", Answer.Chosen.of(NOISE, List.of("bang", "slap"))))
        .isEqualTo("the chain slaps or rattles, and also a bang when it reaches the end");
  }

  @Test
  void an_answer_from_before_there_were_ticks_reads_as_ever_and_one_outcome_is_written_so() {
    String old =
        "{\"type\":\"answered\",\"check\":\"noise-kind\","
            + "\"answer\":{\"kind\":\"outcome\",\"outcome\":\"bang\"}}";
    Event event = new Event.Answered("noise-kind", new Answer.Chosen("bang"));
    assertThat(EventText.write(event)).doesNotContain("also");
    assertThat(EventText.read(EventText.write(event))).isEqualTo(event);
    assertThat(EventText.read(old)).isEqualTo(event);
    Event both = seen(NOISE, "bang", "slap");
    assertThat(EventText.write(both)).contains("\"also\":[\"slap\"]");
    assertThat(EventText.read(EventText.write(both))).isEqualTo(both);
  }

  @Test
  void several_are_asked_back_only_if_one_of_them_is_unlikely() {
    Moment moment = moment();
    try (Interview interview = Shipped.EXPERTISE.newInterview()) {
      double both = chance(interview, moment, "bang", "slap");
      assertThat(both)
          .isEqualTo(
              Math.min(chance(interview, moment, "bang"), chance(interview, moment, "slap")));
    }
  }

  private static double chance(Interview interview, Moment moment, String... outcomes) {
    return interview
        .hear(moment, NOISE, Answer.Chosen.of(NOISE, List.of(outcomes)))
        .orElseThrow()
        .chance();
  }

  /**
   * The card says what of it is only a remark; whatever else was seen with it, a failure is one.
   */
  @Test
  void an_inspection_fails_what_fails_although_a_remark_is_further_down_the_card() {
    Check check =
        new Check(
            CABINET.id(),
            CABINET.kind(),
            CABINET.question(),
            CABINET.evidence(),
            CABINET.work(),
            CABINET.area(),
            CABINET.onlyIf(),
            false,
            new Inspected(List.of(), List.of("water", "damp")),
            CABINET.source());
    assertThat(Inspection.verdict(check, Answer.Chosen.of(check, List.of("gnawed", "water"))))
        .isEqualTo(Verdict.FAIL);
    assertThat(Inspection.verdict(check, Answer.Chosen.of(check, List.of("damp", "water"))))
        .isEqualTo(Verdict.REMARK);
    assertThat(Inspection.verdict(check, new Answer.Chosen("dry"))).isEqualTo(Verdict.PASS);
  }
}
