package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MistakesTest {
  @TempDir Path directory;

  @Test
  void a_person_gets_a_line_and_the_file_the_rest() throws IOException {
    Path data = directory.resolve("yett");
    String told = new Mistakes(data).told(new IllegalStateException("no such wheel"));

    assertThat(told)
        .contains("Your answers are saved", data.resolve("mistakes.log").toString())
        .doesNotContain("IllegalStateException", "no such wheel", "\n");
    assertThat(Files.readString(data.resolve("mistakes.log")))
        .contains(
            "java.lang.IllegalStateException: no such wheel",
            "\tat yett.command.common.MistakesTest");
  }

  @Test
  void where_it_cannot_be_noted_the_line_says_so() throws IOException {
    Path file = Files.writeString(directory.resolve("yett"), "no folder");
    String told = new Mistakes(file).told(new IllegalStateException("no such wheel"));
    assertThat(told).contains("could not be noted", "IllegalStateException").doesNotContain("\n");
  }

  @Test
  void the_file_stays_small_however_many_there_are() throws IOException {
    Mistakes mistakes = new Mistakes(directory);
    Throwable endless = new IllegalStateException("x".repeat(3 * Mistakes.MOST_OF_ONE));
    for (int i = 0; i < 3 * Mistakes.MOST / Mistakes.MOST_OF_ONE; i++) {
      mistakes.told(endless);
    }
    mistakes.printed("the last");

    assertThat(Files.size(directory.resolve("mistakes.log"))).isLessThanOrEqualTo(Mistakes.MOST);
    assertThat(Files.size(directory.resolve("mistakes-before.log")))
        .isLessThanOrEqualTo(Mistakes.MOST);
    assertThat(Files.readString(directory.resolve("mistakes.log"))).contains(": the last");
    assertThat(directory.toFile().list()).hasSize(2);
  }
}
