package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.knowledge.RuleBaseFiles;

/**
 * Pieces of programs in the place of every value and every name of every kind of card, and of every
 * cell of a table: whatever the reader says of them, no compiler sees them and nothing runs.
 */
class HostileFieldsTest {
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final SortedMap<String, String> CARDS =
      KnowledgeSource.folder(Path.of("src/test/resources/every-field")).files();
  private static final SortedMap<String, String> TABLES =
      new TreeMap<>(
          Map.of(
              "quay/ranges.table.csv",
              "rule,check,if supply,low,high,how,because,source\n"
                  + "r,charging-voltage,mains,26 V,29 V,so,it is so,common practice\n",
              "quay/odds.table.csv",
              "rule,if supply,happened,not happened,odds,because,source\n"
                  + "s,mains,thunderstorm,thunderstorm,charger-dead 2,it is so,common practice\n",
              "quay/contradictions.table.csv",
              "rule,first check,first answer,second check,second answer,because,source\n"
                  + "t,charging-voltage,below 2 V,battery-rest-voltage,from 3 V,so,from memory\n"));
  private static final String RULE =
      "package own\nimport yett.rules.Fact.Site\nrule \"own\"\nwhen\n  Site()\nthen\nend\n";

  /** A session takes its time; what is compiled is compared for all. */
  private static final int EACH_TO_RUN = 60;

  private static final int TURNS = 5;

  @TempDir private Path folder;

  private static List<String> hostile(Path touched) {
    String run = "java.lang.Runtime.getRuntime().exec(\"touch " + touched + "\")";
    return List.of(
        "green\"), " + run + " != null, choice in (\"green",
        "x\"\nthen\n  "
            + run
            + ";\nend\nrule \"y\"\nwhen\n  eval("
            + run
            + " != null)\nthen\nend\n//",
        "x*/\nend\nimport static java.lang.Runtime.*\nfunction boolean f() { " + run + "; } /*",
        "\\u0022); " + run + "; //",
        "${" + run + "}",
        "@{" + run + "}",
        "#{T(java.lang.Runtime).getRuntime().exec('touch " + touched + "')}",
        "$(touch " + touched + ")",
        "'; drop table event; --",
        "../../../" + touched);
  }

  private static SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>(CARDS);
    files.put("own.drl", RULE);
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\nsource: test\n");
    files.putAll(TABLES);
    return files;
  }

  private static RuleBase look(SortedMap<String, String> files) {
    return new RuleBaseFiles().look(files).base();
  }

  /** Does something with each file in which one value, name or cell is another text. */
  private static void each(String text, BiConsumer<String, Supplier<String>> deed) {
    SortedMap<String, String> files = files();
    for (String name : files.keySet()) {
      if (name.endsWith(".yaml")) {
        List<JsonNode> cards = cards(files.get(name));
        for (JsonNode card : cards) {
          within(card, text, () -> deed.accept(name, () -> written(cards)));
        }
      }
    }
    TABLES.forEach(
        (name, table) -> {
          String[] cells = table.split("[,\n]");
          for (int i = 0; i < cells.length; i++) {
            String[] changed = cells.clone();
            changed[i] = "\"" + text.replace("\"", "\"\"") + "\"";
            int row = cells.length / 2;
            String other =
                String.join(",", Arrays.copyOf(changed, row))
                    + "\n"
                    + String.join(",", Arrays.copyOfRange(changed, row, cells.length))
                    + "\n";
            deed.accept(name, () -> other);
          }
        });
  }

  private static List<JsonNode> cards(String text) {
    List<JsonNode> cards = new ArrayList<>();
    YAML.readerFor(JsonNode.class).<JsonNode>readValues(text).forEachRemaining(cards::add);
    return cards;
  }

  private static String written(List<JsonNode> cards) {
    StringBuilder text = new StringBuilder();
    cards.forEach(card -> text.append(YAML.writeValueAsString(card)));
    return text.toString();
  }

  /** Puts the text in place of each part of a tree, one after the other. */
  private static void within(JsonNode node, String text, Runnable deed) {
    if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        JsonNode before = list.get(i);
        list.set(i, text);
        deed.run();
        list.set(i, before);
        within(before, text, deed);
      }
    }
    if (node instanceof ObjectNode map) {
      Map<String, JsonNode> before = new LinkedHashMap<>();
      map.properties().forEach(e -> before.put(e.getKey(), e.getValue()));
      for (String name : before.keySet()) {
        map.put(name, text);
        deed.run();
        map.removeAll();
        before.forEach((key, value) -> map.set(key.equals(name) ? text : key, value));
        deed.run();
        map.removeAll();
        map.setAll(before);
        within(before.get(name), text, deed);
      }
    }
  }

  @Test
  void no_compiler_sees_what_stands_in_a_card_or_table() {
    SortedMap<String, String> sound = RuleCache.sources(look(files()));
    assertThat(sound).hasSize(2).containsValue(RULE);
    List<String> texts = hostile(folder.resolve("touched"));
    for (int t = 0; t < texts.size(); t++) {
      int first = t % TURNS; // two of the texts come to each place
      int[] places = {0};
      each(
          texts.get(t),
          (name, changed) -> {
            if (places[0]++ % TURNS == first) {
              SortedMap<String, String> files = files();
              files.put(name, changed.get());
              assertThat(RuleCache.sources(look(files))).as(name).isEqualTo(sound);
            }
          });
      assertThat(places[0]).isGreaterThan(400);
    }
  }

  @Test
  void and_nothing_of_it_runs() throws InterruptedException {
    Path touched = folder.resolve("touched");
    RuleBase sound = look(files());
    Set<Fact> facts = new HashSet<>();
    sound.siteQuestions().values().stream()
        .filter(q -> q.measures().isEmpty())
        .forEach(q -> facts.add(Fact.Site.chosen(q.id(), q.usual())));
    RuleCache cache = new RuleCache(Path.of("target/rule-cache"));
    for (String text : hostile(touched)) {
      List<RuleBase> bases = new ArrayList<>();
      int[] tried = {0};
      each(
          text,
          (name, changed) -> {
            if (tried[0]++ % EACH_TO_RUN == 0) {
              SortedMap<String, String> files = files();
              files.put(name, changed.get());
              RuleBase base = look(files);
              if (DecisionTables.problems(base).isEmpty()) {
                bases.add(base);
              }
            }
          });
      assertThat(bases).isNotEmpty();
      for (RuleBase base : bases) {
        try (Judge judge = RuleEngine.of(base, cache).newJudge()) {
          judge.judge(facts);
        }
      }
    }
    Thread.sleep(500); // a command that was started takes a moment
    assertThat(Files.exists(touched)).isFalse();
  }
}
