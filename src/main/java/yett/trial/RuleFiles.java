package yett.trial;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.AddOn;
import yett.knowledge.RuleBase;

/**
 * Names of files that are the same in two copies of an add-on: its id stands for the folder that it
 * lies in.
 */
final class RuleFiles {
  private RuleFiles() {}

  static SortedMap<String, String> rules(RuleBase base) {
    return named(base, base.rules());
  }

  static SortedMap<String, String> tables(RuleBase base) {
    return named(base, base.tables());
  }

  private static SortedMap<String, String> named(RuleBase base, Map<String, String> files) {
    SortedMap<String, String> named = new TreeMap<>();
    files.forEach((path, text) -> named.put(name(base, path), text));
    return named;
  }

  static String name(RuleBase base, String path) {
    return base.addOns().stream()
        .filter(a -> path.startsWith(a.folder()))
        .findFirst()
        .map((AddOn a) -> a.id() + "/" + path.substring(a.folder().length()))
        .orElse(path);
  }
}
