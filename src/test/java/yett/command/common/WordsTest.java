package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.testing.Shipped;

class WordsTest {
  @ParameterizedTest
  @CsvSource({"charging-fuse, 2.5 ohm", "charging-voltage, 40 V"})
  void the_reading_that_is_shown_how_to_type_is_one_that_could_be_read(String check, String shown) {
    assertThat(HeardAnswer.to(Shipped.BASE.checks().get(check), "").complaint())
        .startsWith("Type a reading such as " + shown + ",");
  }

  @Test
  void what_is_usual_at_the_gate_is_the_example_in_refusals() {
    Check sag = Shipped.BASE.checks().get("chain-sag");
    var usual = Optional.of(new Expectation("chain-sag", 40, 80, "", null));
    assertThat(HeardAnswer.to(sag, "", usual).complaint())
        .startsWith("Type a reading such as 60 mm");
    assertThat(HeardAnswer.to(sag, "24 V", usual).complaint())
        .isEqualTo("\"V\" is a voltage; this asks for a length in mm, e.g. 60 mm.");
  }

  /** The answers of a round have letters. */
  @Test
  void what_is_refused_at_a_list_with_letters_is_told_with_them() {
    Check chain = Shipped.BASE.checks().get("chain-surface");
    assertThat(HeardAnswer.lettered(chain, "purple").complaint())
        .contains("not one of the answers: a a film of oil, free of rust; b ")
        .doesNotContain("1 ");
  }

  /** A comma or a colon is what people put between a request and its reason. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hand over, no time | HANDOVER | no time",
        "hand over: no time | HANDOVER | no time",
        "Handover, no time | HANDOVER | no time",
        "hand-over no time | HANDOVER | no time",
        "hand over | HANDOVER | ''",
        "note: wet ground | NOTE | wet ground",
        "note, wet ground, no drain | NOTE | wet ground, no drain",
        "tell: battery 23.1 V | TELL | battery 23.1 V",
        "suspect, worn chain | SUSPECT | worn chain",
        "ask: 7 | ASK | 7",
        "correct, sag | CORRECT | sag",
        "cancel: sorted itself | CANCEL | sorted itself",
        "later, no time now | LATER | no time now",
        "save, off for a part | SAVE | off for a part",
        "save. | SAVE | ''",
        "back, | BACK | ''",
        "Why. | WHY | ''",
        "checks, | CHECKS | ''",
        "belief all. | ACCOUNT | ''",
      })
  void words_may_follow_a_request_after_a_comma_or_a_colon(
      String line, Words.Wish wish, String after) {
    assertThat(Words.wish(line)).contains(wish);
    assertThat(wish.after(line)).isEqualTo(after);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"save the gate", "later in the day it stops", "note", "backwards", "hand overs"})
  void what_only_begins_like_a_request_is_none_of_it(String line) {
    assertThat(Words.wish(line).filter(w -> w != Words.Wish.NOTE)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 and 4                | rain, hot",
        "4 2                    | rain, hot",
        "2, 4                   | rain, hot",
        "rain and wind          | rain, wind",
        "in wind, low-sun       | low-sun, wind",
        "3                      | cold-mornings",
        "on cold or damp mornings | cold-mornings",
      })
  void several_answers_are_taken_where_several_may_be_true(String line, String ids) {
    Check when = Shipped.BASE.checks().get("when-it-fails");
    assertThat(HeardAnswer.to(when, line).answer().orElseThrow().choices())
        .isEqualTo(List.of(ids.split(", ")));
  }

  @Test
  void a_part_that_is_no_answer_is_named_and_nothing_of_the_line_is_taken() {
    Check when = Shipped.BASE.checks().get("when-it-fails");
    assertThat(HeardAnswer.to(when, "2 and 9").complaint()).startsWith("\"9\" is not one of");
    assertThat(HeardAnswer.to(when, "rain and purple").complaint())
        .startsWith("\"purple\" is not one of the answers: 1 ");
    assertThat(HeardAnswer.to(when, "1 and 2").complaint())
        .isEqualTo(
            "\"at no particular time, or all the time\" goes with no other answer. Name it alone,"
                + " or only the others.");
  }

  @Test
  void one_answer_is_asked_for_where_only_one_can_be_true() {
    Check box = Shipped.BASE.checks().get("pad-and-bolts");
    assertThat(HeardAnswer.to(box, "2 and 3").answer()).isEmpty();
  }
}
