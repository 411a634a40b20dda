package yett.command.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.console.Layout;
import yett.console.Renderer;
import yett.worksheet.Worked;

class CalculationViewsTest {
  @TempDir Path folder;

  private static String shown(Worked worked, int width, boolean colour) {
    return Renderer.render(
        CalculationViews.solution(worked.solution()), new Layout(width, colour, false));
  }

  @Test
  void cautions_stand_before_what_to_do() {
    String page =
        shown(Worked.out("chain-take-up", "chain=40", "span=5 m", "sag=300 mm"), 80, false);

    assertThat(page)
        .containsSubsequence(
            "At the gate",
            "WARNING: Chain, sprocket and idlers draw in fingers",
            "WARNING: A chain is the leaf's only hold",
            "Take out 2 pitches");
  }

  @Test
  void danger_stands_before_warning() {
    assertThat(shown(Worked.out("leaf-released", "grade=3 %", "mass=400 kg"), 80, false))
        .containsSubsequence("DANGER:", "WARNING:", "runs downhill");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 120})
  void a_recorded_force_is_drawn_under_its_numbers(int width) throws IOException {
    Path curve =
        Files.writeString(
            folder.resolve("ferry.csv"), "time,force\n0,0\n0.05,380\n0.6,140\n5.6,0\n");
    Worked worked = Worked.out("obstruction-force", "curve=" + curve, "zone=closing-gap");

    String page = shown(worked, width, false);

    assertThat(page.lines()).allMatch(line -> line.length() <= width);
    assertThat(page)
        .containsSubsequence(
            "verdict:", "peak allowed:", "limit 400 |", "limit 150 |", "time from contact in s");
    assertThat(page).isEqualTo(shown(worked, width, true).replaceAll("\u001b\\[[0-9;]*m", ""));
  }
}
