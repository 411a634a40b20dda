package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The files of the program's own rule base in one file that is quick to read, made when the program
 * is built: each with its text and, if it holds cards, with what the parser of YAML made of it. A
 * file anywhere else with the same name and the same text is the same file.
 */
public final class ShippedKnowledge {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String NAME = "prepared-knowledge.json";
  private static final String TEXT = "text";
  private static final String CARDS = "cards";

  private ShippedKnowledge() {}

  /** Read when they are first needed. */
  private static final class Kept {
    static final Map<String, JsonNode> FILES = read();
  }

  /** The texts by their path in the rule base. */
  public static SortedMap<String, String> texts() {
    return Kept.FILES.entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey,
                e -> e.getValue().get(TEXT).stringValue(),
                (a, b) -> a,
                TreeMap::new));
  }

  /** The cards of a file, if it is one of these, unchanged. */
  static Optional<List<CardFile.Document>> cards(String name, String text) {
    return Optional.ofNullable(Kept.FILES.get(name))
        .filter(file -> file.has(CARDS) && file.get(TEXT).stringValue().equals(text))
        .map(file -> CardFile.documents(name, text, file.get(CARDS)));
  }

  private static Map<String, JsonNode> read() {
    try (InputStream in = ShippedKnowledge.class.getResourceAsStream("/" + NAME)) {
      // While the program is being built there is none yet.
      return in == null
          ? Map.of()
          : JSON.readTree(in).properties().stream()
              .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the rule base of the program", e);
    }
  }

  /**
   * Prepares the files of a folder when the program is built.
   *
   * @param arguments the folder with the rule base, the folder with the program's classes
   */
  public static void main(String[] arguments) throws IOException {
    ObjectNode all = JSON.createObjectNode();
    KnowledgeSource.folder(Path.of(arguments[0]))
        .files()
        .forEach((name, text) -> add(all, name, text));
    Files.write(Path.of(arguments[1]).resolve(NAME), JSON.writeValueAsBytes(all));
  }

  private static void add(ObjectNode all, String name, String text) {
    ObjectNode file = all.putObject(name).put(TEXT, text);
    List<Problem> problems = new ArrayList<>();
    if (RuleBaseReader.holdsCards(name)) {
      ArrayNode cards = CardFile.trees(CardFile.read(name, text, problems));
      if (problems.isEmpty()) { // else whoever reads it shall hear of them
        file.set(CARDS, cards);
      }
    }
  }
}
