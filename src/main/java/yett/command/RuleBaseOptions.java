package yett.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.UsageException;
import yett.desk.RuleBaseChoice;

/** The options that choose a rule base, which stand before or behind any command. */
final class RuleBaseOptions {
  private static final String FOLDER = "--knowledge";
  private static final String ADD_ON = "--add-on";

  private RuleBaseOptions() {}

  /**
   * The choice that a command line makes.
   *
   * @param words is given the words that are left
   * @throws UsageException if an option has no folder
   */
  static RuleBaseChoice take(RuleBaseChoice usual, List<String> typed, List<String> words) {
    Optional<Path> folder = Optional.empty();
    List<Path> addOns = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      String word = typed.get(i);
      String option = word.startsWith(FOLDER) ? FOLDER : ADD_ON;
      if (word.equals(option) && i + 1 == typed.size()) {
        throw new UsageException(option + " needs a folder.");
      }
      boolean joined = word.startsWith(option + "=");
      if (!joined && !word.equals(option)) {
        words.add(word);
        continue;
      }
      Path path = Path.of(joined ? word.substring(option.length() + 1) : typed.get(++i));
      if (option.equals(FOLDER)) {
        folder = Optional.of(path);
      } else {
        addOns.add(path);
      }
    }
    return usual.with(folder, addOns);
  }
}
