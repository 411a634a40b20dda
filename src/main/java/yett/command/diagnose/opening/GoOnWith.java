package yett.command.diagnose.opening;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import yett.casebook.CaseId;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;

/** Asks which of the open cases of a gate is gone on with. */
final class GoOnWith {
  /** "The gate hit her", "fire", but not "x" or "2b". */
  private static final Pattern WORDS = Pattern.compile("\\p{L}{4}|\\p{L} \\p{L}");

  private GoOnWith() {}

  /**
   * @param lines what is said of each case
   * @param words takes what is typed instead of a number, if it is words
   * @return the inner value is empty for none of them, the outer one if the person leaves
   */
  static Optional<Optional<CaseId>> ask(
      Console console,
      String heading,
      List<CaseId> cases,
      List<String> lines,
      String prompt,
      Consumer<String> words) {
    console.show(Block.heading(heading), Block.numbered(lines));
    return Prompt.forWords(console)
        .until(
            prompt + "> ",
            line -> {
              if (line.equals("0") || NoneWords.isSaid(line)) {
                return Prompt.Reading.of(Optional.<CaseId>empty());
              }
              if (WORDS.matcher(line).find() && Words.wish(line).isEmpty()) {
                words.accept(line.strip());
              }
              return Prompt.number(line, cases.size())
                  .map(n -> Prompt.Reading.of(Optional.of(cases.get(n - 1))))
                  .orElse(Prompt.Reading.again("Type the number of the case, or 0 for a new one."));
            });
  }
}
