package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests that the dispatch sheet is written even if the list of the van's stock cannot be used. */
class VanListTest {
  @TempDir private Path home;
  private Path van;

  @BeforeEach
  void call() {
    van = home.resolve("van.yaml");
    run("the remotes are dead\n0\n0\n1\n0\n0\n0\nx\n", "call", "Fish dock");
  }

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  private String sheetWithout(String told) {
    Pipe.Result sheet = run("", "dispatch", "1");
    assertThat(sheet.exitCode()).as(sheet.stderr()).isZero();
    assertThat(sheet.stderr()).contains(told, "the sheet does not say what is on the van");
    assertThat(sheet.stdout())
        .contains("# Dispatch, case 2026-0001: Fish dock", "to bring")
        .doesNotContain("on the van");
    return sheet.stderr();
  }

  @Test
  void a_list_that_is_no_list() throws IOException {
    Files.writeString(van, "parts: [{part: transmitter battery, count: ten}\n");
    sheetWithout("van.yaml:1:");
    Files.writeString(van, "parts:\n  - {part: transmitter battery, count: -3}\n");
    sheetWithout("van.yaml:2:");
  }

  @Test
  void a_file_that_is_no_text() throws IOException {
    Files.write(van, new byte[] {(byte) 0xff, (byte) 0xfe, 0, (byte) 0xc3, 0x28});
    sheetWithout("van.yaml");
  }

  @Test
  void a_folder_in_its_place() throws IOException {
    Files.createDirectory(van);
    sheetWithout("van.yaml");
  }

  @Test
  void a_good_list_is_told_of_no_more() throws IOException {
    Files.writeString(van, "parts:\n  - {part: transmitter battery, count: 3}\n");
    Pipe.Result sheet = run("", "dispatch", "1");
    assertThat(sheet.stderr()).doesNotContain("van");
    assertThat(sheet.stdout()).contains("to fetch");
  }
}
