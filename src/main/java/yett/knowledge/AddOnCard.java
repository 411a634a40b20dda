package yett.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The contents of an {@code add-on.yaml}.
 *
 * @param folder beginning of the paths of its files
 * @param over ids of the add-ons that it builds on and whose cards it may change
 * @param replaces by kind, the ids of the cards that its own cards replace
 */
record AddOnCard(
    String id,
    String name,
    String version,
    String folder,
    List<String> over,
    Map<String, List<String>> replaces,
    Map<String, List<String>> switchesOff,
    Fields fields) {

  static AddOnCard of(Fields fields, String file, List<String> kinds) {
    AddOnCard manifest =
        new AddOnCard(
            fields.id("add-on"),
            fields.text("name"),
            Edition.version(fields),
            file.substring(0, file.lastIndexOf('/') + 1),
            fields.texts("over"),
            byKind(fields, "replaces", kinds),
            byKind(
                fields,
                "switches-off",
                Stream.concat(kinds.stream(), Stream.of(RulesOff.KIND)).toList()),
            fields);
    fields.text("source", "");
    fields.finish();
    return manifest;
  }

  private static Map<String, List<String>> byKind(Fields fields, String field, List<String> kinds) {
    Map<String, List<String>> byKind = new LinkedHashMap<>();
    Fields inner = fields.inner(field);
    for (String kind : inner.names()) {
      if (kinds.contains(kind)) {
        byKind.put(kind, inner.texts(kind));
      } else {
        inner.problem(
            kind,
            "unknown-word",
            "\"" + kind + "\" is not a kind of card",
            Names.advice(kind, kinds));
      }
    }
    return byKind;
  }

  boolean replaces(String kind, String id) {
    return replaces.getOrDefault(kind, List.of()).contains(id);
  }

  /** Sorts add-ons so that each comes after those that it builds on. */
  static List<AddOnCard> inOrder(List<AddOnCard> manifests) {
    List<AddOnCard> sorted = new ArrayList<>();
    List<AddOnCard> left =
        new ArrayList<>(
            manifests.stream()
                .sorted((a, b) -> a.id().compareTo(b.id()))
                .collect(Collectors.toList()));
    List<String> ids = manifests.stream().map(AddOnCard::id).toList();
    for (AddOnCard m : left) {
      for (String lower : m.over()) {
        if (!ids.contains(lower)) {
          m.fields()
              .problem(
                  "over",
                  "unknown-name",
                  "the add-on \"" + lower + "\" is not in use",
                  "Use it as well, or take it out of \"over\".");
        }
      }
    }
    while (!left.isEmpty()) {
      List<String> waiting = left.stream().map(AddOnCard::id).toList();
      AddOnCard next =
          left.stream()
              .filter(m -> m.over().stream().noneMatch(waiting::contains))
              .findFirst()
              .orElse(null);
      if (next == null) {
        left.get(0)
            .fields()
            .problem(
                "over",
                "add-on-clash",
                "these add-ons lie over each other in a ring: " + String.join(", ", waiting),
                "Take one of them out of \"over\".");
        sorted.addAll(left);
        return sorted;
      }
      sorted.add(next);
      left.remove(next);
    }
    return sorted;
  }
}
