package yett.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/**
 * Reads the fields of one card, or of a part of one, or of a case file. Each error is recorded as a
 * problem with its position and a harmless value is returned, so that one run reports all problems.
 */
public final class Fields {
  private final CardFile.Document document;
  private final String pointer;
  private final JsonNode node;
  private final List<Problem> problems;
  private final Set<String> asked = new HashSet<>();

  public Fields(CardFile.Document document, String pointer, JsonNode node, List<Problem> problems) {
    this.document = document;
    this.pointer = pointer;
    this.node = node;
    this.problems = problems;
    if (!node.isObject() && !node.isMissingNode()) {
      problem(
          "",
          "not-a-map",
          "expected fields with values here, found " + shown(node),
          "Write each field with a colon and a space before its value.");
    }
  }

  public void problem(String field, String kind, String message, String advice) {
    String at = field.isEmpty() ? pointer : pointer + "/" + place(field);
    problems.add(
        new Problem(
            kind, document.file(), document.line(at), document.column(at), message, advice));
  }

  /**
   * The JSON pointer of a field. A name within a list, such as {@code needs/cover-off}, becomes its
   * index.
   */
  private String place(String field) {
    int slash = field.lastIndexOf('/');
    JsonNode list = slash < 0 ? node : node.at("/" + field.substring(0, slash));
    for (int i = 0; list.isArray() && i < list.size(); i++) {
      if (list.get(i).asString("").equals(field.substring(slash + 1))) {
        return field.substring(0, slash + 1) + i;
      }
    }
    return field;
  }

  public static String shown(JsonNode value) {
    String text = value.isString() ? value.stringValue() : value.toString();
    return "\"" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "\"";
  }

  public JsonNode get(String field) {
    asked.add(field);
    JsonNode value = node.get(field);
    return value == null || value.isNull() ? MissingNode.getInstance() : value;
  }

  public boolean has(String field) {
    return !get(field).isMissingNode();
  }

  /** A required text. */
  public String text(String field) {
    if (!has(field)) {
      if (node.has(field)) {
        problem(
            field, "missing-field", "\"" + field + "\" has no value", "Write it after the colon.");
      } else {
        problem(
            "",
            "missing-field",
            "\"" + field + "\" is missing",
            "Add a line \"" + field + ": …\".");
      }
      return "";
    }
    String text = text(field, "");
    if (text.isEmpty() && get(field).isValueNode()) {
      problem(field, "missing-field", "\"" + field + "\" is empty", "Write it out.");
    }
    return text;
  }

  public String text(String field, String usual) {
    JsonNode value = get(field);
    if (value.isMissingNode()) {
      return usual;
    }
    if (!value.isValueNode()) {
      problem(
          field,
          "not-text",
          "\"" + field + "\" should be text, found " + shown(value),
          "Write it on one line; in quotes if it holds a colon.");
      return usual;
    }
    return value.asString().strip();
  }

  double number(String field, double usual, double least, double most) {
    JsonNode value = get(field);
    return value.isMissingNode() ? usual : number(field, value, least, most);
  }

  double number(String field, double least, double most) {
    if (!has(field)) {
      text(field);
      return least;
    }
    return number(field, get(field), least, most);
  }

  private double number(String field, JsonNode value, double least, double most) {
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      String found =
          value.isNull()
              ? "\"" + field + "\" has no value"
              : value.isNumber()
                  ? "\"" + field + "\" is too large or not a number at all"
                  : shown(value) + " is not a number";
      problem(field, "not-a-number", found, "Write figures only, such as 0.3 or 12.");
      return least;
    }
    double number = value.doubleValue();
    if (number < least || number > most) {
      problem(
          field,
          "out-of-range",
          "\"" + field + "\" is " + value + ", outside " + plain(least) + " to " + plain(most),
          "Look for a slipped decimal point.");
      return Math.min(most, Math.max(least, number));
    }
    return number;
  }

  private static String plain(double number) {
    return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  public boolean flag(String field) {
    JsonNode value = get(field);
    if (!value.isMissingNode() && !value.isBoolean()) {
      problem(
          field,
          "not-a-flag",
          shown(value) + " should be true or false",
          "Write true or false, without quotes.");
    }
    return value.isBoolean() && value.booleanValue();
  }

  public List<String> texts(String field) {
    JsonNode value = get(field);
    if (value.isMissingNode()) {
      return List.of();
    }
    if (!value.isArray()) {
      return List.of(text(field));
    }
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < value.size(); i++) {
      JsonNode item = value.get(i);
      if (item.isValueNode()) {
        texts.add(item.asString().strip());
      } else {
        problem(
            field + "/" + i,
            "not-text",
            "expected text, found " + shown(item),
            "Put the line in quotes if it holds a colon.");
      }
    }
    return List.copyOf(texts);
  }

  /** Chances by name; figures or words. */
  Map<String, Double> chances(String field) {
    return numbers(field, this::chance);
  }

  /** A required chance; a figure or a word. */
  double chance(String field) {
    if (!has(field)) {
      text(field);
      return 0;
    }
    return chance(field, get(field));
  }

  double chance(String field, double usual) {
    return has(field) ? chance(field) : usual;
  }

  private double chance(String field, JsonNode value) {
    if (!value.isString()) {
      return number(field, value, 0, 1);
    }
    String word = value.stringValue();
    OptionalDouble chance = LikelihoodWords.chance(word);
    if (chance.isEmpty()) {
      String maybe =
          Names.nearest(word, LikelihoodWords.all().keySet())
              .map(n -> "Maybe \"" + n + "\". ")
              .orElse("");
      problem(
          field,
          "not-a-chance",
          shown(value) + " is not a probability",
          maybe + "Write figures from 0 to 1, or a word: " + LikelihoodWords.list() + ".");
    }
    return chance.orElse(0);
  }

  /** Whether a chance in a row is given as a word. */
  boolean inWords(String field) {
    JsonNode row = get(field);
    return row.isObject() && row.properties().stream().anyMatch(e -> e.getValue().isString());
  }

  Map<String, Double> numbers(String field, double least, double most) {
    return numbers(field, (name, value) -> number(name, value, least, most));
  }

  private Map<String, Double> numbers(String field, ToDoubleBiFunction<String, JsonNode> reader) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    JsonNode map = get(field);
    if (map.isMissingNode()) {
      return numbers;
    }
    if (!map.isObject()) {
      problem(
          field,
          "not-a-map",
          "\"" + field + "\" should be names with numbers",
          "Write it as {chain-slack: 0.3}.");
      return numbers;
    }
    for (Map.Entry<String, JsonNode> e : map.properties()) {
      numbers.put(e.getKey(), reader.applyAsDouble(field + "/" + e.getKey(), e.getValue()));
    }
    return numbers;
  }

  /** Conditions on the site: site question to the answers that meet the condition. */
  Map<String, List<String>> conditions(String field) {
    Map<String, List<String>> conditions = new LinkedHashMap<>();
    Fields inner = inner(field);
    for (String key : inner.names()) {
      conditions.put(key, inner.texts(key));
    }
    return conditions;
  }

  public Fields inner(String field) {
    return new Fields(document, pointer + "/" + field, get(field), problems);
  }

  public List<Fields> innerList(String field) {
    JsonNode value = get(field);
    List<Fields> list = new ArrayList<>();
    for (int i = 0; i < value.size() && value.isArray(); i++) {
      list.add(new Fields(document, pointer + "/" + field + "/" + i, value.get(i), problems));
    }
    return list;
  }

  public List<String> names() {
    return node.isObject() ? List.copyOf(node.propertyNames()) : List.of();
  }

  /**
   * The keys of the fields, which must be ids because other cards, rules and cases refer to them.
   */
  List<String> ids() {
    List<String> ids = names();
    ids.stream()
        .filter(id -> !Names.isId(id))
        // Escaped as in a JSON pointer.
        .forEach(id -> notAnId(id.replace("~", "~0").replace("/", "~1"), id));
    return ids;
  }

  /** A required id. */
  String id(String field) {
    String id = text(field);
    if (!id.isEmpty() && !Names.isId(id)) {
      notAnId(field, id);
    }
    return id;
  }

  /** Reports a text that is not a valid id. */
  void notAnId(String field, String id) {
    problem(
        field,
        "bad-id",
        "\"" + id + "\" cannot be an id",
        "Use lower-case words and figures joined by hyphens, such as chain-slack.");
  }

  /** A value read by its own parser; its error is reported with the position. */
  <T> Optional<T> parsed(String field, Function<String, T> parser) {
    if (!has(field)) {
      return Optional.empty();
    }
    try {
      return Optional.of(parser.apply(text(field, "")));
    } catch (RuntimeException e) {
      problem(field, "cannot-read", e.getMessage(), "");
      return Optional.empty();
    }
  }

  /** One of the allowed words. */
  public String oneOf(String field, String usual, List<String> allowed) {
    String word = text(field, usual);
    if (!allowed.contains(word)) {
      problem(
          field, "unknown-word", "\"" + word + "\" is not known here", Names.advice(word, allowed));
      return usual;
    }
    return word;
  }

  /** Reports fields that were never read, most often misspelt names. */
  public void finish() {
    for (String name : names()) {
      if (!asked.contains(name)) {
        problem(
            name,
            "unknown-field",
            "\"" + name + "\" is not a field here",
            Names.advice(name, asked));
      }
    }
  }
}
