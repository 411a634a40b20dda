package yett.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoundedFileTest {
  @TempDir Path directory;

  private Path file(String text) throws IOException {
    return Files.writeString(directory.resolve("f"), text);
  }

  @Test
  void what_is_within_its_bounds_is_read_whole() throws IOException {
    Path file = file("quay\n\nslipway");

    assertThat(BoundedFile.text(file, 13)).isEqualTo("quay\n\nslipway");
    try (var lines = BoundedFile.lines(file, 13, 7)) {
      assertThat(lines.next()).isEqualTo("quay");
      assertThat(lines.next()).isEmpty();
      assertThat(lines.next()).isEqualTo("slipway");
      assertThat(lines.next()).isNull();
    }
  }

  @Test
  void what_is_larger_is_not_read() throws IOException {
    Path file = file("quay\nslipway");

    assertThatThrownBy(() -> BoundedFile.text(file, 11)).isInstanceOf(BoundedFile.TooLarge.class);
    assertThatThrownBy(() -> BoundedFile.lines(file, 11, 99))
        .isInstanceOf(BoundedFile.TooLarge.class);
    try (var lines = BoundedFile.lines(file, 12, 6)) {
      assertThat(lines.next()).isEqualTo("quay");
      assertThatThrownBy(lines::next).isInstanceOf(BoundedFile.LineTooLong.class);
    }
  }

  @Test
  void a_file_that_grows_while_it_is_read_is_read_no_further() throws IOException {
    Path file = file("quay\n".repeat(10));
    try (var lines = BoundedFile.lines(file, 50, 4)) {
      Files.writeString(file, "quay\n".repeat(20));
      assertThatThrownBy(
              () -> {
                while (lines.next() != null) {}
              })
          .isInstanceOf(BoundedFile.TooLarge.class);
    }
  }

  @Test
  void what_is_no_file_or_no_text_is_told_apart() throws IOException {
    assertThatThrownBy(() -> BoundedFile.text(directory.resolve("none"), 9))
        .isInstanceOf(NoSuchFileException.class);
    assertThatThrownBy(() -> BoundedFile.text(directory, 9))
        .isInstanceOf(FileNotFoundException.class);
    Path bytes = Files.write(directory.resolve("b"), new byte[] {(byte) 0xff});
    assertThatThrownBy(() -> BoundedFile.text(bytes, 9))
        .isInstanceOf(CharacterCodingException.class);
  }
}
