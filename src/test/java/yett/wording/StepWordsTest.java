package yett.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.step.HandOverReason;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.knowledge.MainsPart;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class StepWordsTest {
  private static final RuleBase BASE = Shipped.BASE;

  @Test
  void whoever_may_not_change_the_state_of_the_work_is_told_who_may() {
    var barred = new HandOverReason.Barred(BASE.setUps().get("locked-off"));

    assertThat(StepWords.because(barred))
        .startsWith("the gate is in the set-up \"")
        .contains(BASE.setUps().get("locked-off").name())
        .endsWith("\", which only a technician may change");
  }

  @Test
  void nothing_left_is_said_to_each_person_in_their_own_way() {
    assertThat(StepWords.because(new HandOverReason.NothingLeft(Role.CALLER)))
        .isEqualTo("nothing more that the caller may do or look at is worth its time");
    assertThat(StepWords.because(new HandOverReason.Untold()))
        .isEqualTo(
            "the caller could not answer the last questions; somebody at the gate will see"
                + " more");
    assertThat(StepWords.because(new HandOverReason.NothingLeft(Role.ELECTRICIAN)))
        .isEqualTo("no check or repair that is open to an electrician is worth its cost now");
  }

  @Test
  void what_is_left_for_others_is_named_with_who_may_and_why() {
    var fuse = BASE.repairs().get("replace-supply-fuse");
    var feeder = BASE.repairs().get("improve-feeder");

    assertThat(
            StepWords.because(
                new HandOverReason.NothingLeft(
                    Role.TECHNICIAN,
                    List.of(
                        new HandOverReason.Reserved(fuse, Optional.of(MainsPart.TERMINAL)),
                        new HandOverReason.Reserved(feeder, Optional.empty())))))
        .isEqualTo(
            "no check or repair that is open to a technician is worth its cost now; \""
                + fuse.name()
                + "\" is for an electrician, because it is work on mains terminals; the firm may"
                + " name others; \""
                + feeder.name()
                + "\" is for an electrician, because it is work at the mains");
  }

  /** "Nothing is worth its cost" would be untrue of what could not be done, or may not be. */
  @Test
  void what_could_not_be_done_and_what_a_danger_forbids_is_said() {
    var selector = BASE.repairs().get("correct-supply-setting");
    var charger = BASE.repairs().get("replace-charger");
    var stop = BASE.stops().get("live-frame");

    assertThat(
            StepWords.because(
                new HandOverReason.NothingLeft(
                    Role.TECHNICIAN,
                    List.of(),
                    List.of(new HandOverReason.Refused(selector, "mains not read")),
                    List.of(charger),
                    List.of(stop))))
        .isEqualTo(
            "while the danger stands ("
                + stop.name()
                + "), no other check or repair that is open to a technician is worth its cost now;"
                + " \""
                + selector.name()
                + "\" could not be done here: mains not read; \""
                + charger.name()
                + "\" by itself does not make it run");
  }

  @Test
  void a_repair_that_waits_for_somebody_elses_reading_is_named_with_it() {
    var selector = BASE.repairs().get("correct-supply-setting");
    var reading = BASE.checks().get("mains-at-terminals");
    assertThat(
            StepWords.because(
                new HandOverReason.NothingLeft(
                    Role.TECHNICIAN,
                    List.of(
                        new HandOverReason.Reserved(
                            selector, Optional.empty(), Optional.of(reading))))))
        .endsWith(
            "\"" + selector.name() + "\" waits until an electrician has read: " + reading.ask());
  }

  @Test
  void a_danger_names_who_goes_on_with_it() {
    assertThat(
            StepWords.because(new HandOverReason.Stopped(List.of(BASE.stops().get("live-frame")))))
        .isEqualTo("The gate or its fence gives a shock, and only an electrician may go on");
  }

  @Test
  void proofs_that_are_left_are_named_by_their_questions() {
    var proof = BASE.checks().get("edge-reverses");

    assertThat(StepWords.because(new HandOverReason.Unproved(List.of(proof))))
        .isEqualTo("proofs still to pass: " + proof.ask());
  }

  @Test
  void an_occasion_says_more_than_worth_or_nothing() {
    var repair = BASE.repairs().get("tighten-chain");

    assertThat(StepWords.occasion(Occasion.after(repair)))
        .isEqualTo("after \"" + repair.name() + "\"");
    assertThat(StepWords.occasion(Occasion.of(Occasion.Kind.WORTH))).isEmpty();
  }

  @Test
  void a_purpose_is_said_in_the_words_of_its_card() {
    StepWords words = new StepWords(BASE);

    assertThat(words.purpose(new Purpose(Purpose.Kind.REPAIR, "tighten-chain")))
        .isEqualTo(BASE.repairs().get("tighten-chain").name());
    assertThat(words.purpose(new Purpose(Purpose.Kind.CHECK, "chain-sag")))
        .isEqualTo(BASE.checks().get("chain-sag").ask());
    assertThat(words.purpose(Purpose.of(Purpose.Kind.TRIAL))).isEqualTo("trying the gate");
  }
}
