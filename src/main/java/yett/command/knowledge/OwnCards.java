package yett.command.knowledge;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeSource;

/** Finds the files of a rule base that are in one folder and may be written. */
final class OwnCards {
  private OwnCards() {}

  /**
   * The files of the folder, by their names in the rule base. They differ because an add-on is laid
   * over another rule base.
   */
  static Map<String, Path> of(Path folder, Set<String> names) {
    String path = folder.toString().replace('\\', '/') + "/";
    String whole = folder.toAbsolutePath().normalize().toString().replace('\\', '/') + "/";
    boolean addOn = Files.exists(folder.resolve(AddOn.FILE));
    Map<String, Path> mine = new TreeMap<>();
    for (String own : KnowledgeSource.folder(folder).files().keySet()) {
      Stream.of(addOn ? path + own : own, whole + own)
          .filter(names::contains)
          .findFirst()
          .ifPresent(name -> mine.put(name, folder.resolve(own)));
    }
    return mine;
  }
}
