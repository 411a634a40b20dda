package yett.command.diagnose.opening;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.common.Prompt;
import yett.console.Block;
import yett.console.Console;

/** Asks which of the open cases of a gate is gone on with. */
final class GoOnWith {
  private GoOnWith() {}

  /**
   * @param lines what is said of each case
   * @return the inner value is empty for none of them, the outer one if the person leaves
   */
  static Optional<Optional<CaseId>> ask(
      Console console, String heading, List<CaseId> cases, List<String> lines, String prompt) {
    console.show(Block.heading(heading), Block.numbered(lines));
    return Prompt.forWords(console)
        .until(
            prompt + "> ",
            line ->
                line.equals("0")
                    ? Prompt.Reading.of(Optional.<CaseId>empty())
                    : Prompt.number(line, cases.size())
                        .map(n -> Prompt.Reading.of(Optional.of(cases.get(n - 1))))
                        .orElse(
                            Prompt.Reading.again(
                                "Type the number of the case, or 0 for a new one.")));
  }
}
