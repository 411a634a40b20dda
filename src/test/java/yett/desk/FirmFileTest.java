package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.FirmSettings;
import yett.knowledge.MainsPart;
import yett.knowledge.Role;

/** Only whoever works on this computer says what a firm lets its people do. */
class FirmFileTest {
  @TempDir private Path settings;

  private FirmSettings write(String text, String rights) throws IOException {
    Files.setPosixFilePermissions(settings, PosixFilePermissions.fromString("rwx------"));
    Path file = Files.writeString(settings.resolve("firm.yaml"), text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
    return new FirmFile(settings).read();
  }

  @Test
  void no_file_leaves_everything_to_the_cards() {
    assertThat(new FirmFile(settings).read()).isEqualTo(FirmSettings.NONE);
  }

  @Test
  void what_it_says_holds() throws IOException {
    assertThat(write("mains-parts: {terminal: technician}\n", "rw-r--r--").mainsParts())
        .isEqualTo(Map.of(MainsPart.TERMINAL, Role.TECHNICIAN));
  }

  @Test
  void a_file_that_others_can_write_to_is_not_used() {
    assertThatThrownBy(() -> write("mains-parts: {terminal: technician}\n", "rw-rw-rw-"))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("firm.yaml")
        .hasMessageContaining("chmod go-w");
  }
}
