package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class LikelihoodWordsTest {
  private static final Path SOUND = Path.of("src/test/resources/sound-knowledge");

  /**
   * Mosteller and Youtz 1990, means over the studies that they pool, from memory and to the nearest
   * few hundredths; the words of the rule base stand within that.
   */
  @ParameterizedTest
  @CsvSource({
    "always, 0.98",
    "nearly always, 0.91",
    "usually, 0.77",
    "often, 0.65",
    "sometimes, 0.28",
    "rarely, 0.09",
    "never, 0.01"
  })
  void a_word_stands_for_what_people_mean_by_it(String word, double published) {
    assertThat(LikelihoodWords.chance(word)).hasValueCloseTo(published, within(0.035));
  }

  @Test
  void no_word_means_certain_or_impossible_and_they_fall_in_order() {
    List<Double> chances = List.copyOf(LikelihoodWords.all().values());
    assertThat(chances).allMatch(p -> p >= 0.01 && p <= 0.99);
    assertThat(chances).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(chances).doesNotHaveDuplicates();
  }

  @Test
  void table_schema_and_page_say_the_same() throws IOException {
    JsonNode chance = CardSchemas.part("chance");
    List<String> words =
        chance.get("anyOf").get(1).get("enum").valueStream().map(JsonNode::stringValue).toList();
    assertThat(words).containsExactlyElementsOf(LikelihoodWords.all().keySet());
    assertThat(chance.get("description").stringValue()).contains(LikelihoodWords.list());
    List<String> rows =
        LikelihoodWords.all().entrySet().stream()
            .map(e -> "| " + e.getKey() + " | " + e.getValue() + " |")
            .toList();
    assertThat(Files.readAllLines(Path.of("docs/cards.md"))).containsSequence(rows);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // all named: scaled alike
        "a: usually, b: rarely, c: sometimes; 0.6944; 0.0741; 0.2315",
        // left out: shares what is left as a sound gate does, 0.92 to 0.04
        "c: usually; 0.2396; 0.0104; 0.75",
        "c: usually, b: rarely; 0.17; 0.08; 0.75",
        "c: always, b: rarely; 0; 0.0748; 0.9252",
        // words and figures together
        "b: 0.05, c: nearly always; 0.03; 0.05; 0.92"
      })
  void a_row_in_words_is_brought_to_one(String row, double a, double b, double c) {
    Check check = checkWith("{chain-slack: {" + row + "}}").checks().get("chain-noise");
    assertThat(check.likelihood().get("chain-slack"))
        .containsExactly(new double[] {a, b, c}, within(0.0001));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a: usually, b: usually, c: rarely; add up to 1.58 (a 0.75, b 0.75, c 0.08)",
        "a: rarely, b: rarely, c: sometimes; add up to 0.41 (a 0.08, b 0.08, c 0.25)",
        "a: 0.5, b: 0.2; add up to 0.7"
      })
  void a_row_far_from_one_is_told(String row, String message) {
    assertThatThrownBy(() -> checkWith("{chain-slack: {" + row + "}}"))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining(message);
  }

  @Test
  void words_stand_wherever_a_chance_of_showing_stands() {
    RuleBase base =
        read(
            """
            complaint: chain-slaps
            name: The chain slaps
            likelihood: {chain-slack: often}
            otherwise: never
            unmentioned: sometimes
            source: test
            ---
            cause: bracket-bent
            name: Bracket bent
            prior: 0.01
            consequences: {chain-slack: nearly always}
            retest-fails: rarely
            shows: {chain-looks: {low: usually}, chain-slaps: sometimes}
            source: test
            ---
            repair: new-bracket
            name: Fit a new bracket
            removes: {bracket-bent: always}
            minutes: 20
            source: test
            """);
    Check slaps = base.checks().get("chain-slaps");
    assertThat(slaps.likelihood().get("chain-slack")).containsExactly(0.35, 0.65);
    assertThat(slaps.likelihood().get("bracket-bent")).containsExactly(0.75, 0.25);
    assertThat(slaps.otherwise()).containsExactly(0.99, 0.01);
    assertThat(slaps.unmentioned()).isEqualTo(0.25);
    assertThat(base.causes().get("bracket-bent").consequences())
        .isEqualTo(Map.of("chain-slack", 0.92));
    assertThat(base.causes().get("bracket-bent").retestFails()).isEqualTo(0.08);
    assertThat(base.repairs().get("new-bracket").removes()).containsEntry("bracket-bent", 0.99);
    assertThat(base.checks().get("chain-looks").likelihood().get("bracket-bent"))
        .containsExactly(0.25, 0.75);
  }

  @Test
  void a_prior_is_written_in_figures() {
    assertThatThrownBy(() -> read("cause: a\nname: a\nprior: rarely\nsource: test\n"))
        .hasMessageContaining("\"rarely\" is not a number");
  }

  private static RuleBase checkWith(String likelihood) {
    String check =
        "check: chain-noise\nask: Does it rattle?\nminutes: 1\nsource: test\n"
            + "outcomes: {a: quiet, b: rattles, c: bangs}\notherwise: {a: nearly always}\n"
            + "likelihood: "
            + likelihood;
    assertThat(CardSchemas.errors(check)).isEmpty();
    return read(check);
  }

  private static RuleBase read(String cards) {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(SOUND).files());
    files.put("more.yaml", cards);
    return RuleBase.read(() -> files);
  }
}
