package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class StandardStreamsTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final StandardStreams output =
      new StandardStreams(new PrintStream(out), new PrintStream(err));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u001b[2J", // clears the screen
        "\u001b]0;title\u0007",
        "\u009b31m", // the same beginning in one character (C1)
        "\u0085", // next line (C1)
        "\b\b\b",
        "\u007f",
        "\u0000",
        "\u202e", // right to left from here
        "\u2066",
        "\u200b", // no width
        "\u2060",
        "\ufeff",
        "\u00ad",
        "\u200d", // joins nothing in Latin
        "\udb40\udc41" // a tag letter
      })
  void nothing_that_steers_a_terminal_gets_through(String hostile) {
    output.print("gate" + hostile + " 7");
    output.tell("gate" + hostile + " 7");

    String shown = hostile.replaceAll("[^\\x20-\\x7e]", "");
    assertThat(text(out)).isIn("gate" + shown + " 7\n", "gate" + shown + "\n 7\n");
    assertThat(text(err)).isEqualTo(text(out));
  }

  @Test
  void lines_stay_lines_and_none_is_written_over() {
    output.print("# Case 7\n\n- Ending:\tnot closed\r- over\u2028it\n");
    assertThat(text(out)).isEqualTo("# Case 7\n\n- Ending: not closed\n- over it\n");
  }

  @Test
  void writing_that_needs_joiners_keeps_them() {
    String persian = "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645";
    String family = "\ud83d\udc69\u200d\ud83d\udd27";
    output.print(persian + " " + family);
    assertThat(text(out)).isEqualTo(persian + " " + family + "\n");
  }

  @Test
  void json_loses_nothing_and_steers_nothing() {
    String hostile = "a\u001b[2J\u009b\u202e\u200b\u2028\u007f\udb40\udc41\u00bd\n\t\ud83d\udc69z";
    JsonMapper mapper = JsonMapper.builder().build();

    output.json(mapper.writeValueAsString(hostile) + "\n");

    assertThat(mapper.readValue(text(out), String.class)).isEqualTo(hostile);
    assertThat(text(out)).contains("\u00bd", "\ud83d\udc69").endsWith("z\"\n");
    assertThat(text(out).strip().codePoints()).noneMatch(Characters::steers);
  }

  @Test
  void what_could_not_be_written_is_known() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    StandardStreams lossy = new StandardStreams(new PrintStream(full), new PrintStream(err));
    assertThat(lossy.lost()).isFalse();
    lossy.print("a record");
    assertThat(lossy.lost()).isTrue();
  }

  @Test
  void what_libraries_print_is_for_the_note_and_never_for_the_screen() {
    List<String> noted = new ArrayList<>();
    PrintStream lines = new PrintStream(new LinesTo(noted::add), true, StandardCharsets.UTF_8);
    lines.println("one");
    lines.print("tw");
    lines.print("o\r\nthr\u00e9\u00e9\n");
    lines.print("left");
    lines.flush();
    assertThat(noted).containsExactly("one", "two", "thr\u00e9\u00e9");
    lines.close();
    assertThat(noted).endsWith("left").hasSize(4);
  }

  private static String text(ByteArrayOutputStream stream) {
    return stream.toString(StandardCharsets.UTF_8);
  }

  @Test
  void messages_break_between_words_where_a_screen_is_that_wide() {
    output.fold(() -> 20);
    output.tell("\"weight\" is not a question about a gate.");
    assertThat(err.toString(StandardCharsets.UTF_8).lines())
        .containsExactly("\"weight\" is not a", "question about a", "gate.");
  }
}
