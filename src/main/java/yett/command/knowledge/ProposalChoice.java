package yett.command.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yett.command.common.Prompt;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Console;
import yett.knowledge.Names;
import yett.review.Proposal;

/** Chooses which of the proposed changes to the cards to make. */
record ProposalChoice(Console console) {
  /**
   * The proposals named in the command. If none is named and a person is there, those that they
   * choose.
   *
   * @param names separated by commas, or {@code all}
   */
  List<Proposal> accepted(String names, List<Proposal> found) {
    if (names.equals("all")) {
      return found;
    }
    if (!names.isEmpty()) {
      return Arrays.stream(names.split("[,\\s]+")).map(n -> named(n, found)).toList();
    }
    return console.interactive() ? asked(found) : List.of();
  }

  private static Proposal named(String name, List<Proposal> found) {
    return found.stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    Words.quoted(name)
                        + " is not among the proposals. "
                        + Names.advice(name, found.stream().map(Proposal::name).toList())));
  }

  /** Asks at the terminal which ones, by number. */
  private List<Proposal> asked(List<Proposal> found) {
    return until("Numbers to accept, all, or Enter for none", line -> numbered(line, found))
        .orElse(List.of());
  }

  private static Prompt.Reading<List<Proposal>> numbered(String line, List<Proposal> found) {
    if (line.isEmpty() || line.equalsIgnoreCase("all")) {
      return Prompt.Reading.of(line.isEmpty() ? List.of() : found);
    }
    List<Proposal> chosen = new ArrayList<>();
    for (String word : line.split("[,\\s]+")) {
      Optional<Integer> number = Prompt.number(word, found.size());
      if (number.isEmpty()) {
        return Prompt.Reading.again(
            "Type numbers from 1 to " + found.size() + " separated by spaces, all, or Enter.");
      }
      chosen.add(found.get(number.get() - 1));
    }
    return Prompt.Reading.of(chosen.stream().distinct().toList());
  }

  boolean yes(String prompt) {
    return until(
            prompt,
            line ->
                Prompt.word(line, List.of("yes", "no", ""))
                    .map(i -> Prompt.Reading.of(i == 0))
                    .orElse(Prompt.Reading.again("Type yes or no.")))
        .orElse(false);
  }

  private <T> Optional<T> until(String prompt, Function<String, Prompt.Reading<T>> reader) {
    return Prompt.forWords(console).until(prompt + "> ", reader);
  }
}
