package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that no casebook wrote. */
class CarryFileTest {
  @TempDir Path directory;
  private final List<CarriedCase> read = new ArrayList<>();
  private Path file;

  @BeforeEach
  void begin() {
    file = directory.resolve("cases.jsonl");
  }

  private void read() {
    CarryFile.read(
        file,
        new CarryFile.Reader() {
          @Override
          public void head(int cases, int sites) {}

          @Override
          public void site(CarriedSite site) {}

          @Override
          public void carried(CarriedCase carried) {
            read.add(carried);
          }
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"/dev/zero", "/dev/stdin", "/dev"})
  @EnabledOnOs(OS.LINUX)
  void what_is_no_file_is_told_and_not_read(String device) {
    assertThatThrownBy(() -> CarryFile.read(Path.of(device), null))
        .hasMessage(
            device
                + ": this is a directory, a device or a pipe. Cases are taken in from a file: write"
                + " them to one first.");
  }

  @Test
  void a_line_without_end_and_a_file_beyond_all_bounds_are_told() throws IOException {
    Files.write(file, new byte[33 << 20]);
    assertThatThrownBy(this::read)
        .hasMessage(file + ", line 1: this line is longer than any that cases export writes.");

    try (var large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength((1L << 30) + 1); // takes no room on the disk
    }
    assertThatThrownBy(this::read).hasMessageContaining("(1 GiB)");
  }

  /** Whoever wrote the file could write to the terminal with it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"kind\":\"\\u001b[2Jgate\"}",
        "{\"kind\":\"case\",\"uid\":\"u\",\"id\":\"\\u001b[2J\",\"site\":\"x\",\"events\":[]}",
        "{\"kind\":\"case\",\"uid\":\"\\u001b[2J\",\"id\":\"2026-0001\",\"site\":\"x\",\"opened\":"
            + "\"2026-11-25T09:30:00Z\",\"state\":\"OPEN\",\"title\":\"\",\"events\":[]}",
        "{\"kind\":\"case\",\"state\":\"\\u001b[2J\"}",
        "{\"kind\":\"case\",\"state\":\u001b[2J}",
      })
  void no_message_repeats_what_a_terminal_obeys(String line) throws IOException {
    Files.writeString(
        file, "{\"kind\":\"casebook\",\"format\":2,\"cases\":1,\"sites\":0}\n" + line);

    assertThatThrownBy(this::read)
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(file + ", line 2: ")
        .message()
        .doesNotContainPattern("\\p{Cntrl}")
        .doesNotContain("yett.", "tools.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Dear harbour master",
        "{\"kind\":\"case\"}",
        "{\"kind\":\"casebook\",\"format\":3,\"cases\":0,\"sites\":0}",
        "{\"kind\":\"casebook\",\"format\":1,\"cases\":1,\"sites\":0}\n{\"kind\":\"case\",\"uid\":\"u\"}",
        "{\"kind\":\"casebook\",\"format\":1,\"cases\":1,\"sites\":0}\n{\"kind\":\"gate\"}",
        "{\"kind\":\"casebook\",\"format\":1,\"cases\":1,\"sites\":0}\n{\"kind\":\"case\",\"uid",
        "[]",
        "",
      })
  void a_file_that_is_none_is_told_with_its_line(String text) throws IOException {
    Files.writeString(file, text);

    assertThatThrownBy(this::read)
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(file.toString())
        .hasMessageNotContaining("Exception");
    assertThat(read).isEmpty();
  }

  @Test
  void a_file_that_is_not_there_or_not_text_is_told() throws IOException {
    assertThatThrownBy(this::read).hasMessage(file + ": there is no such file.");
    Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertThatThrownBy(this::read).hasMessageContaining("not a file of cases");
  }
}
