package yett.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A YAML file read as trees, with the place of every value so that a complaint can say where. A
 * file whose name ends with {@code .json} is read as JSON.
 */
public final class CardFile {
  private static final ObjectMapper YAML =
      YAMLMapper.builder(new YAMLFactory())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final Pattern TWICE = Pattern.compile("Duplicate Object property \"(.*)\"");

  /** A document of the file and where its parts stand, by JSON pointer. */
  public record Document(String file, JsonNode root, Map<String, TokenStreamLocation> places) {
    int line(String pointer) {
      return place(pointer) == null ? 0 : place(pointer).getLineNr();
    }

    int column(String pointer) {
      return place(pointer) == null ? 0 : place(pointer).getColumnNr();
    }

    private TokenStreamLocation place(String pointer) {
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
  public static List<Document> read(String file, String text, List<Problem> problems) {
    boolean json = file.endsWith(".json");
    ObjectMapper mapper = json ? JSON : YAML;
    List<Document> documents = new ArrayList<>();
    try {
      List<Map<String, TokenStreamLocation>> places = places(mapper, text);
      try (var parser = mapper.createParser(text)) {
        for (int i = 0; parser.nextToken() != null; i++) {
          JsonNode root = mapper.readTree(parser);
          if (root != null && !root.isNull() && !root.isMissingNode()) {
            documents.add(new Document(file, root, i < places.size() ? places.get(i) : Map.of()));
          }
        }
      }
    } catch (JacksonException e) {
      problems.add(problem(file, json, e));
    }
    return documents;
  }

  private static Problem problem(String file, boolean json, JacksonException e) {
    TokenStreamLocation at = e.getLocation();
    int line = at == null ? 0 : at.getLineNr();
    int column = at == null ? 0 : at.getColumnNr();
    String message = firstLine(e.getOriginalMessage());
    Matcher twice = TWICE.matcher(message);
    if (twice.matches()) {
      String said = "\"" + twice.group(1) + "\" stands here twice";
      return new Problem("duplicate-field", file, line, column, said, "Delete one of the two.");
    }
    return json
        ? new Problem(
            "not-json",
            file,
            line,
            column,
            "this is not JSON: " + message,
            "Look for a missing comma or a quote left open.")
        : new Problem(
            "not-yaml",
            file,
            line,
            column,
            "this is not YAML: " + message,
            "Look for a missing space after a colon, a tab, or a quote left open.");
  }

  private static String firstLine(String message) {
    return message == null ? "cannot be parsed" : message.lines().findFirst().orElse("");
  }

  private static List<Map<String, TokenStreamLocation>> places(ObjectMapper mapper, String text) {
    List<Map<String, TokenStreamLocation>> documents = new ArrayList<>();
    try (var parser = mapper.createParser(text)) {
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
