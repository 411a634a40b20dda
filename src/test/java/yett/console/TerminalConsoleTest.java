package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TerminalConsoleTest {
  private static final List<String> IDS = List.of("chain-slack", "chain-worn");

  @Test
  void what_is_offered_steers_no_terminal() {
    List<String> hostile = List.of("a\u001b[2Jb\u202e");
    assertThat(TerminalConsole.offered("", hostile)).containsExactly("a[2Jb");
    assertThat(TerminalConsole.offered("x,", hostile)).containsExactly("a[2Jb", "x,a[2Jb");
  }

  @Test
  void whole_answers_are_offered_and_behind_a_comma_the_next_part() {
    assertThat(TerminalConsole.offered("cha", IDS)).isEqualTo(IDS);
    assertThat(TerminalConsole.offered("idler-seized, cha", IDS))
        .containsExactly(
            "chain-slack", "chain-worn", "idler-seized, chain-slack", "idler-seized, chain-worn");
    assertThat(TerminalConsole.offered("a,b,", IDS)).contains("a,b,chain-worn");
  }

  @Test
  void what_goes_on_from_another_answer_waits_until_that_is_typed() {
    List<String> words = List.of("ask", "back", "ask chain-sag", "Fish dock");
    assertThat(TerminalConsole.offered("", words)).containsExactly("ask", "back", "Fish dock");
    assertThat(TerminalConsole.offered("ask", words)).doesNotContain("ask chain-sag");
    assertThat(TerminalConsole.offered("ask ch", words)).contains("ask chain-sag");
  }
}
