package yett.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.UsageException;
import yett.desk.RuleBaseChoice;

/**
 * Reads the options that choose a rule base and its language. They may stand before or after any
 * command.
 */
final class RuleBaseOptions {
  private static final String FOLDER = "--knowledge";
  private static final String ADD_ON = "--add-on";
  private static final String LANGUAGE = "--language";

  private RuleBaseOptions() {}

  /**
   * The choice that a command line makes.
   *
   * @param words receives the words that are left
   * @throws UsageException if an option has no folder
   */
  static RuleBaseChoice take(RuleBaseChoice usual, List<String> typed, List<String> words) {
    Optional<Path> folder = Optional.empty();
    List<Path> addOns = new ArrayList<>();
    Optional<String> language = Optional.empty();
    for (int i = 0; i < typed.size(); i++) {
      String word = typed.get(i);
      String option = word.replaceFirst("=.*", "");
      if (!List.of(FOLDER, ADD_ON, LANGUAGE).contains(option)) {
        words.add(word);
        continue;
      }
      boolean joined = word.length() > option.length();
      if (!joined && i + 1 == typed.size()) {
        throw new UsageException(
            option
                + (option.equals(LANGUAGE)
                    ? " needs a language, such as de."
                    : " needs a folder."));
      }
      String value = joined ? word.substring(option.length() + 1) : typed.get(++i);
      switch (option) {
        case FOLDER -> folder = Optional.of(Path.of(value));
        case ADD_ON -> addOns.add(Path.of(value));
        default -> language = Optional.of(value);
      }
    }
    return usual.with(folder, addOns, language);
  }
}
