package yett.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** A YAML file read as trees, with the place of every value so that a complaint can say where. */
final class CardFile {
  private static final YAMLMapper MAPPER = YAMLMapper.builder(new YAMLFactory()).build();

  /** A document of a file. Where its parts stand is worked out only when somebody asks. */
  static final class Document {
    private final String file;
    private final String text;
    private final int number;
    private final JsonNode root;
    private Map<String, TokenStreamLocation> places;

    Document(String file, String text, int number, JsonNode root) {
      this.file = file;
      this.text = text;
      this.number = number;
      this.root = root;
    }

    String file() {
      return file;
    }

    JsonNode root() {
      return root;
    }

    /** Line of a part by its JSON pointer, or of what holds it; 0 if unknown. */
    int line(String pointer) {
      TokenStreamLocation place = place(pointer);
      return place == null ? 0 : place.getLineNr();
    }

    int column(String pointer) {
      TokenStreamLocation place = place(pointer);
      return place == null ? 0 : place.getColumnNr();
    }

    private TokenStreamLocation place(String pointer) {
      if (places == null) {
        List<Map<String, TokenStreamLocation>> all = CardFile.places(text);
        places = number < all.size() ? all.get(number) : Map.of();
      }
      for (String p = pointer; ; p = p.substring(0, Math.max(0, p.lastIndexOf('/')))) {
        TokenStreamLocation found = places.get(p);
        if (found != null || p.isEmpty()) {
          return found;
        }
      }
    }
  }

  private CardFile() {}

  /** Reads all documents; what cannot be parsed is added to the problems. */
  static List<Document> read(String file, String text, List<Problem> problems) {
    List<Document> documents = new ArrayList<>();
    try {
      try (MappingIterator<JsonNode> trees = MAPPER.readerFor(JsonNode.class).readValues(text)) {
        for (int i = 0; trees.hasNextValue(); i++) {
          JsonNode root = trees.nextValue();
          if (root != null && !root.isNull() && !root.isMissingNode()) {
            documents.add(new Document(file, text, i, root));
          }
        }
      }
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      problems.add(
          new Problem(
              "not-yaml",
              file,
              at == null ? 0 : at.getLineNr(),
              at == null ? 0 : at.getColumnNr(),
              "this is not YAML: " + firstLine(e.getOriginalMessage()),
              "Look for a missing space after a colon, a tab, or a quote left open."));
    }
    return documents;
  }

  private static String firstLine(String message) {
    return message == null ? "cannot be parsed" : message.lines().findFirst().orElse("");
  }

  private static List<Map<String, TokenStreamLocation>> places(String text) {
    List<Map<String, TokenStreamLocation>> documents = new ArrayList<>();
    try (var parser = MAPPER.createParser(text)) {
      Map<String, TokenStreamLocation> places = new HashMap<>();
      int depth = 0;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        String pointer = parser.streamReadContext().pathAsPointer().toString();
        if (token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY) {
          depth--;
        } else {
          places.putIfAbsent(pointer, parser.currentTokenLocation());
          depth += token.isStructStart() ? 1 : 0;
        }
        if (depth == 0) {
          documents.add(places);
          places = new HashMap<>();
        }
      }
    }
    return documents;
  }
}
