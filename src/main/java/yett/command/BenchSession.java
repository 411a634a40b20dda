package yett.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import yett.knowledge.AddOn;

/**
 * A session of a trainer in one folder. "knowledge" and the folder may be left out of every line,
 * and what one command has loaded is there for the next.
 */
final class BenchSession {
  private static final String KNOWLEDGE = "knowledge";

  /** Commands of {@code knowledge} whose first word is the folder. */
  private static final Set<String> FOLDER_FIRST =
      Set.of(
          "check",
          "test",
          "compare",
          "trust",
          "questions",
          "anomalies",
          "review",
          "cover",
          "pack",
          "table",
          "texts");

  /** Commands of {@code knowledge} that take the folder after one word of their own. */
  private static final Set<String> FOLDER_SECOND = Set.of("new", "show");

  /** Commands that work on the rule base in use, so the folder has to be chosen as that. */
  private static final Set<String> IN_USE = Set.of("find", "cover", "hears");

  private final Path folder;

  private BenchSession(Path folder) {
    this.folder = folder;
  }

  /** The session that a command line asks for: {@code knowledge FOLDER}. */
  static Optional<BenchSession> of(List<String> words) {
    boolean asked =
        words.size() == 2
            && words.get(0).equals(KNOWLEDGE)
            && Files.isDirectory(Path.of(words.get(1)));
    return asked ? Optional.of(new BenchSession(Path.of(words.get(1)))) : Optional.empty();
  }

  String prompt() {
    return folder.getFileName() + "> ";
  }

  /** Text shown when the session begins. */
  String greeting() {
    return "Working in "
        + folder
        + ": check, new cause, test, compare, show ID, find WORD, cover and the other"
        + " commands of \"knowledge\" apply to this folder. help lists them all; quit"
        + " leaves.";
  }

  /**
   * Completes a typed line with what may be left out in this session.
   *
   * @param command whether words name a command
   */
  List<String> whole(List<String> typed, Predicate<String> command) {
    List<String> words = new ArrayList<>(typed);
    if (words.isEmpty()) {
      return words;
    }
    if (!words.get(0).equals(KNOWLEDGE) && command.test(KNOWLEDGE + " " + words.get(0))) {
      words.add(0, KNOWLEDGE);
    }
    if (words.size() > 1 && words.get(0).equals(KNOWLEDGE)) {
      String deed = words.get(1);
      if (FOLDER_FIRST.contains(deed)) {
        put(words, 2);
      } else if (FOLDER_SECOND.contains(deed) && words.size() > 2) {
        put(words, 3);
      }
      if (IN_USE.contains(deed)) {
        boolean addOn = Files.exists(folder.resolve(AddOn.FILE));
        words.addAll(List.of(addOn ? "--add-on" : "--knowledge", folder.toString()));
      }
    }
    return words;
  }

  /** Inserts the folder at this position, unless another one is named there. */
  private void put(List<String> words, int place) {
    boolean free =
        words.size() <= place
            || words.get(place).startsWith("--")
            || words.get(place).contains("=");
    if (free) {
      words.add(place, folder.toString());
    }
  }
}
