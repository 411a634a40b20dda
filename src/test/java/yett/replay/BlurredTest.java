package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class BlurredTest {
  private static final RuleBase SMALL = SmallRuleBase.base();
  private static final RepeatedAnswer<Answer> CANNOT_TELL =
      RepeatedAnswer.always(new Answer.CannotTell());

  private static final RecordedCase SLACK =
      read(
          SMALL,
          """
          case: slack
          person: technician
          complaints: [noisy-chain]
          answers:
            danger-person: nobody
            display-lit: steady
            noise-kind: cannot tell
            chain-sag: [190 mm, 84 mm]
            limits-hold: fail
          truth: [chain-slack]
          """);

  private static final RecordedCase USUAL =
      read(Shipped.BASE, "case: usual\nperson: technician\nothers: usual\n");

  @Test
  void a_wrong_answer_is_another_outcome_of_its_check() {
    Set<RepeatedAnswer<Answer>> seen = new HashSet<>();
    for (long seed = 1; seed <= 200; seed++) {
      seen.add(wrong(SLACK, seed).answers().get("display-lit"));
    }
    assertThat(seen)
        .containsExactlyInAnyOrder(
            RepeatedAnswer.always(new Answer.Chosen("steady")),
            RepeatedAnswer.always(new Answer.Chosen("dark")));
  }

  @Test
  void a_reading_becomes_no_outcome_that_it_was_taken_to_mean() {
    RepeatedAnswer<Answer> found = SLACK.answers().get("chain-sag");
    Set<String> others = new HashSet<>();
    for (long seed = 1; seed <= 500; seed++) {
      RepeatedAnswer<Answer> sag = wrong(SLACK, seed).answers().get("chain-sag");
      if (!sag.equals(found)) {
        assertThat(sag.inOrder()).isTrue();
        assertThat(sag.turns().get(1)).isEqualTo(found.turns().get(1));
        others.add(sag.turns().get(0).choice().orElseThrow());
      }
    }
    List<String> outcomes =
        SMALL.checks().get("chain-sag").outcomes().stream().map(Check.Outcome::id).toList();
    assertThat(outcomes).contains("slack");
    assertThat(others)
        .containsExactlyInAnyOrderElementsOf(
            outcomes.stream().filter(o -> !o.equals("slack")).toList());
  }

  @Test
  void dangers_proofs_and_what_says_nothing_stay() {
    for (long seed = 1; seed <= 200; seed++) {
      for (RecordedCase blurred : List.of(wrong(SLACK, seed), missing(SLACK, seed))) {
        assertThat(blurred.answers())
            .hasSameSizeAs(SLACK.answers())
            .containsEntry("danger-person", SLACK.answers().get("danger-person"))
            .containsEntry("noise-kind", CANNOT_TELL)
            .containsEntry("limits-hold", SLACK.answers().get("limits-hold"));
      }
    }
  }

  @Test
  void what_the_case_leaves_to_a_sound_gate_is_blurred_too() {
    Map<String, RepeatedAnswer<Answer>> wrong = wrong(USUAL, 1).answers();
    assertThat(wrong).isNotEmpty();
    wrong.forEach(
        (id, told) -> {
          Check check = Shipped.BASE.checks().get(id);
          assertThat(check.kind()).isEqualTo(Check.Kind.CHECK);
          assertThat(check.danger()).isFalse();
          assertThat(check.indexOf(told.turns().get(0).choice().orElseThrow())).isPositive();
        });
    assertThat(missing(USUAL, 1).answers()).isNotEmpty().allSatisfy(BlurredTest::cannotBeTold);
    assertThat(missing(read(SMALL, "case: a\nperson: caller\n"), 1).answers()).isEmpty();
  }

  private static void cannotBeTold(String check, RepeatedAnswer<Answer> told) {
    assertThat(told).as(check).isEqualTo(CANNOT_TELL);
  }

  /** Of all checks and many seeds, so that a share that is a tenth off shows. */
  @Test
  void a_tenth_is_wrong_and_a_third_is_missing() {
    long checks = Shipped.BASE.ordinaryChecks().filter(c -> !c.danger()).count();
    double wrong =
        LongStream.rangeClosed(1, 50)
            .map(s -> wrong(USUAL, s).answers().size())
            .average()
            .orElse(0);
    double missing =
        LongStream.rangeClosed(1, 50)
            .map(s -> missing(USUAL, s).answers().size())
            .average()
            .orElse(0);
    assertThat(wrong / checks).isBetween(0.09, 0.11);
    assertThat(missing / checks).isBetween(0.31, 0.36);
  }

  @Test
  void a_seed_does_the_same_again_and_another_does_not() {
    assertThat(wrong(USUAL, 7)).isEqualTo(wrong(USUAL, 7));
    assertThat(wrong(USUAL, 7)).isNotEqualTo(wrong(USUAL, 8));
    Set<Map<String, ?>> ways =
        LongStream.rangeClosed(1, 20)
            .mapToObj(s -> missing(USUAL, s).answers())
            .collect(Collectors.toSet());
    assertThat(ways).hasSize(20);
  }

  private static RecordedCase wrong(RecordedCase recorded, long seed) {
    return new Blurred(recorded, base(recorded), seed).wrong(Map.of("chain-sag", "slack"));
  }

  private static RecordedCase missing(RecordedCase recorded, long seed) {
    return new Blurred(recorded, base(recorded), seed).missing();
  }

  private static RuleBase base(RecordedCase recorded) {
    return recorded == USUAL ? Shipped.BASE : SMALL;
  }

  private static RecordedCase read(RuleBase base, String text) {
    CaseFile file = CaseFile.read("quay.case.yaml", text, base);
    assertThat(file.problems()).isEmpty();
    return file.cases().get(0);
  }
}
