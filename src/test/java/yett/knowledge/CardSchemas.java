package yett.knowledge;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yett.knowledge.CardFile.Document;

/** The JSON Schemas of the cards, as an editor applies them. */
final class CardSchemas {
  private static final Path SHARED = Path.of("shared");
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          // Files refer to each other; no address in them leads out of the folder.
          builder -> builder.schemaLoader(loader -> loader.fetchRemoteResources()));
  private static final Schema CARD = schema("card.schema.json");
  private static final Schema TEXTS = schema("texts.schema.json");

  private CardSchemas() {}

  private static Schema schema(String name) {
    return REGISTRY.getSchema(SchemaLocation.of(SHARED.resolve(name).toUri().toString()));
  }

  /** What an editor would complain of. */
  static List<String> errors(String text) {
    return errors(CARD, text);
  }

  /** The same of a file with texts in another language. */
  static List<String> errorsOfTexts(String text) {
    return errors(TEXTS, text);
  }

  private static List<String> errors(Schema schema, String text) {
    List<String> errors = new ArrayList<>();
    for (Document document : CardFile.read("card.yaml", text, new ArrayList<>())) {
      schema
          .validate(document.root().toString(), InputFormat.JSON)
          .forEach(e -> errors.add(e.toString()));
    }
    return errors;
  }

  /** Kinds of cards that have a schema, by its file. */
  static List<String> kinds() {
    try (Stream<Path> files = Files.list(SHARED)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.matches("card-(?!parts).*\\.schema\\.json"))
          .map(f -> f.substring("card-".length(), f.indexOf(".schema")))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode ofKind(String kind) {
    return tree("card-" + kind + ".schema.json");
  }

  static JsonNode part(String name) {
    return tree("card-parts.schema.json").get("$defs").get(name);
  }

  static TreeSet<String> keys(JsonNode schema) {
    return new TreeSet<>(schema.get("properties").propertyNames());
  }

  private static JsonNode tree(String name) {
    try {
      return JsonMapper.shared().readTree(Files.readString(SHARED.resolve(name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
