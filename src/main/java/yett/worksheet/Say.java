package yett.worksheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What to say of some numbers. A sentence names a number, a choice or words by their id: {@code
 * {drop}} becomes {@code 1.2 V}, {@code {length typed}} what was typed for the length.
 *
 * @param when of which numbers it is said
 * @param sentences with names in braces
 * @param note a safety note that those numbers ask for
 */
public record Say(Predicate<Values> when, List<String> sentences, Optional<Note> note) {

  public Say {
    sentences = List.copyOf(sentences);
  }

  public static Say when(Predicate<Values> when, String... sentences) {
    return new Say(when, List.of(sentences), Optional.empty());
  }

  /** With a safety note. */
  public Say warning(Note of) {
    return new Say(when, sentences, Optional.of(of));
  }

  List<String> said(Values values) {
    return sentences.stream().map(values::fill).toList();
  }
}
