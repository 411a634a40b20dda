package yett.worksheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Sentences about results under a condition. A sentence names a number, a choice or words by their
 * id: {@code {drop}} becomes {@code 1.2 V}, {@code {length typed}} the length in the unit in which
 * it was typed, and {@code {drop u}} the uncertainty.
 *
 * @param when the condition
 * @param sentences with names in braces
 * @param note a safety note that goes with them
 */
public record Statement(Predicate<Values> when, List<String> sentences, Optional<Note> note) {
  private static final Pattern NAME = Pattern.compile("\\{([a-z0-9-]+)(?: (typed|u))?}");

  public Statement {
    sentences = List.copyOf(sentences);
  }

  public static Statement when(Predicate<Values> when, String... sentences) {
    return new Statement(when, List.of(sentences), Optional.empty());
  }

  /** A copy with a safety note. */
  public Statement warning(Note of) {
    return new Statement(when, sentences, Optional.of(of));
  }

  /** The sentences with each name replaced by its value. */
  List<String> said(Values values) {
    return sentences.stream()
        .map(NAME::matcher)
        .map(names -> names.replaceAll(name -> Matcher.quoteReplacement(told(name, values))))
        .toList();
  }

  private static String told(MatchResult name, Values values) {
    String id = name.group(1);
    return switch (Objects.requireNonNullElse(name.group(2), "")) {
      case "typed" -> values.asTyped(id);
      case "u" -> values.uncertainty(id);
      default -> values.text(id);
    };
  }

  /** The names in the sentences. */
  Stream<String> names() {
    return sentences.stream()
        .flatMap(sentence -> NAME.matcher(sentence).results())
        .map(name -> name.group(1));
  }
}
