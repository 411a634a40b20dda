package yett.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Reads a YAML file into trees and keeps the position of every value for messages. A file whose
 * name ends with {@code .json} is read as JSON.
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

  private static final Pattern BEGUN = Pattern.compile("line (\\d+), column (\\d+)");

  /** Most documents (cards or cases) in one file. */
  private static final int MOST_DOCUMENTS = 1_000;

  private static final Pattern TWICE = Pattern.compile("Duplicate Object property \"(.*)\"");

  /** The positions of the parts of a file's documents, worked out only when needed. */
  private static final class Places {
    private final String file;
    private final Supplier<String> text;
    private volatile List<Map<String, TokenStreamLocation>> all;

    Places(String file, Supplier<String> text) {
      this.file = file;
      this.text = text;
    }

    Map<String, TokenStreamLocation> of(int document) {
      if (all == null) {
        all = places(mapper(file), text.get());
      }
      return document < all.size() ? all.get(document) : Map.of();
    }
  }

  /** One document of a file. */
  public static final class Document {
    private final String file;
    private final Places places;
    private final int number;
    private final JsonNode root;

    Document(String file, Places places, int number, JsonNode root) {
      this.file = file;
      this.places = places;
      this.number = number;
      this.root = root;
    }

    /** The document with other content at the same position. */
    Document with(JsonNode content) {
      return new Document(file, places, number, content);
    }

    public String file() {
      return file;
    }

    public JsonNode root() {
      return root;
    }

    /** The line of the part at a JSON pointer, or of the nearest part around it; 0 if unknown. */
    int line(String pointer) {
      TokenStreamLocation place = place(pointer);
      return place == null ? 0 : place.getLineNr();
    }

    int column(String pointer) {
      TokenStreamLocation place = place(pointer);
      return place == null ? 0 : place.getColumnNr();
    }

    private TokenStreamLocation place(String pointer) {
      Map<String, TokenStreamLocation> known = places.of(number);
      for (String p = pointer; ; p = p.substring(0, Math.max(0, p.lastIndexOf('/')))) {
        TokenStreamLocation found = known.get(p);
        if (found != null || p.isEmpty()) {
          return found;
        }
      }
    }
  }

  private CardFile() {}

  private static boolean isJson(String file) {
    return file.endsWith(".json");
  }

  private static ObjectMapper mapper(String file) {
    return isJson(file) ? JSON : YAML;
  }

  /** Reads all documents; errors of parsing are added to the problems. */
  public static List<Document> read(String file, String text, List<Problem> problems) {
    if (!isJson(file)) {
      Optional<Problem> excess = LineBounds.excess(file, text);
      if (excess.isPresent()) {
        problems.add(excess.get());
        return List.of();
      }
    }
    ObjectMapper mapper = mapper(file);
    List<Document> documents = new ArrayList<>();
    Places places = new Places(file, () -> text);
    try {
      try (var parser = mapper.createParser(text)) {
        for (int i = 0; parser.nextToken() != null; i++) {
          if (i == MOST_DOCUMENTS) {
            problems.add(tooMany(file));
            return List.of();
          }
          JsonNode root = mapper.readTree(parser);
          if (root != null && !root.isNull() && !root.isMissingNode()) {
            documents.add(new Document(file, places, i, root));
          }
        }
      }
    } catch (JacksonException e) {
      problems.add(problem(file, e));
    }
    return documents;
  }

  private static Problem tooMany(String file) {
    return new Problem(
        "too-many-cards",
        file,
        0,
        0,
        "there are more than " + MOST_DOCUMENTS + " cards in this file",
        "Divide it; one card a file reads best.");
  }

  /**
   * The trees of documents in the order of the file, null where a document is empty. Inverse of
   * {@link #documents}.
   */
  static ArrayNode trees(List<Document> documents) {
    ArrayNode trees = JSON.createArrayNode();
    for (Document document : documents) {
      while (trees.size() < document.number) {
        trees.addNull();
      }
      trees.add(document.root);
    }
    return trees;
  }

  /** The documents of a file from trees made by {@link #trees}. */
  static List<Document> documents(String file, Supplier<String> text, JsonNode trees) {
    List<Document> documents = new ArrayList<>();
    Places places = new Places(file, text);
    for (int i = 0; i < trees.size(); i++) {
      if (!trees.get(i).isNull()) {
        documents.add(new Document(file, places, i, trees.get(i)));
      }
    }
    return documents;
  }

  private static Problem problem(String file, JacksonException e) {
    TokenStreamLocation at = e.getLocation();
    String message = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    Matcher begun = BEGUN.matcher(message);
    // The start of the part that cannot be read is nearer to the mistake, unless that is the end of
    // the file.
    boolean told = !message.contains("<stream end>") && begun.find();
    int line = told ? Integer.parseInt(begun.group(1)) : at == null ? 0 : at.getLineNr();
    int column = told ? Integer.parseInt(begun.group(2)) : at == null ? 0 : at.getColumnNr();
    String said = said(message);
    Matcher twice = TWICE.matcher(said);
    if (twice.matches()) {
      String stands = "\"" + twice.group(1) + "\" is here twice";
      return new Problem("duplicate-field", file, line, column, stands, "Delete one of the two.");
    }
    return isJson(file)
        ? new Problem(
            "not-json",
            file,
            line,
            column,
            "this is not JSON: " + said,
            "Look for a missing comma or a quote left open.")
        : new Problem(
            "not-yaml",
            file,
            line,
            column,
            "this is not YAML: " + said,
            "Look for a missing space after a colon, a tab, or a quote left open.");
  }

  /** The parser's message without the lines that it quotes. */
  private static String said(String message) {
    String said =
        message
            .lines()
            .filter(line -> !line.isBlank() && !line.startsWith(" "))
            .map(line -> line.replaceFirst(" *\\(java\\.[^)]*\\)", ""))
            .collect(Collectors.joining(", "));
    return said.isEmpty()
        ? "cannot be parsed"
        : said.replace("could not find expected ':'", "no colon follows a name")
            .replace("<stream end>", "the end of the file");
  }

  /** The positions in each document, as far as the text can be parsed. */
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
    } catch (JacksonException e) {
      return documents; // reported as a problem when the file was read
    }
    return documents;
  }
}
