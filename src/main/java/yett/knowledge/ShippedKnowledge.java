package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The program's own rule base, prepared by the build for fast reading: its cards as parsed trees,
 * marked as free of problems; and, apart, its texts, which few starts need. A file elsewhere with
 * the same name and text counts as the same file.
 */
public final class ShippedKnowledge {
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final String PREPARED = "prepared-knowledge.json";
  private static final String TEXTS = "knowledge-texts.json";

  /** Present only if the build read the whole rule base and found no problem. */
  private static final String FINGERPRINT = "fingerprint";

  /** Parsed trees by the path of their file. */
  private static final String CARDS = "cards";

  private static final String RULES = "rules";
  private static final String TABLES = "tables";

  private ShippedKnowledge() {}

  /** The program's own rule base with its texts in a language, where they are translated. */
  public static KnowledgeSource in(String language) {
    KnowledgeSource own = ShippedKnowledge::texts;
    return Translations.languages(texts().keySet()).contains(language) ? own.in(language) : own;
  }

  /** The prepared cards, read at first use. */
  private static final class Prepared {
    static final JsonNode ALL = ShippedKnowledge.read(PREPARED);
  }

  /** The texts, read at first use. */
  private static final class Texts {
    static final SortedMap<String, String> ALL =
        Collections.unmodifiableSortedMap(strings(ShippedKnowledge.read(TEXTS)));
  }

  /** The texts by path in the rule base. */
  public static SortedMap<String, String> texts() {
    return Texts.ALL;
  }

  /**
   * The rule base as {@link RuleBase#read} makes it from the texts, without repeating the checks of
   * the build.
   */
  public static RuleBase ruleBase() {
    JsonNode all = Prepared.ALL;
    if (!all.has(FINGERPRINT)) {
      return whole();
    }
    List<CardFile.Document> cards = new ArrayList<>();
    for (Map.Entry<String, JsonNode> file : all.get(CARDS).properties()) {
      String name = file.getKey();
      cards.addAll(CardFile.documents(name, () -> texts().get(name), file.getValue()));
    }
    return RuleBaseReader.checked(
        all.get(FINGERPRINT).stringValue(),
        cards,
        strings(all.get(RULES)),
        strings(all.get(TABLES)),
        () -> whole().safeguards());
  }

  /** The rule base read from its texts, with every check. */
  private static RuleBase whole() {
    return RuleBase.read(ShippedKnowledge::texts);
  }

  /** The prepared cards of a file, if its name and text are those of a shipped file. */
  static Optional<List<CardFile.Document>> cards(String name, String text) {
    JsonNode trees = Prepared.ALL.path(CARDS).path(name);
    return trees.isMissingNode() || !text.equals(texts().get(name))
        ? Optional.empty()
        : Optional.of(CardFile.documents(name, () -> text, trees));
  }

  private static SortedMap<String, String> strings(JsonNode texts) {
    SortedMap<String, String> strings = new TreeMap<>();
    texts.properties().forEach(e -> strings.put(e.getKey(), e.getValue().stringValue()));
    return strings;
  }

  private static JsonNode read(String name) {
    try (InputStream in = ShippedKnowledge.class.getResourceAsStream("/" + name)) {
      // While the program is being built, the resource does not exist yet.
      return in == null ? JSON.createObjectNode() : JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the rule base of the program", e);
    }
  }

  /**
   * Prepares the files of a folder; called by the build.
   *
   * @param arguments the folder with the rule base, the folder with the program's classes
   */
  public static void main(String[] arguments) throws IOException {
    SortedMap<String, String> files = KnowledgeSource.folder(Path.of(arguments[0])).files();
    Path program = Path.of(arguments[1]);
    // Delete the result of an earlier build.
    Files.deleteIfExists(program.resolve(PREPARED));
    Files.deleteIfExists(program.resolve(TEXTS));
    Files.write(program.resolve(PREPARED), JSON.writeValueAsBytes(prepared(files)));
    Files.write(program.resolve(TEXTS), JSON.writeValueAsBytes(files));
  }

  private static ObjectNode prepared(SortedMap<String, String> files) {
    ObjectNode all = JSON.createObjectNode();
    RuleBaseFiles.Look look = new RuleBaseFiles().look(files);
    if (look.problems().isEmpty()) { // else its reader has to report them
      all.put(FINGERPRINT, look.base().fingerprint());
    }
    all.set(RULES, JSON.valueToTree(look.base().rules()));
    all.set(TABLES, JSON.valueToTree(look.base().tables()));
    ObjectNode cards = all.putObject(CARDS);
    files.forEach(
        (name, text) -> {
          List<Problem> problems = new ArrayList<>();
          if (RuleBaseReader.holdsCards(name)) {
            ArrayNode trees = CardFile.trees(CardFile.read(name, text, problems));
            if (problems.isEmpty()) {
              cards.set(name, trees);
            }
          }
        });
    return all;
  }
}
