package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.testing.Shipped;

class RoundLineTest {
  /** 1 display-lit, 2 release-state, 3 chain-surface, 4 held-devices, 5 pad-and-bolts. */
  private static final List<Check> LOOKS =
      Stream.of("display-lit", "release-state", "chain-surface", "held-devices", "pad-and-bolts")
          .map(Shipped.BASE.checks()::get)
          .toList();

  private static String said(String line) {
    return RoundLine.read(LOOKS, line).said().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            e ->
                (e.getKey() + 1)
                    + " "
                    + e.getValue()
                        .map(a -> a.map(Answer.Chosen::outcome, r -> "", () -> "?", () -> "-"))
                        .orElse("*"))
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''          | ''",
        "3           | 3 *",
        "1 3 5       | 1 *, 3 *, 5 *",
        "1,3;5       | 1 *, 3 *, 5 *",
        "3c          | 3 rusty",
        "3 c         | 3 rusty",
        "3C          | 3 rusty",
        "3 rusty     | 3 rusty",
        "3 rusty 5   | 3 rusty, 5 *",
        "3 rusty, 1 flickers | 1 flickers, 3 rusty",
        "3a          | 3 oiled",
        "?3          | 3 ?",
        "? 3         | 3 ?",
        "-2          | 2 -",
        "?1-3 5b     | 1 ?, 2 ?, 3 ?, 5 moves",
        "rusty       | 3 rusty",
        "tilted, ?1  | 1 ?, 5 tilted",
        "3b 3c       | 3 rusty",
      })
  void a_line_says_what_is_not_ordinary(String line, String what) {
    assertThat(said(line)).isEqualTo(what);
    assertThat(RoundLine.read(LOOKS, line).complaints()).isEmpty();
  }

  /** "purple" is no answer, so it is asked; "burnt" says more than the answer with "loose". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3 purple                     | 3 *       | 3 purple",
        "5 loose and burnt            | 5 moves   | 5 loose and burnt",
        "1 flickers, 5 mauve or burnt | 1 flickers, 5 * | 5 mauve or burnt",
      })
  void words_that_are_not_all_in_an_answer_are_kept_with_their_number(
      String line, String what, String kept) {
    RoundLine.Heard heard = RoundLine.read(LOOKS, line);
    assertThat(said(line)).isEqualTo(what);
    assertThat(heard.complaints()).isEmpty();
    assertThat(
            heard.remarks().entrySet().stream()
                .map(e -> (e.getKey() + 1) + " " + e.getValue())
                .toList())
        .containsExactly(kept);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7         | the looks are numbered 1 to 5",
        "0         | the looks are numbered 1 to 5",
        "3-1       | the looks are numbered 1 to 5",
        "?2-9      | the looks are numbered 1 to 5",
        "3x        | a a film of oil",
        "?3b       | type ?3",
        "gibberish | matches none of these looks",
      })
  void what_cannot_be_read_is_told_and_counts_for_nothing(String line, String complaint) {
    RoundLine.Heard heard = RoundLine.read(LOOKS, line);
    assertThat(heard.said()).isEmpty();
    assertThat(String.join(" ", heard.complaints())).containsIgnoringCase(complaint);
  }

  @Test
  void the_other_parts_of_a_line_count() {
    RoundLine.Heard heard = RoundLine.read(LOOKS, "3 rusty, 9, ?1");
    assertThat(heard.said()).containsOnlyKeys(2, 0);
    assertThat(heard.complaints()).hasSize(1);
  }

  /** 1 track-look and 2 seen-at-the-box, of which several may be true, 3 pad-and-bolts. */
  private static final List<Check> SEVERAL =
      Stream.of("track-look", "seen-at-the-box", "pad-and-bolts")
          .map(Shipped.BASE.checks()::get)
          .toList();

  private static String ticks(String line) {
    return RoundLine.read(SEVERAL, line).said().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            e ->
                (e.getKey() + 1)
                    + " "
                    + e.getValue().map(a -> String.join("+", a.choices())).orElse("*"))
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1bd                        | 1 dirty+bent",
        "1db                        | 1 dirty+bent",
        "1bcd, 3b                   | 1 dirty+blocked+bent, 3 moves",
        "1b and d                   | 1 dirty+bent",
        "1 b and d                  | 1 dirty+bent",
        "1b, d                      | 1 dirty+bent",
        "1b 1d                      | 1 dirty+bent",
        "1b, 3c, 1d                 | 1 dirty+bent, 3 tilted",
        "1b and 3c                  | 1 dirty, 3 tilted",
        "1b and bent                | 1 dirty+bent",
        "1 dirty and bent           | 1 dirty+bent",
        "1 dirty, bent              | 1 dirty+bent",
        "1 bent & dirty             | 1 dirty+bent",
        "dirty and bent             | 1 dirty+bent",
        "2 insects and wet 1c       | 1 blocked, 2 insects+wet",
        "1c                         | 1 blocked",
        "1 dirty and dirty          | 1 dirty",
        "3b 3c                      | 3 tilted",
      })
  void several_answers_to_one_look_are_all_kept(String line, String what) {
    assertThat(ticks(line)).isEqualTo(what);
    assertThat(RoundLine.read(SEVERAL, line).complaints()).isEmpty();
    assertThat(RoundLine.read(SEVERAL, line).remarks()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1b and a     | goes with no other answer",
        "1b, 1a       | goes with no other answer",
        "3bc          | matches none of these looks",
        "1be          | matches none of these looks",
      })
  void what_cannot_be_true_at_once_is_refused_and_its_look_stays_open(String line, String why) {
    RoundLine.Heard heard = RoundLine.read(SEVERAL, line);
    assertThat(heard.complaints()).singleElement().asString().contains(why);
    assertThat(heard.said().getOrDefault(0, java.util.Optional.empty())).isEmpty();
  }
}
