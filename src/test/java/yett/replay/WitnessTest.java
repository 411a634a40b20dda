package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.testing.Repairs;
import yett.testing.Shipped;

class WitnessTest {
  private static final Event.Retested AS_BEFORE = new Event.Retested(false, Optional.of(true));
  private static final String NO_MAINS =
      "case: no-mains\nperson: electrician\ntruth: [mains-missing]\n";

  @Test
  void a_repair_that_often_helps_is_taken_to_help() {
    assertThat(curedBy(0.55, NO_MAINS)).isTrue();
    assertThat(curedBy(0.45, NO_MAINS)).isFalse();
  }

  @Test
  void where_the_file_names_the_right_repair_another_must_be_nearly_as_good() {
    String right = NO_MAINS + "repairs: [restore-mains]\n";
    assertThat(curedBy(0.55, right)).isFalse();
    assertThat(curedBy(0.85, right)).isTrue();
  }

  @Test
  void a_repair_that_does_not_touch_the_cause_does_not_cure() {
    Witness witness = witness(NO_MAINS);
    witness.repaired(SmallRuleBase.base().repairs().get("tighten-chain"));
    assertThat(witness.retest()).contains(AS_BEFORE);
  }

  @Test
  void a_gate_does_the_same_until_a_repair_takes_something_away() {
    Witness witness = witness(NO_MAINS);
    witness.repaired(SmallRuleBase.base().repairs().get("tighten-chain"));
    assertThat(witness.retest()).contains(AS_BEFORE);
    witness.repaired(isolatorOn(0.9));
    assertThat(witness.retest()).contains(new Event.Retested(true));
    assertThat(witness("case: untold\nperson: electrician\n").retest()).isEmpty();
  }

  @Test
  void what_a_repair_changed_cannot_be_told_while_something_is_left_that_shows_it() {
    Witness witness =
        witness(
            """
            case: dark
            person: electrician
            answers: {display-lit: dark}
            truth: [batteries-low, mains-missing]
            """);
    Check display = SmallRuleBase.base().checks().get("display-lit");
    witness.repaired(SmallRuleBase.base().repairs().get("charge-batteries"));
    assertThat(lit(witness, display)).isEqualTo(new Answer.CannotTell());
    witness.repaired(isolatorOn(0.9));
    assertThat(lit(witness, display)).isEqualTo(new Answer.Chosen("steady"));
  }

  private static Answer lit(Witness witness, Check display) {
    return witness.answer(display, Optional.empty(), a -> Optional.of("dark")).answer();
  }

  /** The dirt in the track goes with its repair; what bent the track stays to be seen. */
  @Test
  void of_outcomes_that_are_true_at_once_those_are_left_that_no_repair_has_changed() {
    CaseFile file =
        CaseFile.read(
            "quay.case.yaml",
            """
            case: track
            person: technician
            answers: {track-look: {several: [blocked, bent]}}
            truth: [track-fouled, track-damaged]
            """,
            Shipped.BASE);
    Witness witness = new Witness(file.cases().get(0), Shipped.BASE);
    Check track = Shipped.BASE.checks().get("track-look");
    assertThat(look(witness, track).choices()).containsExactly("blocked", "bent");
    Shipped.BASE.repairs().values().stream()
        .filter(r -> r.removes().getOrDefault("track-fouled", 0.0) > 0.5)
        .filter(r -> !r.removes().containsKey("track-damaged"))
        .findFirst()
        .ifPresent(witness::repaired);
    assertThat(witness.remaining()).containsExactly("track-damaged");
    assertThat(look(witness, track).choices()).containsExactly("bent");
  }

  private static Answer look(Witness witness, Check check) {
    return witness.answer(check, Optional.empty(), Answer::choice).answer();
  }

  @Test
  void a_complaint_is_left_while_a_cause_is_that_shows_it() {
    Witness witness =
        witness(
            """
            case: two
            person: electrician
            complaints: [does-nothing, noisy-chain]
            truth: [mains-missing, chain-slack]
            """);
    witness.repaired(isolatorOn(0.9));
    assertThat(witness.retest()).contains(Event.Retested.left(List.of("noisy-chain"), List.of()));
    witness.repaired(SmallRuleBase.base().repairs().get("tighten-chain"));
    assertThat(witness.retest()).contains(new Event.Retested(true));
  }

  @Test
  void a_file_may_say_what_is_left() {
    Witness witness =
        witness(
            """
            case: told
            person: electrician
            complaints: [does-nothing, noisy-chain]
            answers: {retest: ["left noisy-chain", cured]}
            """);
    assertThat(witness.retest()).contains(Event.Retested.left(List.of("noisy-chain"), List.of()));
    assertThat(witness.retest()).contains(new Event.Retested(true));
  }

  @Test
  void what_the_file_leaves_out_is_usual_only_where_it_says_so() {
    Check sag = SmallRuleBase.base().checks().get("chain-sag");
    assertThat(witness(NO_MAINS).answer(sag, Optional.empty(), a -> Optional.empty()).answer())
        .isEqualTo(new Answer.CannotTell());
    assertThat(
            witness(NO_MAINS + "others: usual\n")
                .answer(sag, Optional.empty(), a -> Optional.empty())
                .answer())
        .isEqualTo(new Answer.Chosen("ordinary"));
  }

  @Test
  void a_proof_that_fails_as_found_passes_when_no_true_cause_is_left() {
    String failing = NO_MAINS + "answers: {limits-hold: fail}\n";
    Witness witness = witness(failing);
    assertThat(proof(witness)).isEqualTo(new Answer.Chosen("fail"));
    witness.repaired(SmallRuleBase.base().repairs().get("tighten-chain"));
    assertThat(proof(witness)).isEqualTo(new Answer.Chosen("fail"));
    witness.repaired(isolatorOn(0.9));
    assertThat(proof(witness)).isEqualTo(new Answer.Chosen("pass"));

    Witness told = witness(failing.replace("fail}", "[fail, fail]}"));
    told.repaired(isolatorOn(0.9));
    assertThat(proof(told)).isEqualTo(new Answer.Chosen("fail"));
  }

  @Test
  void a_proof_fails_as_told_where_the_file_does_not_say_what_is_true() {
    Witness witness = witness("case: untold\nperson: caller\nanswers: {limits-hold: fail}\n");
    witness.repaired(isolatorOn(0.9));
    assertThat(proof(witness)).isEqualTo(new Answer.Chosen("fail"));
  }

  private static Answer proof(Witness witness) {
    Check proof = SmallRuleBase.base().checks().get("limits-hold");
    return witness.answer(proof, Optional.empty(), a -> Optional.empty()).answer();
  }

  private static boolean curedBy(double chance, String text) {
    Witness witness = witness(text);
    witness.repaired(isolatorOn(chance));
    return witness.retest().orElseThrow().cured();
  }

  private static Repair isolatorOn(double chance) {
    return Repairs.of("reset-isolator", Map.of("mains-missing", chance), List.of());
  }

  private static Witness witness(String text) {
    CaseFile file = CaseFile.read("quay.case.yaml", text, SmallRuleBase.base());
    assertThat(file.problems()).isEmpty();
    return new Witness(file.cases().get(0), SmallRuleBase.base());
  }
}
