package yett.console;

import java.util.List;
import java.util.stream.Stream;

/**
 * Words to show, some of them emphasised. A no-break space between a number and its unit keeps them
 * on one line. Any other run of spaces and line ends counts as one space.
 */
public record Text(List<Span> spans) {

  /**
   * How words are emphasised. Without colour all look alike, so emphasis must never be the only
   * sign of a meaning.
   */
  public enum Emphasis {
    PLAIN,
    STRONG,
    DIM
  }

  /** Words with the same emphasis. */
  public record Span(String words, Emphasis emphasis) {}

  public Text {
    spans = List.copyOf(spans);
  }

  public static Text of(String words) {
    return one(words, Emphasis.PLAIN);
  }

  public static Text strong(String words) {
    return one(words, Emphasis.STRONG);
  }

  public static Text dim(String words) {
    return one(words, Emphasis.DIM);
  }

  /** This text followed by more; include a space if one is wanted. */
  public Text and(Text more) {
    return new Text(Stream.concat(spans.stream(), more.spans.stream()).toList());
  }

  public Text and(String more) {
    return and(of(more));
  }

  private static Text one(String words, Emphasis emphasis) {
    return new Text(List.of(new Span(words, emphasis)));
  }
}
