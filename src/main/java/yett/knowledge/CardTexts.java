package yett.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds and replaces the texts on a card that people read (not figures and ids), each by its place:
 * {@code name}, {@code outcomes.slack}, {@code steps.2}. Names of parts are left out because stores
 * and cases refer to them; so are sources and sayings.
 */
final class CardTexts {
  /** The places of texts by kind of card: * stands for any name, # for each line of a list. */
  private static final Map<String, List<String>> PLACES =
      Map.ofEntries(
          Map.entry("cause", List.of("name", "arises", "prevent")),
          Map.entry("effect", List.of("name")),
          Map.entry("check", List.of("name", "ask", "lay", "child", "how", "outcomes.*")),
          Map.entry("complaint", List.of("name", "lay", "how", "until-then.#")),
          Map.entry("proof", List.of("ask", "lay", "how", "pass", "fail")),
          Map.entry("history", List.of("name", "lay")),
          Map.entry("repair", List.of("name", "steps.#", "watch.#")),
          Map.entry("set-up", List.of("name", "enter.#", "leave.#")),
          Map.entry("caution", List.of("what", "harm", "avoid", "lay")),
          Map.entry("stop", List.of("name", "now.*.#", "desk.#")),
          Map.entry("site", List.of("name", "ask", "choices.*", "why")),
          Map.entry("pressing", List.of("ask", "said", "until-then.#")));

  private CardTexts() {}

  /** The texts of a card by place, in reading order. */
  static Map<String, String> of(String kind, JsonNode card) {
    Map<String, String> texts = new LinkedHashMap<>();
    with(
        kind,
        card,
        (place, own) -> {
          texts.put(place, own);
          return own;
        });
    return texts;
  }

  /**
   * The card with other texts.
   *
   * @param other returns the text for a place, given the card's own
   */
  static JsonNode with(String kind, JsonNode card, BiFunction<String, String, String> other) {
    JsonNode copy = card.deepCopy();
    for (String place : PLACES.getOrDefault(kind, List.of())) {
      put(copy, List.of(place.split("\\.")), "", other);
    }
    return copy;
  }

  private static void put(
      JsonNode node, List<String> path, String before, BiFunction<String, String, String> other) {
    String first = path.get(0);
    List<String> rest = path.subList(1, path.size());
    if (first.equals("#")) {
      for (int i = 0; node.isArray() && i < node.size(); i++) {
        putLine((ArrayNode) node, i, before + (i + 1), other);
      }
    } else if (node.isObject()) {
      List<String> names = first.equals("*") ? List.copyOf(node.propertyNames()) : List.of(first);
      for (String name : names) {
        JsonNode value = node.path(name);
        boolean oneLine = rest.equals(List.of("#")) && isText(value);
        if (isText(value) && (rest.isEmpty() || oneLine)) {
          String at = before + name + (oneLine ? ".1" : "");
          ((ObjectNode) node).put(name, other.apply(at, value.asString().strip()));
        } else if (!rest.isEmpty()) {
          put(value, rest, before + name + ".", other);
        }
      }
    }
  }

  /** Puts one line. It is plain text or, in a stop, text under the name of the deed. */
  private static void putLine(
      ArrayNode lines, int line, String place, BiFunction<String, String, String> other) {
    JsonNode node = lines.get(line);
    if (isText(node)) {
      lines.set(line, other.apply(place, node.asString().strip()));
    } else if (node.isObject() && node.size() == 1) {
      String deed = node.propertyNames().iterator().next();
      if (isText(node.get(deed))) {
        ((ObjectNode) node).put(deed, other.apply(place, node.get(deed).asString().strip()));
      }
    }
  }

  private static boolean isText(JsonNode node) {
    return node.isValueNode() && !node.isNull() && !node.asString().isBlank();
  }
}
