package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Check;
import yett.testing.Shipped;

class ListChoiceTest {
  private static final List<String> IDS = List.of("one-fails", "stops", "short", "starts");
  private static final List<String> TEXTS =
      List.of(
          "One way fails, another works",
          "Starts, then stops on its own",
          "Stops short of its end, or leaves a gap",
          "Starts to close, stops or comes back");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Starts, then stops on its own | 1",
        "starts to close, stops or comes back. | 3",
        "One way fails, another works, Stops short of its end, or leaves a gap | 0 2",
        "2, one way fails, another works | 0 1",
        "one fails; starts to close | 0 3",
        "4 1 | 0 3",
        "4, 1, 4 | 0 3",
        "1 and 4 | 0 3",
        "1, 2 and 4 | 0 1 3"
      })
  void a_name_with_commas_is_one_name(String line, String positions) {
    ListChoice.Several picked = ListChoice.several(line, IDS, TEXTS);
    assertThat(picked.unclear()).isEmpty();
    assertThat(picked.positions())
        .extracting(String::valueOf)
        .containsExactly(positions.split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1, flurble | flurble",
        "st, 1 | st",
        "7 | 7",
        "one way fails, st | st",
        "it starts to open and comes back | it starts to open and comes back",
        "2, battery stops at 25.1 V | battery stops at 25.1 V"
      })
  void what_names_nothing_or_several_is_told(String line, String part) {
    assertThat(ListChoice.several(line, IDS, TEXTS).unclear()).contains(part);
  }

  /** "no motor repaired" is not "motor repaired", and "does not turn" is not "turns". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "no motor repaired       | ''",
        "the motor was repaired  | 0",
        "motor isn't repaired    | ''",
        "the leaf doesn't turn   | 1",
        "the leaf turns          | ''",
      })
  void a_negation_never_means_what_it_denies(String line, String positions) {
    List<String> texts =
        List.of("as usual, the motor repaired lately", "the leaf does not turn back");
    assertThat(ListChoice.pick(line, List.of("usual", "still"), texts))
        .extracting(String::valueOf)
        .isEqualTo(positions.isEmpty() ? List.of() : List.of(positions.split(" ")));
  }

  @Test
  void nothing_typed_picks_nothing() {
    assertThat(ListChoice.several(" ", IDS, TEXTS))
        .isEqualTo(new ListChoice.Several(List.of(), Optional.empty()));
  }

  static List<Check> complaints() {
    return Shipped.BASE.complaints();
  }

  @ParameterizedTest
  @MethodSource("complaints")
  void every_complaint_is_taken_by_its_name_in_the_list(Check complaint) {
    List<String> ids = complaints().stream().map(Check::id).toList();
    List<String> names = complaints().stream().map(Check::ask).toList();
    for (String name : List.of(complaint.ask(), complaint.id(), complaint.id().replace('-', ' '))) {
      assertThat(ListChoice.several(name, ids, names).positions())
          .containsExactly(ids.indexOf(complaint.id()));
      assertThat(new ComplaintNames(complaints()).named(name)).contains(complaint);
    }
    assertThat(new ComplaintNames(complaints()).named(complaint.spoken())).contains(complaint);
  }
}
