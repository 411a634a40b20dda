package yett;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One word for one thing: words that docs/glossary.md puts aside do not come back. */
class GlossaryTest {
  private static final Path GLOSSARY = Path.of("docs/glossary.md");
  private static final String PUT_ASIDE = "## Put aside";

  /** Tells what was, in the words of then. */
  private static final Path CHANGES = Path.of("docs/CHANGELOG.md");

  private static List<String> firstCells(String text) {
    return text.lines()
        .filter(line -> line.startsWith("| ") && !line.startsWith("| put aside"))
        .filter(line -> !line.startsWith("| word |"))
        .map(line -> line.split("\\|")[1].strip())
        .toList();
  }

  private static Stream<Path> written() throws IOException {
    List<Path> files = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    for (String folder : List.of("docs", "knowledge", "shared", "src/main")) {
      try (Stream<Path> found = Files.walk(Path.of(folder))) {
        found
            .filter(p -> p.toString().matches(".*\\.(md|yaml|json|drl|csv|java|css)"))
            .forEach(files::add);
      }
    }
    return files.stream().filter(p -> !p.equals(GLOSSARY) && !p.equals(CHANGES));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file).replaceAll("[\\s*/\"+]+", " ").toLowerCase(Locale.ROOT);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void words_put_aside_do_not_come_back() throws IOException {
    String glossary = Files.readString(GLOSSARY);
    List<String> words = firstCells(glossary.substring(glossary.indexOf(PUT_ASIDE)));
    assertThat(words).hasSizeGreaterThan(10);
    List<String> found = new ArrayList<>();
    written()
        .forEach(
            file -> {
              String text = read(file);
              words.stream()
                  .filter(text::contains)
                  .forEach(word -> found.add(file + ": \"" + word + "\""));
            });
    assertThat(found).isEmpty();
  }

  @Test
  void every_word_of_the_glossary_is_used() throws IOException {
    String glossary = Files.readString(GLOSSARY);
    List<String> words = firstCells(glossary.substring(0, glossary.indexOf(PUT_ASIDE)));
    assertThat(words).hasSizeGreaterThan(40);
    String all = String.join(" ", written().map(GlossaryTest::read).toList());
    assertThat(words)
        .allSatisfy(
            word ->
                Stream.of(word.split(", "))
                    .forEach(part -> assertThat(all).as(part).contains(part)));
  }
}
