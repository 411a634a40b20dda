package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisabledOnOs(OS.WINDOWS)
class SealedFilesTest {
  private static final String NAME = "0a1b.kjar";
  private static final byte[] RULES = {1, 2, 3};

  @TempDir private Path home;
  private Path file;
  private Path key;

  @BeforeEach
  void places() {
    file = home.resolve("cache/rules").resolve(NAME);
    key = home.resolve("settings/rules.key");
  }

  private SealedFiles kept() {
    return new SealedFiles(home.resolve("cache/rules"), key);
  }

  private static void rights(Path path, String rights) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void what_was_kept_is_found_again_and_is_for_its_user_alone() throws IOException {
    assertThat(kept().get(NAME)).isEmpty();
    kept().put(NAME, RULES);
    assertThat(kept().get(NAME)).contains(RULES);
    assertThat(rights(file)).isEqualTo("rw-------");
    assertThat(rights(key)).isEqualTo("rw-------");
    assertThat(rights(file.getParent())).isEqualTo("rwx------");
    assertThat(rights(key.getParent())).isEqualTo("rwx------");
    try (var files = Files.list(file.getParent())) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void a_foreign_file_is_as_if_it_were_not_there() throws IOException {
    kept().put(NAME, RULES);
    byte[] sealed = Files.readAllBytes(file);
    for (byte[] foreign : new byte[][] {{}, {1, 2, 3}, changed(sealed, 0), changed(sealed, 33)}) {
      Files.write(file, foreign);
      assertThat(kept().get(NAME)).isEmpty();
    }
    Files.write(file, sealed);
    assertThat(kept().get(NAME)).contains(RULES);
    Files.copy(file, file.resolveSibling("ffff.kjar"));
    assertThat(kept().get("ffff.kjar")).as("under another name").isEmpty();
  }

  private static byte[] changed(byte[] bytes, int at) {
    byte[] changed = bytes.clone();
    changed[at] ^= 1;
    return changed;
  }

  @Test
  void what_was_sealed_with_another_key_is_foreign() throws IOException {
    kept().put(NAME, RULES);
    new SealedFiles(home.resolve("cache/rules"), home.resolve("other.key")).put(NAME, RULES);
    assertThat(kept().get(NAME)).isEmpty();
  }

  @Test
  void what_others_can_write_is_not_loaded() throws IOException {
    kept().put(NAME, RULES);
    rights(file, "rw--w----");
    assertThat(kept().get(NAME)).isEmpty();
    rights(file, "rw-------");
    rights(file.getParent(), "rwxrwxrwx");
    assertThat(kept().get(NAME)).isEmpty();
    rights(file.getParent(), "rwx------");
    assertThat(kept().get(NAME)).contains(RULES);
    Path elsewhere = Files.move(file, home.resolve("elsewhere"));
    Files.createSymbolicLink(file, elsewhere);
    assertThat(kept().get(NAME)).isEmpty();
  }

  @Test
  void a_key_that_others_could_read_is_made_anew() throws IOException {
    kept().put(NAME, RULES);
    byte[] known = Files.readAllBytes(key);
    rights(key, "rw-r--r--");
    assertThat(kept().get(NAME)).isEmpty();
    kept().put(NAME, RULES);
    assertThat(Files.readAllBytes(key)).isNotEqualTo(known);
    assertThat(kept().get(NAME)).contains(RULES);
  }

  @Test
  void where_no_key_can_be_kept_nothing_is() throws IOException {
    Files.createDirectories(key.getParent());
    rights(key.getParent(), "rwxrwxrwx");
    kept().put(NAME, RULES);
    assertThat(Files.exists(file)).isFalse();
    assertThat(kept().get(NAME)).isEmpty();
  }
}
