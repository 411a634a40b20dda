package yett.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How a line at the prompt for commands falls into words. */
class CommandLineTest {
  @Test
  void a_word_in_quotes_keeps_its_blanks_also_behind_a_name() {
    assertThat(CommandLine.words("gates add \"North Quay\" opening=\"6 m\" batteries=none"))
        .containsExactly("gates", "add", "North Quay", "opening=6 m", "batteries=none");
    assertThat(CommandLine.words("cases list --gate=\"North Quay\""))
        .containsExactly("cases", "list", "--gate=North Quay");
  }

  @Test
  void a_mark_for_inches_is_no_quote() {
    assertThat(CommandLine.words("gates add Slip opening=7'6\" pitch=1/2\""))
        .containsExactly("gates", "add", "Slip", "opening=7'6\"", "pitch=1/2\"");
  }
}
