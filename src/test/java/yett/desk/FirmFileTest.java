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

  @Test
  void its_logo_is_a_small_file_beside_it() throws IOException {
    Path logo = settings.resolve("logo.png");
    Files.write(logo, new byte[] {1, 2, 3});
    write("firm: {name: Quayside, logo: logo.png}\n", "rw-r--r--");
    FirmFile file = new FirmFile(settings);

    assertThat(file.logo().orElseThrow()).containsExactly(1, 2, 3);

    Files.write(logo, new byte[(1 << 20) + 1]);
    assertThatThrownBy(file::logo)
        .hasMessageContaining("logo.png")
        .hasMessageContaining("at most 1 MiB");
    Files.delete(logo);
    assertThatThrownBy(file::logo).isInstanceOf(UncheckedIOException.class);
  }

  @Test
  void a_firm_without_a_logo_has_none() throws IOException {
    write("firm: {name: Quayside}\n", "rw-r--r--");
    assertThat(new FirmFile(settings).logo()).isEmpty();
    assertThat(new FirmFile(settings.resolve("nobody")).logo()).isEmpty();
  }
}
