package yett.command.diagnose.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.TypedCase;
import yett.command.diagnose.site.SiteEntry;
import yett.desk.OpenCase;
import yett.interview.site.SiteFacts;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** "Enter if all is right" stands below what is to be right. */
class SiteFormTest extends TechniciansCase {
  private static final String PAGE = "Assumed as usual:";

  @Test
  void the_gate_is_shown_again_after_what_was_told_in_between() {
    typed.type("0", "since the chain was changed yesterday an alarm sounds", "1", "", "");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(3);
  }

  @Test
  void a_line_that_is_changed_is_told_by_itself() {
    typed.type("0", "6 m");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(2);
  }

  /** There are batteries of two kinds, so "with batteries" leaves a question. */
  @ParameterizedTest
  @ValueSource(strings = {"with batteries", "battery backup", "batteries"})
  void a_detail_that_is_named_without_how_it_is_is_asked(String line) {
    typed.type("0", line, "1", "save");
    assertThat(typed.screen())
        .contains("What batteries does the operator have?")
        .doesNotContain("danger:");
    assertThat(typed.open().moment().state().told().site()).containsEntry("batteries", "agm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"closes ok", "the gate has a nice leaf"})
  void words_that_share_one_with_the_name_of_a_detail_do_not_name_it(String line) {
    typed.type("0", line, "", "save");
    assertThat(typed.screen()).doesNotContain("Answer in");
  }

  @ParameterizedTest
  @ValueSource(strings = {"back", "unknown", ""})
  void a_detail_that_is_asked_is_left_as_it_was(String line) {
    typed.type("0", "climb", line, "save");
    assertThat(typed.screen()).contains("How much does the leaf climb", "Answer in %, or Enter");
    assertThat(typed.open().moment().state().told().site()).doesNotContainKey("grade");
  }

  /** "No" and 0 may also say what is shown is not right, or is; so it is asked. */
  @ParameterizedTest
  @CsvSource({"none, , none", "0, , ", "0, 3, two", "no, 3, two", "no, , "})
  void where_one_detail_is_shown_none_and_no_are_about_it(String line, String then, String now) {
    try (OpenCase open = typed.open()) {
      SiteEntry entry = new SiteEntry(typed.sitting(open, then == null ? "" : then));
      assertThat(entry.change(line, List.of(Shipped.BASE.siteQuestions().get("beams")))).isTrue();
      assertThat(entry.answers().get("beams")).isEqualTo(now);
    }
  }

  /** At a round of looks 0 says that all is in order, and it is typed here by habit. */
  @Test
  void a_bare_number_changes_no_detail_silently() {
    for (String number : List.of("0", "1", "2")) {
      try (OpenCase open = typed.open()) {
        SiteEntry entry = new SiteEntry(typed.sitting(open, ""));
        entry.change(number, List.of(Shipped.BASE.siteQuestions().get("stop-station")));
      }
    }
    assertThat(typed.stored()).isEmpty();
    assertThat(typed.screen()).contains("Is there a stop button");
  }

  @Test
  void the_whole_list_has_a_line_for_each_detail() {
    typed.type("0", "two beams", "?", "save");
    assertThat(typed.screen())
        .contains(
            "11 Opening, post to post: 5 m (assumed) 12 ", "Photo-electric beams: two or more")
        .doesNotContain("Photo-electric beams: two or more, for closing and opening (assumed)");
  }

  /** Whoever has looked at the whole list has not told what stands in it. */
  @Test
  void what_was_only_looked_at_stays_assumed() {
    typed.type("0", "two beams", "?", "");
    assertThat(typed.open().moment().state().told().site())
        .containsEntry("beams", "two")
        .doesNotContainKeys("edges", "stop-button", "climate");
  }

  /** At a second visit everything was told; what is as at most gates needs no line each. */
  @Test
  void of_what_is_known_only_what_matters_is_shown() {
    typed.type("0", "chain 08B, two beams, 5 m", "", "", "");
    var known = new SiteFacts(Shipped.BASE).answers(typed.open().moment().state().told().site());
    try (TypedCase again = new TypedCase(folder.resolve("again"), Shipped.QUICK, Role.TECHNICIAN)) {
      again.type(known, "0");
      assertThat(again.screen())
          .contains("Opening, post to post: 5 m", "Photo-electric beams: two")
          .containsPattern("\\d+ more are known and usual; \\? shows and changes all")
          .doesNotContain("Assumed as usual");
    }
  }
}
