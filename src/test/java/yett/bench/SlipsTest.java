package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;

/** More than a hundred slips of the pen, each told with its place, its line and advice. */
class SlipsTest {
  private static final Path SLIPS = Path.of("src/test/resources/slips.txt");
  private static final SortedMap<String, String> SOUND =
      KnowledgeSource.folder(Path.of("src/test/resources/every-field")).files();
  private static final Checker CHECKER = new Checker();

  /** What is written, and all that is told of it. */
  record Slip(String edit, List<String> told) {
    SortedMap<String, String> files() {
      String[] parts = edit.split(" ~ ?", 3);
      String there = unescaped(parts[1]);
      String text = SOUND.get(parts[0]);
      int at = text.indexOf(there);
      assertThat(at).as("\"%s\" in %s", there, parts[0]).isNotNegative();
      String after = text.substring(at + there.length());
      SortedMap<String, String> files = new TreeMap<>(SOUND);
      files.put(parts[0], text.substring(0, at) + unescaped(parts[2]) + after);
      return files;
    }

    private static String unescaped(String text) {
      return text.replace("\\n", "\n").replace("\\t", "\t");
    }

    @Override
    public String toString() {
      return edit;
    }
  }

  static List<Slip> slips() throws IOException {
    List<Slip> slips = new ArrayList<>();
    for (String line : Files.readAllLines(SLIPS)) {
      if (line.startsWith(" ")) {
        slips.get(slips.size() - 1).told().add(line.strip());
      } else if (!line.startsWith("#") && !line.isBlank()) {
        slips.add(new Slip(line, new ArrayList<>()));
      }
    }
    return slips;
  }

  @Test
  void there_are_enough_of_all_sorts() throws IOException {
    assertThat(slips()).hasSizeGreaterThanOrEqualTo(120).doesNotHaveDuplicates();
    Stream<String> kinds =
        slips().stream()
            .flatMap(s -> s.told().stream())
            .filter(t -> t.contains(" | "))
            .map(t -> t.substring(0, t.indexOf(' ')));
    assertThat(kinds.distinct()).hasSizeGreaterThan(20);
  }

  @ParameterizedTest
  @MethodSource("slips")
  void a_slip_is_told_with_all_that_comes_of_it(Slip slip) {
    SortedMap<String, String> files = slip.files();
    List<Problem> problems = CHECKER.check(files).problems();
    assertThat(problems.stream().flatMap(SlipsTest::lines)).containsExactlyElementsOf(slip.told());
    for (Problem problem : problems) {
      if (problem.line() > 0) {
        assertThat(Checker.line(problem, files)).isPresent();
      }
    }
  }

  private static Stream<String> lines(Problem problem) {
    List<String> lines = problem.toString().lines().toList();
    return Stream.concat(
        Stream.of(problem.kind() + " | " + lines.get(0)),
        lines.stream().skip(1).map(String::strip));
  }
}
