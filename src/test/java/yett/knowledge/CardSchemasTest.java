package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import yett.knowledge.Pressing.Urgency;
import yett.quantity.Quantity;

/** An editor that knows the schemas says of a card what the program says. */
class CardSchemasTest {
  private static final Path KNOWLEDGE = Path.of("knowledge");
  private static final Path EXAMPLES = Path.of("docs/examples");
  private static final Path SOURCES = Path.of("src/main/java/yett/knowledge");

  /** With this, headers are written instead of reported. */
  private static final boolean WRITE = Boolean.getBoolean("yett.write");

  static Stream<Path> files(Predicate<String> wanted) throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path folder : List.of(KNOWLEDGE, EXAMPLES)) {
      try (Stream<Path> files = Files.walk(folder)) {
        files.filter(f -> wanted.test(f.toString())).sorted().forEach(all::add);
      }
    }
    return all.stream();
  }

  static Stream<Path> cards() throws IOException {
    return files(f -> f.endsWith(".yaml") && !f.matches(".*[.](case|texts)[.]yaml"));
  }

  static Stream<Path> casesAndCards() throws IOException {
    return files(f -> f.endsWith(".yaml"));
  }

  static List<String> kinds() {
    return CardSchemas.kinds();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void a_shipped_card_has_the_form_of_its_schema(Path file) throws IOException {
    assertThat(CardSchemas.errors(Files.readString(file))).isEmpty();
  }

  static Stream<Path> texts() throws IOException {
    return files(f -> f.endsWith(".texts.yaml"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void shipped_texts_have_the_form_of_their_schema(Path file) throws IOException {
    assertThat(CardSchemas.errorsOfTexts(Files.readString(file))).isEmpty();
    String slip = "cards: {cause chain-slack: {name: {off: a}}}";
    assertThat(CardSchemas.errorsOfTexts(slip)).isNotEmpty();
  }

  /** Mend with: mvn test -Dtest=CardSchemasTest -Dyett.write=true. */
  @ParameterizedTest
  @MethodSource("casesAndCards")
  void the_first_line_tells_an_editor_the_schema(Path file) throws IOException {
    String schema =
        file.toString().endsWith(".case.yaml")
            ? "replay-case"
            : file.toString().endsWith(".texts.yaml") ? "texts" : "card";
    String header =
        "# yaml-language-server: $schema="
            + file.getParent().relativize(Path.of("shared/" + schema + ".schema.json"))
            + "\n";
    String text = Files.readString(file);
    if (WRITE && !text.startsWith(header)) {
      Files.writeString(file, header + text);
    } else {
      assertThat(text).startsWith(header);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void schema_and_reader_know_the_same_fields(String kind) throws IOException {
    Set<String> known = CardSchemas.keys(CardSchemas.ofKind(kind));
    String measured = "\nmeasures: {quantity: length}";
    for (String word : words()) {
      boolean read = knows(kind + ": a\n" + word + ": x", word);
      if (!read && Set.of("check", "site").contains(kind)) {
        read = knows(kind + ": a\n" + word + ": x" + measured, word);
      }
      assertThat(known.contains(word)).as(word).isEqualTo(read);
    }
    assertThat(words()).containsAll(known);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "check; measures; '{quantity: length, WORD: x}'",
        "check; repeats; '{WORD: x}'",
        "repair; parts; '[{WORD: x}]'"
      })
  void schema_and_reader_know_the_same_inner_fields(String kind, String part, String text)
      throws IOException {
    JsonNode schema = CardSchemas.ofKind(kind).get("properties").get(part);
    JsonNode inner = schema.has("$ref") ? CardSchemas.part(part) : schema;
    Set<String> known = CardSchemas.keys(inner.has("items") ? inner.get("items") : inner);
    for (String word : words()) {
      String card = kind + ": a\n" + part + ": " + text.replace("WORD", word);
      assertThat(known.contains(word)).as(word).isEqualTo(knows(card, word));
    }
  }

  /** Every word in the sources of the reader that could be the name of a field. */
  private static Set<String> words() throws IOException {
    Set<String> words = new TreeSet<>();
    try (Stream<Path> sources = Files.list(SOURCES)) {
      for (Path source : sources.toList()) {
        Matcher quoted = Pattern.compile("\"([a-z]+(?:-[a-z]+)*)\"").matcher(read(source));
        quoted.results().forEach(r -> words.add(r.group(1)));
      }
    }
    return words;
  }

  private static String read(Path source) throws IOException {
    return Files.readString(source);
  }

  private static boolean knows(String card, String field) {
    KnowledgeException thrown =
        catchThrowableOfType(
            KnowledgeException.class,
            () -> RuleBase.read(() -> new TreeMap<>(java.util.Map.of("a.yaml", card))));
    return thrown.problems().stream()
        .noneMatch(
            p ->
                p.kind().equals("unknown-field")
                    && p.message().equals("\"" + field + "\" is not a field here"));
  }

  @Test
  void there_is_a_schema_for_every_kind_of_card() {
    KnowledgeException thrown =
        catchThrowableOfType(
            KnowledgeException.class,
            () -> RuleBase.read(() -> new TreeMap<>(java.util.Map.of("a.yaml", "nonsense: a"))));
    assertThat(kinds()).hasSize(16);
    for (String kind : kinds()) {
      assertThat(CardSchemas.keys(CardSchemas.ofKind(kind))).contains(kind);
      String unknown = "\"" + kind + "\" is not";
      assertThat(thrown.getMessage()).doesNotContain(unknown);
    }
  }

  @Test
  void schema_and_reader_know_the_same_words() {
    assertThat(enumOf(CardSchemas.part("role"))).isEqualTo(Role.words());
    assertThat(enumOf(CardSchemas.part("urgency")))
        .hasSameElementsAs(Arrays.stream(Urgency.values()).map(Urgency::word).toList());
    JsonNode measures = CardSchemas.part("measures").get("properties");
    assertThat(enumOf(measures.get("instrument"))).hasSameElementsAs(Instruments.names());
    assertThat(enumOf(measures.get("quantity")))
        .hasSameElementsAs(
            Arrays.stream(Quantity.values())
                .map(q -> q.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.toList()));
  }

  private static List<String> enumOf(JsonNode schema) {
    return schema.get("enum").valueStream().map(JsonNode::stringValue).toList();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_field_has_a_description(String kind) {
    JsonNode properties = CardSchemas.ofKind(kind).get("properties");
    for (String key : properties.propertyNames()) {
      JsonNode field = properties.get(key);
      String ref = field.path("$ref").asString("");
      boolean described =
          field.has("description")
              || CardSchemas.part(ref.substring(ref.lastIndexOf('/') + 1)).has("description");
      assertThat(described).as(key).isTrue();
    }
  }
}
