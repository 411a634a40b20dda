package yett.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkdownTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '§',
      value = {
        "5.8 A running (3.1 A when new)§5.8 A running (3.1 A when new)",
        "Pell & Sons, gate no. 4!§Pell & Sons, gate no. 4!",
        "*bold* _it_ `code` ~~gone~~§\\*bold\\* \\_it\\_ \\`code\\` \\~\\~gone\\~\\~",
        "[a](b) <b> a|b &lt;§\\[a\\](b) \\<b\\> a\\|b \\&lt;",
        "# no heading§\\# no heading",
        "- no item§\\- no item",
        "-3 degrees§-3 degrees",
        "1. no list§1\\. no list",
        "---§\\---",
        "C:\\gates§C:\\\\gates"
      })
  void what_people_type_stands_as_it_was_typed(String typed, String escaped) {
    assertThat(Markdown.plain(typed)).isEqualTo(escaped);
  }

  @Test
  void what_cannot_be_seen_is_dropped_and_lines_become_one() {
    assertThat(Markdown.plain(" one\r\ntwo\u001b[31m\u202e\tthree\n"))
        .isEqualTo("one / two\\[31m three");
  }
}
