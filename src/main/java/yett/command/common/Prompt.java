package yett.command.common;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import yett.console.Console;
import yett.console.Reply;

/** Reads typed lines, and asks again until a line can be understood. */
public final class Prompt {
  private final Console console;
  private final boolean leaves;

  private Prompt(Console console, boolean leaves) {
    this.console = console;
    this.leaves = leaves;
  }

  /** A prompt at which every word is an answer. */
  public static Prompt forWords(Console console) {
    return new Prompt(console, false);
  }

  /** A prompt that a person can also leave with "save", "stop", "quit" or "exit". */
  public static Prompt withLeave(Console console) {
    return new Prompt(console, true);
  }

  /** The result of reading a line: a value, or a message to show before asking again. */
  public record Reading<T>(Optional<T> value, String complaint) {
    public static <T> Reading<T> of(T value) {
      return new Reading<>(Optional.of(value), "");
    }

    /** A result that makes the prompt ask again; an empty complaint shows no message. */
    public static <T> Reading<T> again(String complaint) {
      return new Reading<>(Optional.empty(), complaint);
    }
  }

  /** A line without blanks at its ends; empty if the person leaves or the input has ended. */
  public Optional<String> line(String prompt, List<String> completions) {
    if (!(console.ask(prompt, completions) instanceof Reply.Line line)
        || leaves && Words.wish(line.text()).filter(w -> w == Words.Wish.SAVE).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(line.text().strip());
  }

  /** Asks until a line can be read; empty if the person leaves or the input has ended. */
  public <T> Optional<T> until(
      String prompt, List<String> completions, Function<String, Reading<T>> reader) {
    return until(() -> line(prompt, completions), reader, console::say);
  }

  /**
   * Takes lines until one can be read.
   *
   * @param complaints receives what was wrong with each line
   * @return empty if there are no more lines
   */
  public static <T> Optional<T> until(
      Supplier<Optional<String>> lines,
      Function<String, Reading<T>> reader,
      Consumer<String> complaints) {
    while (true) {
      Optional<String> line = lines.get();
      if (line.isEmpty()) {
        return Optional.empty();
      }
      Reading<T> reading = reader.apply(line.get());
      if (reading.value().isPresent()) {
        return reading.value();
      }
      if (!reading.complaint().isEmpty()) {
        complaints.accept(reading.complaint());
      }
    }
  }

  /** The same without completions. */
  public <T> Optional<T> until(String prompt, Function<String, Reading<T>> reader) {
    return until(prompt, List.of(), reader);
  }

  /** The position of the word that equals the line, ignoring case. */
  public static Optional<Integer> word(String line, List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      if (words.get(i).equalsIgnoreCase(line)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** A number from 1 to the length of a list. */
  public static Optional<Integer> number(String line, int most) {
    return Optional.of(line)
        .filter(l -> l.matches("\\d{1,3}"))
        .map(Integer::valueOf)
        .filter(n -> n >= 1 && n <= most);
  }

  /** Reads yes or no by word, first letter or position. */
  public static Reading<Boolean> yesOrNo(String line) {
    return word(line, List.of("yes", "y", "1", "no", "n", "2"))
        .map(i -> Reading.of(i < 3))
        .orElse(Reading.again("Type yes or no."));
  }
}
