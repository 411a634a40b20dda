package yett.e2e;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.core.type.TypeReference;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A gate and what is wrong with it, from a test case next to the cards.
 *
 * @param answers by id of the check, for many more checks than an interview will ask
 * @param othersUsual whether checks without an answer here show their first outcome
 * @param repairs those that remove the fault
 */
record Story(
    List<String> complaints,
    List<String> history,
    Map<String, String> answers,
    boolean othersUsual,
    List<String> repairs) {

  /** The case with this name in the folder of the rule base. */
  static Story of(String name) {
    try (Stream<Path> files = Files.walk(Path.of("knowledge"))) {
      return files
          .filter(file -> file.toString().endsWith(".case.yaml"))
          .flatMap(file -> documents(file))
          .filter(text -> text.startsWith("case: " + name + "\n"))
          .map(Story::read)
          .findFirst()
          .orElseThrow(() -> new AssertionError("No case file tells of \"" + name + "\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<String> documents(Path file) {
    try {
      return Stream.of(Files.readString(file).replace("\r\n", "\n").split("(?m)^---\n"))
          .map(text -> text.substring(text.indexOf("case: ")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Story read(String text) {
    Map<String, Object> fields =
        new YAMLMapper().readValue(text, new TypeReference<Map<String, Object>>() {});
    return new Story(
        words(fields.get("complaints")),
        words(fields.get("history")),
        new YAMLMapper()
            .convertValue(fields.get("answers"), new TypeReference<Map<String, String>>() {}),
        "usual".equals(fields.get("others")),
        words(fields.get("repairs")));
  }

  private static List<String> words(Object list) {
    return list == null
        ? List.of()
        : new YAMLMapper().convertValue(list, new TypeReference<List<String>>() {});
  }
}
