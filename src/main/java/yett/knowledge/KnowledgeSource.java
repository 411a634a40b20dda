package yett.knowledge;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A source of a rule base: the texts of its files by path, in a fixed order. */
@FunctionalInterface
public interface KnowledgeSource {

  /**
   * Contents by path, relative to the rule base, with forward slashes. A workbook's bytes are given
   * as one character each.
   */
  SortedMap<String, String> files();

  /** The language wanted for its texts; empty for the cards' own. */
  default String language() {
    return "";
  }

  /** The same files with the texts in a language, where they are translated. */
  default KnowledgeSource in(String language) {
    KnowledgeSource same = this;
    return new KnowledgeSource() {
      @Override
      public SortedMap<String, String> files() {
        return same.files();
      }

      @Override
      public String language() {
        return language;
      }
    };
  }

  /**
   * The files of a folder, without hidden ones.
   *
   * @throws KnowledgeException if it is no readable folder, or holds files that are refused: links
   *     that lead out of it, files that are too large or no text
   */
  static KnowledgeSource folder(Path folder) {
    return () -> new KnowledgeFolder(folder).files();
  }

  /**
   * A rule base with add-ons laid over it. The order of the folders does not matter.
   *
   * @throws KnowledgeException if one of them is no add-on
   */
  static KnowledgeSource layered(KnowledgeSource base, List<Path> addOns) {
    return () -> {
      TreeMap<String, String> files = new TreeMap<>(base.files());
      for (Path addOn : addOns) {
        SortedMap<String, String> own = folder(addOn).files();
        if (!own.containsKey(AddOn.FILE)) {
          throw new KnowledgeException(
              List.of(
                  new Problem(
                      "no-add-on",
                      addOn.toString(),
                      0,
                      0,
                      "this folder is not an add-on: it has no " + AddOn.FILE,
                      "The file begins with a line \"add-on: a-name\".")));
        }
        String path = addOn.toString().replace('\\', '/');
        boolean taken = files.keySet().stream().anyMatch(f -> f.startsWith(path + "/"));
        String prefix = taken ? addOn.toAbsolutePath().normalize().toString() : path;
        own.forEach((name, text) -> files.put(prefix + "/" + name, text));
      }
      return files;
    };
  }

  /** Whether a file of this name belongs to a rule base. */
  static boolean wanted(String name) {
    boolean hidden = name.startsWith(".") || name.contains("/.");
    return !hidden
        && (name.endsWith(".yaml")
            || name.endsWith(".yml")
            || name.endsWith(".drl")
            || name.endsWith(".case.json")
            || table(name));
  }

  /** The character set in which a file of this name is read. */
  static Charset charset(String name) {
    return name.endsWith(".xlsx") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
  }

  /** Whether a file of this name is a decision table. */
  static boolean table(String name) {
    return name.endsWith(".table.csv") || name.endsWith(".table.xlsx");
  }
}
