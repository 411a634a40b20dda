package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tests that the picture at the head of README.md is what the program shows. Redraw it with {@code
 * mvn test -Dtest=ReadmePictureTest -Dyett.write=true}.
 */
class ReadmePictureTest {
  private static final Path PICTURE = Path.of("docs/figures/interview.svg");
  private static final String FIRST = "Looks: ";
  private static final String LAST = "  Understood as: ";

  @TempDir private Path home;

  /**
   * What is shown for a gate that stops by itself; in the first round the second look is out of the
   * ordinary.
   */
  private List<String> shown() {
    int complaint = new Screen(run("0\n\nsave\n")).numberOf("Starts, then stops on its own");
    List<String> lines =
        run("0\n6 m, no loops\n\n" + complaint + "\n0\n2b\nsave\n").lines().toList();
    int first = 0;
    while (!lines.get(first).startsWith(FIRST)) {
      first++;
    }
    int last = first;
    while (!lines.get(last).startsWith(LAST)) {
      last++;
    }
    while (lines.get(last + 1).startsWith("  ")) {
      last++;
    }
    return lines.subList(first, last + 1);
  }

  private String run(String typed) {
    Pipe.Result result =
        InProcess.run(
            Map.of("YETT_HOME", home.toString(), "COLUMNS", "80"), typed, "diagnose", "Fish dock");
    assertThat(result.exitCode()).as(result.stdout()).isZero();
    return result.stdout();
  }

  @Test
  void the_picture_shows_what_the_program_shows() throws IOException {
    String drawn = TerminalPicture.of("A round of looks at a gate that stops on its own", shown());
    if (Boolean.getBoolean("yett.write")) {
      Files.writeString(PICTURE, drawn);
    }
    assertThat(Files.readString(PICTURE)).isEqualTo(drawn);
  }
}
