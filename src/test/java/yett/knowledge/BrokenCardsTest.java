package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is wrong with a card is told with its place and with advice. Each folder of {@code
 * broken-knowledge} is named for a kind of problem and holds a card that has it, put beside (or in
 * place of) the sound cards of {@code sound-knowledge}.
 */
class BrokenCardsTest {
  private static final Path RESOURCES = Path.of("src/test/resources");
  private static final Path BROKEN = RESOURCES.resolve("broken-knowledge");
  private static final Path SOUND = RESOURCES.resolve("sound-knowledge");
  private static final Path SOURCES = Path.of("src/main/java/yett/knowledge");
  private static final int MUTANTS = 3_000;

  static Stream<String> kinds() throws IOException {
    try (Stream<Path> folders = Files.list(BROKEN)) {
      return folders.map(f -> f.getFileName().toString()).sorted().toList().stream();
    }
  }

  @Test
  void the_sound_cards_are_sound() {
    assertThat(RuleBase.read(KnowledgeSource.folder(SOUND)).causes()).hasSize(4);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_broken_card_is_told_with_place_and_advice(String kind) throws IOException {
    List<Problem> problems = problems(BROKEN.resolve(kind));
    assertThat(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")))
        .isEqualToIgnoringNewLines(Files.readString(BROKEN.resolve(kind).resolve("expected.txt")));
    assertThat(problems).extracting(Problem::kind).containsOnly(kind);
  }

  private static List<Problem> problems(Path folder) throws IOException {
    Path json = folder.resolve("broken.json"); // events of a case are read by the same reader
    if (Files.exists(json)) {
      List<Problem> problems = new ArrayList<>();
      CardFile.read("broken.json", Files.readString(json), problems);
      return problems;
    }
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(SOUND).files());
    files.putAll(KnowledgeSource.folder(folder).files());
    Throwable thrown = catchThrowable(() -> RuleBase.read(() -> files));
    assertThat(thrown).isInstanceOf(KnowledgeException.class);
    return ((KnowledgeException) thrown).problems();
  }

  @Test
  void every_kind_of_problem_has_a_broken_card() throws IOException {
    Set<String> raised = new TreeSet<>();
    try (Stream<Path> sources = Files.list(SOURCES)) {
      for (Path source : sources.toList()) {
        raised.addAll(kindsIn(Files.readString(source)));
      }
    }
    raised.remove("no-folder"); // has no card; see below
    assertThat(raised).hasSizeGreaterThan(20);
    assertThat(kinds()).containsExactlyElementsOf(raised);
  }

  @Test
  void a_folder_that_is_not_there_is_told() {
    assertThatThrownBy(() -> RuleBase.read(KnowledgeSource.folder(Path.of("no-such-folder"))))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("there is no folder \"no-such-folder\"");
  }

  /** The kind is the word before the message in every call that notes a problem. */
  private static Set<String> kindsIn(String source) {
    Set<String> kinds = new TreeSet<>();
    Matcher calls = Pattern.compile("(new Problem|\\bproblem)\\(").matcher(source);
    while (calls.find()) {
      List<String> arguments = arguments(source, calls.end());
      int place = calls.group(1).equals("new Problem") ? 0 : arguments.size() == 6 ? 3 : 1;
      if (arguments.size() > place && arguments.get(place).matches("\"[a-z-]+\"")) {
        kinds.add(arguments.get(place).replace("\"", ""));
      }
    }
    return kinds;
  }

  private static List<String> arguments(String source, int start) {
    List<String> arguments = new ArrayList<>();
    StringBuilder argument = new StringBuilder();
    boolean quoted = false;
    for (int i = start, depth = 0; depth >= 0; i++) {
      char c = source.charAt(i);
      if (c == '"' && source.charAt(i - 1) != '\\') {
        quoted = !quoted;
      }
      depth += quoted ? 0 : c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth < 0 || c == ',' && depth == 0 && !quoted) {
        arguments.add(argument.toString().strip());
        argument.setLength(0);
      } else {
        argument.append(c);
      }
    }
    return arguments;
  }

  @Test
  void a_slip_of_the_pen_gives_a_rule_base_or_problems_with_places() {
    SortedMap<String, String> shipped = KnowledgeSource.folder(Path.of("knowledge")).files();
    shipped.keySet().removeIf(name -> !name.endsWith(".yaml") || name.endsWith(".case.yaml"));
    List<String> names = List.copyOf(shipped.keySet());
    int told =
        IntStream.range(0, MUTANTS)
            .parallel()
            .map(
                seed -> {
                  Random random = new Random(seed * 0x9E3779B97F4A7C15L);
                  String name = names.get(random.nextInt(names.size()));
                  SortedMap<String, String> files = new TreeMap<>(shipped);
                  files.put(name, mutated(files.get(name), random));
                  return read(files, seed, name);
                })
            .sum();
    assertThat(told).as("mutants with a problem").isGreaterThan(MUTANTS / 4);
  }

  private static int read(SortedMap<String, String> files, int seed, String name) {
    try {
      RuleBase.read(() -> files);
      return 0;
    } catch (KnowledgeException e) {
      for (Problem problem : e.problems()) {
        boolean clear =
            !problem.message().isBlank()
                && !problem.message().contains("null")
                && !problem.message().contains("Exception")
                && !problem.message().contains("java.");
        if (!clear || problem.line() < 1 && !problem.kind().equals("missing-cause")) {
          fail("seed %d, %s: a poor message: %s: %s", seed, name, problem.kind(), problem);
        }
      }
      return 1;
    } catch (RuntimeException e) {
      return fail("seed %d: %s with\n%s".formatted(seed, e, files.get(name)), e);
    }
  }

  private static String mutated(String text, Random random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(8)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(at));
      case 2 -> {
        String line = lines.set(at, lines.get(other));
        lines.set(other, line);
      }
      case 3 -> swapValues(lines, at, other);
      case 4 -> {
        return text.substring(0, random.nextInt(text.length()));
      }
      case 5 -> lines.set(at, "  " + lines.get(at));
      case 6 -> {
        String line = lines.get(at);
        int cut = line.isEmpty() ? 0 : random.nextInt(line.length());
        int end = Math.min(line.length(), cut + 1 + random.nextInt(3));
        lines.set(at, line.substring(0, cut) + line.substring(end));
      }
      default -> {
        List<String> values =
            List.of("[]", "{}", "~", "-1", "1e400", ".nan", "\"\"", "[[]]", "{a: {b: c}}", "yes");
        String key = lines.get(at).replaceFirst(":.*", "");
        lines.set(at, key + ": " + values.get(random.nextInt(values.size())));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static void swapValues(List<String> lines, int at, int other) {
    String[] one = lines.get(at).split(": ", 2);
    String[] two = lines.get(other).split(": ", 2);
    if (one.length == 2 && two.length == 2) {
      lines.set(at, one[0] + ": " + two[1]);
      lines.set(other, two[0] + ": " + one[1]);
    }
  }
}
