package yett.command.diagnose.sitting;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import yett.command.common.CannotTellWords;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.console.Block;

/**
 * Asks which of several things a person means. What was only understood from words counts when it
 * is typed: Enter alone takes nothing, however clear the words were.
 */
public record Choices(Sitting sitting) {
  private static final Set<String> YES = Set.of("yes", "y", "right", "correct", "ok");
  private static final Set<String> NO = Set.of("2", "wrong");

  /** Whether the line takes none of the things, or takes nothing back but the question itself. */
  private static boolean isNone(String line) {
    return line.isEmpty()
        || NoneWords.isSaid(line)
        || CannotTellWords.answer(line).isPresent()
        || Words.isBack(line);
  }

  /** Asks for one of several things by its number; empty if none of them is meant. */
  public <T> Optional<T> of(String heading, List<T> things, Function<T, String> words) {
    sitting.show(Block.heading(heading), Block.numbered(things.stream().map(words).toList()));
    return sitting.until(
        "Number, or Enter for none",
        line ->
            isNone(line)
                ? Prompt.Reading.of(Optional.empty())
                : Prompt.number(line, things.size())
                    .map(n -> Prompt.Reading.of(Optional.of(things.get(n - 1))))
                    .orElse(
                        Prompt.Reading.again(
                            "Type a number from 1 to "
                                + things.size()
                                + ", or just press Enter.")));
  }

  /** Asks whether the only thing is meant, or which of several; empty if none is. */
  public <T> Optional<T> confirm(List<T> things, Function<T, String> words) {
    if (things.size() > 1) {
      return of("Which do you mean?", things, words);
    }
    boolean right = isRight(words.apply(things.get(0)), line -> false);
    return right ? Optional.of(things.get(0)) : Optional.empty();
  }

  private boolean isRight(String shown, Predicate<String> otherwise) {
    return sitting.until(
        shown + " Right? yes, or Enter for no",
        line -> {
          String said = line.toLowerCase(Locale.ROOT);
          return YES.contains(said) || said.equals("1")
              ? Prompt.Reading.of(true)
              : isNone(line) || NO.contains(said) || otherwise.test(line)
                  ? Prompt.Reading.of(false)
                  : Prompt.Reading.again("Type yes if it is right; type no if it is not.");
        });
  }

  /**
   * The same where several of the things may be meant.
   *
   * @param otherwise takes a line that chooses nothing, if it says something else; then none is
   *     meant
   */
  public <T> List<T> several(
      List<T> things, Function<T, String> words, Predicate<String> otherwise) {
    if (things.size() == 1) {
      return isRight(words.apply(things.get(0)), otherwise) ? things : List.of();
    }
    List<String> texts = things.stream().map(words).toList();
    sitting.show(Block.heading("Which do you mean?"), Block.numbered(texts));
    return sitting.until(
        "Numbers, or Enter for none",
        line -> {
          if (YES.contains(line.toLowerCase(Locale.ROOT))) { // to which of them?
            return Prompt.Reading.again("Type the numbers of those that are right.");
          }
          if (Words.isPrompted(line)) { // "close" is no word of "starts to close"
            return Prompt.Reading.again(numbers(things.size()));
          }
          ListChoice.Several picked = ListChoice.several(isNone(line) ? "" : line, texts, texts);
          if (picked.unclear().isPresent() && otherwise.test(line)) {
            return Prompt.Reading.of(List.of());
          }
          return picked.unclear().isEmpty()
              ? Prompt.Reading.of(picked.positions().stream().map(things::get).toList())
              : Prompt.Reading.again(numbers(things.size()));
        });
  }

  private static String numbers(int most) {
    return "Type numbers from 1 to " + most + ", or Enter for none.";
  }
}
