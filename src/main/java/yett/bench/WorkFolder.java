package yett.bench;

import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import yett.knowledge.Problem;

/**
 * A folder in which somebody works and, if it is an add-on, the files under it.
 *
 * @param below the files that are not in the folder
 * @param prefix path of the folder's files among all files; empty if it is no add-on
 */
public record WorkFolder(SortedMap<String, String> below, String prefix) {
  private static final String ADD_ON = "add-on.yaml";

  /**
   * @param all files of the rule base in use
   * @param own files of the folder
   */
  public static WorkFolder of(Path folder, SortedMap<String, String> all, Map<String, String> own) {
    String prefix =
        Stream.of(folder, folder.toAbsolutePath().normalize())
            .map(path -> path.toString().replace('\\', '/') + "/")
            .filter(path -> all.containsKey(path + ADD_ON))
            .findFirst()
            .orElse("");
    SortedMap<String, String> below = new TreeMap<>(all);
    own.keySet().forEach(name -> below.remove(prefix + name));
    return new WorkFolder(below, prefix);
  }

  /** All files, with these in the folder. */
  public SortedMap<String, String> with(Map<String, String> own) {
    SortedMap<String, String> all = new TreeMap<>(below);
    own.forEach((name, text) -> all.put(prefix + name, text));
    return all;
  }

  /** A problem of a file of the folder, with the name that the file has among all. */
  public Problem placed(Problem p) {
    return new Problem(p.kind(), prefix + p.file(), p.line(), p.column(), p.message(), p.advice());
  }
}
