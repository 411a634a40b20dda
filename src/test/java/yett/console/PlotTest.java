package yett.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlotTest {
  private static final Block.Plot PLOT =
      new Block.Plot(
          List.of(
              new Block.Point(0, 0),
              new Block.Point(0.1, 380),
              new Block.Point(0.6, 140),
              new Block.Point(5, 0),
              new Block.Point(6, 0)),
          List.of(
              new Block.Level("400", 400), new Block.Level("150", 150), new Block.Level("0", 0)),
          "time in s",
          "force in N");

  private static List<String> drawn(Block.Plot plot, int width, boolean colour) {
    return Renderer.render(List.of(plot), new Layout(width, colour, false)).lines().toList();
  }

  @Test
  void a_curve_is_drawn_between_its_levels() {
    List<String> lines = drawn(PLOT, 40, false);

    assertThat(lines)
        .containsExactly(
            "  force in N",
            "  400 |---------------------------------",
            "      |*",
            "      |**",
            "      |**",
            "      |**",
            "      |***",
            "      |* *",
            "      |* *",
            "      |* **",
            "  150 |*--***---------------------------",
            "      |*    ******",
            "      |*         ******",
            "      |*              ******",
            "      |*                   ******",
            "    0 |*------------------------********",
            "      ++----------+----------+---------+",
            "       0          2          4         6",
            "       time in s");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 120})
  void no_line_is_wider_than_the_page(int width) {
    assertThat(drawn(PLOT, width, false))
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width))
        .anySatisfy(line -> assertThat(line).hasSize(width));
  }

  @Test
  void colour_changes_nothing() {
    assertThat(drawn(PLOT, 80, true)).isEqualTo(drawn(PLOT, 80, false));
  }

  @Test
  void a_short_peak_is_not_lost_between_columns() {
    Block.Plot spike =
        new Block.Plot(
            List.of(
                new Block.Point(0, 0),
                new Block.Point(2.000, 0),
                new Block.Point(2.001, 100),
                new Block.Point(2.002, 0),
                new Block.Point(10, 0)),
            List.of(),
            "x",
            "y");

    assertThat(drawn(spike, 60, false).get(1)).contains("*");
  }

  @Test
  void a_flat_curve_has_a_place() {
    Block.Plot flat =
        new Block.Plot(List.of(new Block.Point(0, 0), new Block.Point(1, 0)), List.of(), "x", "y");

    assertThat(drawn(flat, 60, false).get(15)).contains("*****");
  }

  @Test
  void points_run_to_the_right() {
    List<Block.Point> back = List.of(new Block.Point(1, 0), new Block.Point(0, 0));

    assertThatThrownBy(() -> new Block.Plot(back, List.of(), "x", "y"))
        .hasMessageContaining("does not lie to the right");
    assertThatThrownBy(() -> new Block.Point(Double.NaN, 0)).hasMessageContaining("finite");
  }
}
