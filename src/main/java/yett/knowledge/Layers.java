package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import yett.knowledge.CardFile.Document;

/**
 * Applies add-ons to a rule base. An add-on is a folder with an {@code add-on.yaml}: it adds cards,
 * and replaces or switches off those that it names. It cannot change a card that it does not name,
 * so an equal id by accident loses nothing. The result does not depend on the order of the folders.
 */
final class Layers {
  private static final Set<String> CAN_BE_OFF =
      Set.of("cause", "effect", "check", "complaint", "history", "repair", "pressing");

  private final List<String> kinds;
  private final List<RuleText> rules;
  private final RulesOff rulesOff;
  private final List<Problem> problems;
  private final Map<String, Layered> cards = new LinkedHashMap<>();
  private final List<Document> others = new ArrayList<>();
  private final Map<String, AddOnCard> off = new LinkedHashMap<>();
  private final List<AddOn> addOns = new ArrayList<>();
  private Protection protection;

  /** A card and the add-on that it comes from; null for the rule base itself. */
  private record Layered(Document document, AddOnCard from) {}

  /**
   * @param kinds of cards
   * @param tables texts of decision tables
   * @param problems receives every problem
   */
  Layers(
      List<String> kinds,
      Collection<String> rules,
      Collection<String> tables,
      List<Problem> problems) {
    this.kinds = kinds;
    this.rules = RuleText.of(rules);
    this.rulesOff = new RulesOff(this.rules, tables);
    this.problems = problems;
  }

  /** The cards that remain in force, with those of the add-ons. */
  List<Document> apply(List<Document> documents) {
    List<AddOnCard> manifests = new ArrayList<>();
    for (Document document : documents) {
      if (kind(document).equals("add-on")) {
        Fields fields = new Fields(document, "", document.root(), problems);
        manifests.add(AddOnCard.of(fields, document.file(), kinds));
      }
    }
    List<AddOnCard> ordered = AddOnCard.inOrder(manifests);
    protection = new Protection(rules, documents);
    if (manifests.isEmpty()) {
      return documents;
    }
    documents.stream().filter(d -> owner(d, ordered) == null).forEach(d -> put(d, null));
    for (AddOnCard manifest : ordered) {
      lay(manifest, documents.stream().filter(d -> owner(d, ordered) == manifest).toList());
    }
    List<Document> all = new ArrayList<>(others);
    cards.values().forEach(c -> all.add(marked(c)));
    List<Document> kept = Pruning.without(off.keySet(), all);
    repairsGone(all, kept);
    return kept;
  }

  /** Switches off repairs whose causes are all switched off. */
  private void repairsGone(List<Document> all, List<Document> kept) {
    Set<String> left = kept.stream().map(Layers::key).collect(Collectors.toSet());
    for (Document repair : all) {
      if (kind(repair).equals("repair") && !left.contains(key(repair))) {
        Set<String> causes =
            repair.root().path("removes").propertyNames().stream()
                .map(cause -> "cause " + cause)
                .collect(Collectors.toSet());
        addOns.replaceAll(
            a ->
                a.switchesOff().stream().anyMatch(causes::contains)
                    ? a.switchingOff(key(repair))
                    : a);
      }
    }
  }

  /** The cards that protect people, after {@link #apply}. */
  Protection protection() {
    return protection;
  }

  /**
   * The add-ons with their changes, each after those that it builds on.
   *
   * @param ruleFiles paths of all files with rules and tables
   */
  List<AddOn> addOns(Collection<String> ruleFiles) {
    return addOns.stream().map(a -> a.withRules(ruleFiles)).toList();
  }

  private static AddOnCard owner(Document document, List<AddOnCard> manifests) {
    return manifests.stream()
        .filter(m -> document.file().startsWith(m.folder()))
        .max((a, b) -> Integer.compare(a.folder().length(), b.folder().length()))
        .orElse(null);
  }

  static String kind(Document document) {
    JsonNode root = document.root();
    return root.isObject() && !root.isEmpty() ? root.propertyNames().iterator().next() : "";
  }

  private static String id(Document document) {
    return document.root().get(kind(document)).asString("");
  }

  private static String key(Document document) {
    return kind(document) + " " + id(document);
  }

  private void put(Document document, AddOnCard from) {
    boolean card = kinds.contains(kind(document));
    if (!card || cards.containsKey(key(document))) {
      others.add(document); // its reader reports the problem
    } else {
      cards.put(key(document), new Layered(document, from));
    }
  }

  private void lay(AddOnCard manifest, List<Document> own) {
    List<String> adds = new ArrayList<>();
    List<String> replaced = new ArrayList<>();
    for (Document document : own) {
      if (kind(document).equals("add-on")) {
        continue;
      }
      Layered there = cards.get(key(document));
      AddOnCard goneBy = off.get(key(document));
      if (goneBy != null && clashes(manifest, goneBy)) {
        clash(manifest, "replaces/" + kind(document), goneBy, key(document));
        replaced.add(key(document));
      } else if (there == null || there.from() == manifest) {
        put(document, manifest);
        adds.add(key(document));
      } else {
        if (mayReplace(manifest, there, document)) {
          cards.put(key(document), new Layered(document, manifest));
        }
        replaced.add(key(document));
      }
    }
    reportNotReplaced(manifest, replaced);
    List<String> gone = new ArrayList<>();
    manifest
        .switchesOff()
        .forEach((kind, ids) -> ids.forEach(id -> switchOff(manifest, kind, id, gone)));
    addOns.add(
        new AddOn(
            manifest.id(),
            manifest.name(),
            manifest.version(),
            manifest.folder(),
            adds,
            replaced,
            gone));
  }

  private boolean mayReplace(AddOnCard manifest, Layered there, Document document) {
    String kind = kind(document);
    Fields fields = new Fields(document, "", document.root(), problems);
    if (!manifest.replaces(kind, id(document))) {
      fields.problem(
          kind,
          "duplicate-id",
          "\"" + id(document) + "\" is a " + kind + " of the rule base already",
          "Give it another id, or name it under \"replaces\" in " + AddOn.FILE + ".");
      return false;
    }
    if (clashes(manifest, there.from())) {
      clash(manifest, "replaces/" + kind, there.from(), key(document));
      return false;
    }
    if (protection.holds(there.document())) {
      fields.problem(
          kind,
          "protects-people",
          "the " + kind + " \"" + id(document) + "\" protects people and cannot be replaced",
          "Add a card of your own beside it, under another id.");
      return false;
    }
    List<String> lost = new Strictness(there.document()).lost(new Strictness(document));
    if (!lost.isEmpty()) {
      fields.problem(
          kind,
          "less-safe",
          "\"" + id(document) + "\" would lose " + String.join(", ", lost),
          "A card that replaces another keeps its set-ups, hazards, follow-ups and proofs, how"
              + " urgent it is and who may do it; it may ask for more.");
      return false;
    }
    return true;
  }

  /**
   * Whether two add-ons change the same card without one building on the other.
   *
   * @param other the add-on that already changed it; null for the rule base itself
   */
  private static boolean clashes(AddOnCard manifest, AddOnCard other) {
    return other != null && !manifest.over().contains(other.id());
  }

  private static void clash(AddOnCard manifest, String field, AddOnCard other, String card) {
    manifest
        .fields()
        .problem(
            field,
            "add-on-clash",
            "the add-on \"" + other.id() + "\" has something to say on the " + card + " as well",
            "If this one is to have the last word, write over: [" + other.id() + "].");
  }

  /** Reports cards that are named as replaced but have no replacement, or that do not exist. */
  private static void reportNotReplaced(AddOnCard manifest, List<String> replaced) {
    manifest
        .replaces()
        .forEach(
            (kind, ids) -> {
              for (String id : ids) {
                if (!replaced.contains(kind + " " + id)) {
                  manifest
                      .fields()
                      .problem(
                          "replaces/" + kind,
                          "unknown-name",
                          "\"" + id + "\" is not both in the rule base and in this folder",
                          "A " + kind + " that replaces another has the same id.");
                }
              }
            });
  }

  private void switchOff(AddOnCard manifest, String kind, String id, List<String> gone) {
    if (kind.equals(RulesOff.KIND)) {
      if (rulesOff.allows(manifest, id, protection.named())) {
        gone.add(kind + " " + id);
      }
      return;
    }
    Layered there = cards.get(kind + " " + id);
    String field = "switches-off/" + kind;
    if (off.containsKey(kind + " " + id)) {
      gone.add(kind + " " + id); // another add-on has already switched it off
    } else if (there == null) {
      Set<String> known =
          cards.keySet().stream()
              .filter(k -> k.startsWith(kind + " "))
              .map(k -> k.substring(kind.length() + 1))
              .collect(Collectors.toCollection(LinkedHashSet::new));
      manifest
          .fields()
          .problem(
              field,
              "unknown-name",
              "there is no " + kind + " \"" + id + "\" to switch off",
              Names.advice(id, known));
    } else if (!CAN_BE_OFF.contains(kind) || protection.staysOn(there.document()) || needed(id)) {
      manifest
          .fields()
          .problem(
              field,
              "cannot-switch-off",
              "the " + kind + " \"" + id + "\" protects people or is always needed",
              "What an add-on can switch off are other causes, effects, checks, complaints, histories, repairs,"
                  + " pressing matters and rules.");
    } else if (clashes(manifest, there.from())) {
      clash(manifest, field, there.from(), kind + " " + id);
    } else {
      cards.remove(kind + " " + id);
      off.put(kind + " " + id, manifest);
      gone.add(kind + " " + id);
    }
  }

  private static boolean needed(String id) {
    return id.equals(Cause.NOTHING_WRONG) || id.equals(Cause.NOT_IN_RULE_BASE);
  }

  /** The card with its add-on in its source, so that explanations show where it comes from. */
  private Document marked(Layered card) {
    JsonNode source = card.document().root().get("source");
    if (card.from() == null || source == null || !source.isValueNode()) {
      return card.document();
    }
    boolean replaced = card.from().replaces(kind(card.document()), id(card.document()));
    ObjectNode copy = (ObjectNode) card.document().root().deepCopy();
    copy.put(
        "source",
        source.asString()
            + (replaced ? "; replaced by add-on " : "; add-on ")
            + card.from().name());
    return card.document().with(copy);
  }

  /** The path of a file, independent of where the folder of its add-on is. */
  static String placeless(String file, List<Document> documents) {
    return manifest(file, documents)
        .map(m -> "add-on " + id(m) + "/" + file.substring(folder(m).length()))
        .orElse(file);
  }

  private static Optional<Document> manifest(String file, List<Document> documents) {
    return documents.stream()
        .filter(d -> kind(d).equals("add-on") && file.startsWith(folder(d)))
        .max(Comparator.comparingInt(d -> folder(d).length()));
  }

  private static String folder(Document manifest) {
    return manifest.file().substring(0, manifest.file().lastIndexOf('/') + 1);
  }
}
