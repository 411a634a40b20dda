package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LineDifferenceTest {
  @Test
  void what_went_and_came_stands_with_the_lines_beside_it() {
    assertThat(LineDifference.of("a\nb\nc\nd\ne\nf\n", "a\nb\nc\nd\nE\nf\ng\n"))
        .containsExactly("…", "  c", "  d", "- e", "+ E", "  f", "+ g");
    assertThat(LineDifference.of("a\n", "a\n")).containsExactly("…");
  }

  /** Whatever changed: the old text is what stays and went, the new one what stays and came. */
  @Test
  void both_texts_can_be_made_of_it() {
    for (int seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      String before = text(random);
      String after = text(random);
      List<String> lines = LineDifference.of(before, after);
      if (!lines.contains("…")) {
        assertThat(part(lines, "  ", "- ")).as("seed %d", seed).isEqualTo(before);
        assertThat(part(lines, "  ", "+ ")).as("seed %d", seed).isEqualTo(after);
      }
    }
  }

  private static String text(Random random) {
    return IntStream.range(0, random.nextInt(6))
        .mapToObj(i -> "line " + random.nextInt(3) + "\n")
        .collect(Collectors.joining());
  }

  private static String part(List<String> lines, String same, String own) {
    return lines.stream()
        .filter(line -> line.startsWith(same) || line.startsWith(own))
        .map(line -> line.substring(2) + "\n")
        .collect(Collectors.joining());
  }
}
