package yett.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/** Writes new cards into the folder of a rule base; what is there is never overwritten. */
public final class NewFiles {
  private final Path folder;
  private final SortedMap<String, String> files;
  private final Checker checker = new Checker();
  private final RuleBase base;

  /**
   * @param files of the rule base as it is
   */
  public NewFiles(Path folder, SortedMap<String, String> files) {
    this.folder = folder;
    this.files = files;
    this.base = checker.check(files).base();
  }

  public static List<String> kinds() {
    return List.of("cause", "check", "repair", "case");
  }

  /** The card of that kind, empty for any other word. */
  public Optional<NewCard> card(String kind) {
    Asked asked = new Asked(base, files.keySet());
    return switch (kind) {
      case "cause" -> Optional.of(new NewCause(asked));
      case "check" -> Optional.of(new NewCheck(asked));
      case "repair" -> Optional.of(new NewRepair(asked));
      case "case" -> Optional.of(new NewCase(asked));
      default -> Optional.empty();
    };
  }

  /** What would be wrong in these new files, if they were there. */
  public List<Problem> problems(Map<String, String> fresh) {
    SortedMap<String, String> all = new TreeMap<>(files);
    all.putAll(fresh);
    return checker.check(all).problems().stream().filter(p -> fresh.containsKey(p.file())).toList();
  }

  /**
   * Writes new files.
   *
   * @return where they are
   * @throws UncheckedIOException if one is there already, or cannot be written; then none is left
   */
  public List<Path> write(Map<String, String> fresh) {
    List<Path> written = new ArrayList<>();
    try {
      for (Map.Entry<String, String> file : fresh.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.writeString(path, file.getValue(), StandardOpenOption.CREATE_NEW);
        written.add(path);
      }
      return written;
    } catch (IOException e) {
      written.forEach(NewFiles::delete);
      String why =
          e instanceof FileAlreadyExistsException
              ? "there is a file " + e.getMessage() + " already; nothing was written"
              : "cannot write " + e.getMessage() + "; nothing was written";
      throw new UncheckedIOException(why, e);
    }
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot take back " + path, e);
    }
  }
}
