package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * An add-on and what it changes in the rule base below it.
 *
 * @param name for people
 * @param version as its owner counts; empty if its card gives none
 * @param folder beginning of the paths of its files
 * @param adds, replaces, switchesOff: cards as {@code cause chain-slack}; switchesOff also holds
 *     rules, as {@code rule how far the chain hangs}
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

  /** An add-on without a version. */
  public AddOn(
      String id,
      String name,
      String folder,
      List<String> adds,
      List<String> replaces,
      List<String> switchesOff) {
    this(id, name, "", folder, adds, replaces, switchesOff);
  }

  /** A copy that also switches off this card. */
  AddOn switchingOff(String card) {
    List<String> all = new ArrayList<>(switchesOff);
    all.add(card);
    return new AddOn(id, name, version, folder, adds, replaces, List.copyOf(all));
  }

  /** A copy that also lists those of the files of rules and tables that lie in its folder. */
  AddOn withRules(Collection<String> ruleFiles) {
    List<String> all = new ArrayList<>(adds);
    ruleFiles.stream()
        .filter(file -> file.startsWith(folder))
        .forEach(file -> all.add("rules of " + file.substring(folder.length())));
    return new AddOn(id, name, version, folder, List.copyOf(all), replaces, switchesOff);
  }

  /** What the add-on does, as one sentence without a full stop. */
  public String words() {
    return Edition.words(name, version)
        + ": adds "
        + (adds.isEmpty() ? "nothing" : String.join(", ", adds))
        + (replaces.isEmpty() ? "" : "; replaces " + String.join(", ", replaces))
        + (switchesOff.isEmpty() ? "" : "; switches off " + String.join(", ", switchesOff));
  }
}
