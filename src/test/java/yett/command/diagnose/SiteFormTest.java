package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yett.interview.SiteFacts;
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
