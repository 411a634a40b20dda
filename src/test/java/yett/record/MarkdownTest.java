package yett.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
  void no_words_can_put_a_mark_on_the_page_wherever_they_stand() {
    String hostile = "\u001b[2J<script>*x*</script>\n# y\u202e";
    String page =
        new Markdown()
            .title(hostile)
            .heading(hostile)
            .paragraph(hostile)
            .paragraph(hostile, hostile)
            .item(hostile)
            .item(7, hostile)
            .inner(hostile)
            .items(List.of(hostile))
            .list(hostile, List.of(hostile))
            .toString();

    String plain = "\\[2J\\<script\\>\\*x\\*\\</script\\> / # y";
    assertThat(page)
        .isEqualTo(
            "# P\n\n## P\n\nP\n\n**P**: P\n\n- P\n7. P\n    - P\n- P\n\n## P\n\n- P\n"
                .replace("P", plain));
  }

  @Test
  void what_cannot_be_seen_is_dropped_and_lines_become_one() {
    assertThat(Markdown.plain(" one\r\ntwo\u001b[31m\u202e\tthree\n"))
        .isEqualTo("one / two\\[31m three");
  }

  /** Where a run of blanks was looked at from each of its blanks, this took an hour. */
  @Test
  void blanks_without_end_are_gone_through_once() {
    String blanks = " ".repeat(1_000_000);
    assertThat(Markdown.plain("a" + blanks + "b")).isEqualTo("a" + blanks + "b");
    assertThat(Markdown.plain("a" + blanks + "\n" + blanks + "b")).isEqualTo("a / b");
  }
}
