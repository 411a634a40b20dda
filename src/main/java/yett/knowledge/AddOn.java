package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a folder laid over a rule base does to it.
 *
 * @param name for people
 * @param version as its owner counts; empty if its card tells none
 * @param folder beginning of the paths of its files
 * @param adds, replaces, switchesOff: cards as {@code cause chain-slack}; of what is switched off
 *     also rules, as {@code rule how far the chain hangs}
 */
public record AddOn(
    String id,
    String name,
    String version,
    String folder,
    List<String> adds,
    List<String> replaces,
    List<String> switchesOff) {
  /** The file that makes a folder an add-on. */
  public static final String FILE = "add-on.yaml";

  /** One that tells no version. */
  public AddOn(
      String id,
      String name,
      String folder,
      List<String> adds,
      List<String> replaces,
      List<String> switchesOff) {
    this(id, name, "", folder, adds, replaces, switchesOff);
  }

  /** With a further card that it switches off. */
  AddOn switchingOff(String card) {
    List<String> all = new ArrayList<>(switchesOff);
    all.add(card);
    return new AddOn(id, name, version, folder, adds, replaces, List.copyOf(all));
  }

  /** With those of the files of rules and tables that lie in its folder. */
  AddOn withRules(Collection<String> ruleFiles) {
    List<String> all = new ArrayList<>(adds);
    ruleFiles.stream()
        .filter(file -> file.startsWith(folder))
        .forEach(file -> all.add("rules of " + file.substring(folder.length())));
    return new AddOn(id, name, version, folder, List.copyOf(all), replaces, switchesOff);
  }

  /** One sentence without a full stop. */
  public String words() {
    return Edition.words(name, version)
        + ": adds "
        + (adds.isEmpty() ? "nothing" : String.join(", ", adds))
        + (replaces.isEmpty() ? "" : "; replaces " + String.join(", ", replaces))
        + (switchesOff.isEmpty() ? "" : "; switches off " + String.join(", ", switchesOff));
  }

  /**
   * An add-on as its own card tells it.
   *
   * @param folder beginning of the paths of its files
   * @param over ids of the add-ons that it builds on, whose cards it may change
   * @param replaces by kind, the ids of the cards that its own stand in place of
   */
  record Manifest(
      String id,
      String name,
      String version,
      String folder,
      List<String> over,
      Map<String, List<String>> replaces,
      Map<String, List<String>> switchesOff,
      Fields fields) {

    static Manifest of(Fields fields, String file, List<String> kinds) {
      Manifest manifest =
          new Manifest(
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

    private static Map<String, List<String>> byKind(
        Fields fields, String field, List<String> kinds) {
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
  }

  /** The add-ons of a folder and those over which they lie, the lowest first. */
  static List<Manifest> inOrder(List<Manifest> manifests) {
    List<Manifest> sorted = new ArrayList<>();
    List<Manifest> left =
        new ArrayList<>(
            manifests.stream()
                .sorted((a, b) -> a.id().compareTo(b.id()))
                .collect(Collectors.toList()));
    List<String> ids = manifests.stream().map(Manifest::id).toList();
    for (Manifest m : left) {
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
      List<String> waiting = left.stream().map(Manifest::id).toList();
      Manifest next =
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
