package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What the build prepared is what the sources say. */
class ShippedKnowledgeTest {
  private static final SortedMap<String, String> FILES =
      KnowledgeSource.folder(Path.of("knowledge")).files();

  @Test
  void it_holds_the_very_files_of_the_rule_base() {
    assertThat(ShippedKnowledge.texts()).isEqualTo(FILES);
  }

  @Test
  void its_cards_are_what_the_parser_makes_of_the_text_and_stand_where_they_stood() {
    int cards = 0;
    for (var file : FILES.entrySet()) {
      if (RuleBaseReader.holdsCards(file.getKey())) {
        List<CardFile.Document> parsed =
            CardFile.read(file.getKey(), file.getValue(), new ArrayList<>());
        List<CardFile.Document> kept =
            ShippedKnowledge.cards(file.getKey(), file.getValue()).orElseThrow();
        assertThat(roots(kept)).as(file.getKey()).isEqualTo(roots(parsed));
        assertThat(kept.stream().map(card -> card.line("")))
            .as(file.getKey())
            .containsExactlyElementsOf(parsed.stream().map(card -> card.line("")).toList());
        cards += kept.size();
      }
    }
    assertThat(cards).isGreaterThan(300);
  }

  @Test
  void the_rule_base_made_ready_is_the_one_that_is_read_with_every_check() throws Exception {
    RuleBase read = new RuleBaseReader(FILES, "", ShippedKnowledgeTest::parsed).read();

    RuleBase ready = ShippedKnowledge.ruleBase();

    assertThat(ready.safeguards()).isEqualTo(read.safeguards());
    for (RecordComponent part : RuleBase.class.getRecordComponents()) {
      if (!part.getName().equals("kept")) {
        same(part.getName(), part.getAccessor().invoke(ready), part.getAccessor().invoke(read));
      }
    }
  }

  /** Card by card: the comparison looks through all that it has seen, at every step. */
  private static void same(String what, Object ready, Object read) {
    if (ready instanceof Map<?, ?> some && read instanceof Map<?, ?> others) {
      assertThat(List.copyOf(some.keySet())).as(what).isEqualTo(List.copyOf(others.keySet()));
      some.forEach((id, card) -> same(what + " " + id, card, others.get(id)));
    } else {
      assertThat(ready)
          .as(what)
          .usingRecursiveComparison()
          .withStrictTypeChecking()
          .isEqualTo(read);
    }
  }

  /** By the parser of YAML, whatever the build has kept. */
  private static ParsedFile parsed(String name, String text) {
    List<Problem> problems = new ArrayList<>();
    return new ParsedFile(text, CardFile.read(name, text, problems), problems, List.of());
  }

  private static List<JsonNode> roots(List<CardFile.Document> cards) {
    return cards.stream().map(CardFile.Document::root).toList();
  }

  @Test
  void a_file_that_was_changed_or_has_another_name_is_read_anew() {
    String name = "chain/chain-slack.yaml";
    String text = FILES.get(name);

    assertThat(ShippedKnowledge.cards(name, text)).isPresent();
    assertThat(ShippedKnowledge.cards(name, text + " ")).isEmpty();
    assertThat(ShippedKnowledge.cards("chain/other.yaml", text)).isEmpty();
  }
}
