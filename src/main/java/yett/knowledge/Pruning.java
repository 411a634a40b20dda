package yett.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import yett.knowledge.CardFile.Document;

/** Removes references to cards that are switched off from the other cards. */
final class Pruning {
  /** By kind of the switched-off card: fields that use its id as a key. */
  private static final Map<String, List<String>> KEYS =
      Map.of(
          "cause", List.of("likelihood", "odds", "removes", "consequences"),
          "effect", List.of("leads-to"),
          "check", List.of("shows"),
          "complaint", List.of("shows"),
          "history", List.of("after"));

  /** By kind of the switched-off card: fields that list its id. */
  private static final Map<String, List<String>> LISTS =
      Map.of(
          "check", List.of("entails", "measure-first"),
          "repair", List.of("entails", "zero-after"),
          "complaint", List.of("if-said"));

  private Pruning() {}

  /**
   * @param off cards as {@code cause chain-slack}
   */
  static List<Document> without(Set<String> off, List<Document> documents) {
    if (off.isEmpty()) {
      return documents;
    }
    List<Document> kept = new ArrayList<>();
    Set<String> alsoOff = new HashSet<>();
    Set<String> stillUsed = usedByCauses(off, documents);
    for (Document document : documents) {
      Document pruned = pruned(off, document);
      if (hasNothingLeft(document, pruned)
          && !stillUsed.contains(pruned.root().path("repair").asString(""))) {
        alsoOff.add("repair " + pruned.root().get("repair").asString(""));
      } else {
        kept.add(pruned);
      }
    }
    return without(alsoOff, kept);
  }

  /** Repairs that a cause which stays names as what removes it. */
  private static Set<String> usedByCauses(Set<String> off, List<Document> documents) {
    Set<String> used = new HashSet<>();
    for (Document document : documents) {
      if (!off.contains("cause " + document.root().path("cause").asString(""))) {
        used.addAll(document.root().path("removed-by").propertyNames());
      }
    }
    return used;
  }

  /** Whether all causes of a repair are switched off, so that the repair goes too. */
  private static boolean hasNothingLeft(Document before, Document now) {
    JsonNode removes = now.root().get("removes");
    return before != now && removes != null && removes.isObject() && removes.isEmpty();
  }

  private static Document pruned(Set<String> off, Document document) {
    if (!(document.root() instanceof ObjectNode)) {
      return document;
    }
    ObjectNode copy = (ObjectNode) document.root().deepCopy();
    for (String card : off) {
      String kind = card.substring(0, card.indexOf(' '));
      String id = card.substring(card.indexOf(' ') + 1);
      for (String field : KEYS.getOrDefault(kind, List.of())) {
        if (copy.get(field) instanceof ObjectNode map) {
          map.remove(id);
        }
      }
      for (String field : LISTS.getOrDefault(kind, List.of())) {
        if (copy.get(field) instanceof ArrayNode list) {
          list.removeIf(item -> item.asString("").equals(id));
        }
      }
      boolean repeats = copy.path("repeats").path("check").asString("").equals(id);
      if (kind.equals("check") && repeats) {
        copy.remove("repeats");
      }
      if (kind.equals("check") && copy.path("columns").path("tells").asString("").equals(id)) {
        ((ObjectNode) copy.get("columns")).remove("tells");
      }
    }
    return copy.equals(document.root()) ? document : document.with(copy);
  }
}
