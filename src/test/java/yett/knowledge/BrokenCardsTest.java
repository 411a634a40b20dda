package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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
    raised.removeAll(Set.of("no-folder", "no-add-on")); // have no card; see below and LayersTest
    raised.removeAll(
        Set.of(
            "too-many-files",
            "too-many-lines",
            "too-many-cards",
            "line-too-long",
            "outside",
            "too-large",
            "not-utf-8")); // HostileFilesTest
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
}
