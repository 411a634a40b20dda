package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards from anybody: they are refused with words, and reach nothing outside. */
class HostileFilesTest {
  @TempDir private Path folder;
  @TempDir private Path elsewhere;

  static Map<String, String> texts() {
    String laughs =
        IntStream.range(1, 30)
            .mapToObj(i -> "l%d: &l%d [%s]\n".formatted(i, i, "*l%d,".formatted(i - 1).repeat(9)))
            .reduce("cause: x\nl0: &l0 [lol, lol]\n", String::concat);
    Map<String, String> texts = new TreeMap<>();
    texts.put("aliases that grow without end", laughs);
    texts.put("an alias of itself", "cause: &x\n  a: *x\n");
    texts.put("lists in lists", "cause: " + "[\n ".repeat(200_000));
    texts.put(
        "maps in maps",
        IntStream.range(0, 3_000)
            .mapToObj(i -> " ".repeat(i) + "a:\n")
            .reduce("cause: x\n", String::concat));
    texts.put(
        "a tag that names a class",
        "cause: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL"
            + " [\"http://127.0.0.1/\"]]]]\n");
    texts.put("a number without end", "cause: x\nprior: " + "9".repeat(9_000) + "\n");
    texts.put("a line without end", "cause: x\nprior: " + "9".repeat(500_000) + "\n");
    texts.put("a power without end", "cause: x\nprior: 1e999999999\n");
    texts.put("an id without end", "cause: " + "a-".repeat(4_900) + "a\n");
    texts.put("a binary value", "cause: !!binary R0lGODlhDAAMAIQAAP\nname: x\n");
    texts.put("a quarter of a million cards", "---\n".repeat(250_000));
    texts.put("a thousand cards and one", "cause: x\n---\n".repeat(1_001));
    texts.put("a million empty lines", "\n".repeat(1_000_000) + "cause: [x");
    texts.put("control characters", "cause: \"\\e[2J\\e[31m\\x07 \"\nname: x\n");
    return texts;
  }

  static java.util.stream.Stream<Map.Entry<String, String>> cases() {
    return new TreeMap<>(texts()).entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_hostile_card_is_refused_with_words(Map.Entry<String, String> hostile) {
    TreeMap<String, String> files = new TreeMap<>();
    files.put("hostile.yaml", hostile.getValue());
    Throwable thrown = catchThrowable(() -> RuleBase.read(() -> files));
    assertThat(thrown).isInstanceOf(KnowledgeException.class);
    for (Problem problem : ((KnowledgeException) thrown).problems()) {
      assertThat(problem.toString()).hasSizeLessThan(2_000).doesNotContain("\u001b", "\u0007");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"rules.drl", "ranges.table.csv", "cards.yaml"})
  void a_file_of_a_million_empty_lines_is_refused(String name) throws IOException {
    Files.writeString(folder.resolve(name), "\n".repeat(1_000_000));
    KnowledgeSource source = KnowledgeSource.folder(folder);
    Throwable thrown = catchThrowable(() -> RuleBase.read(source));
    assertThat(thrown)
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining(name + ":20001:1: this file has more than 20000 lines");
  }

  @Test
  void rules_with_many_empty_lines_are_looked_through_to_their_end() {
    TreeMap<String, String> files = new TreeMap<>();
    files.put("rules.drl", ("\n".repeat(1_000) + "rule \"x\" when\n").repeat(19));
    files.put("add-on.yaml", "add-on: quay\nname: Quay\nswitches-off: {rule: [x]}\n");
    assertThat(catchThrowable(() -> RuleBase.read(() -> files)))
        .isInstanceOf(KnowledgeException.class);
  }

  @Test
  void files_that_are_too_large_together_are_told_not_held() throws IOException {
    byte[] blanks = new byte[KnowledgeFolder.LARGEST];
    java.util.Arrays.fill(blanks, (byte) '\n');
    for (int i = 0; i <= 16; i++) {
      Files.write(folder.resolve(i + ".yaml"), blanks);
    }
    assertThat(problems()).contains("the files here are larger than 16 MiB together");
  }

  @Test
  void a_link_out_of_the_folder_is_not_read() throws IOException {
    Path secret = Files.writeString(elsewhere.resolve("secret.yaml"), "password: hunter2");
    Files.createSymbolicLink(folder.resolve("card.yaml"), secret);
    assertThat(problems()).contains("card.yaml: this is a link to a file outside the folder");
    assertThat(problems()).doesNotContain("hunter2", "password");
  }

  @Test
  void a_linked_folder_outside_is_not_read() throws IOException {
    Files.writeString(elsewhere.resolve("secret.yaml"), "password: hunter2");
    Files.createSymbolicLink(folder.resolve("cards"), elsewhere);
    assertThat(KnowledgeSource.folder(folder).files()).isEmpty();
  }

  @Test
  void a_link_within_the_folder_is_read() throws IOException {
    Files.writeString(folder.resolve("one.yaml"), "cause: x");
    Files.createSymbolicLink(folder.resolve("two.yaml"), folder.resolve("one.yaml"));
    assertThat(KnowledgeSource.folder(folder).files()).containsOnlyKeys("one.yaml", "two.yaml");
  }

  @Test
  void a_device_is_no_card() throws IOException {
    Files.createSymbolicLink(folder.resolve("zero.yaml"), Path.of("/dev/zero"));
    assertThat(KnowledgeSource.folder(folder).files()).isEmpty();
  }

  @Test
  void what_is_too_large_is_told_not_read() throws IOException {
    Files.write(folder.resolve("large.yaml"), new byte[KnowledgeFolder.LARGEST + 1]);
    assertThat(problems()).contains("large.yaml: this file is larger than 1 MiB");
  }

  @Test
  void too_many_files_are_told_not_read() throws IOException {
    for (int i = 0; i <= KnowledgeFolder.MOST_FILES; i++) {
      Files.createFile(folder.resolve(i + ".yaml"));
    }
    assertThat(problems()).contains("there are more than 5000 files here");
  }

  @Test
  void what_is_no_text_is_told() throws IOException {
    Files.write(folder.resolve("latin.yaml"), "name: Tür".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problems()).contains("latin.yaml: this is not text in UTF-8");
  }

  @Test
  void a_workbook_is_read_byte_by_byte() throws IOException {
    byte[] bytes = {'P', 'K', 3, 4, (byte) 0xff, (byte) 0x80, 0};
    Files.write(folder.resolve("ranges.table.xlsx"), bytes);
    String content = KnowledgeSource.folder(folder).files().get("ranges.table.xlsx");
    assertThat(content.getBytes(StandardCharsets.ISO_8859_1)).isEqualTo(bytes);
  }

  private String problems() {
    Throwable thrown = catchThrowable(() -> KnowledgeSource.folder(folder).files());
    assertThat(thrown).isInstanceOf(KnowledgeException.class);
    return thrown.getMessage();
  }
}
