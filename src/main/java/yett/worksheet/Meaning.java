package yett.worksheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * What results mean at the gate.
 *
 * @param sentences one or two, said of these numbers
 * @param notes safety notes that these numbers ask for
 */
public record Meaning(List<String> sentences, List<Note> notes) {
  public Meaning {
    sentences = List.copyOf(sentences);
    notes = List.copyOf(notes);
  }

  public static Meaning of(String... sentences) {
    return new Meaning(List.of(sentences), List.of());
  }

  /** With one more sentence. */
  public Meaning and(String sentence) {
    return new Meaning(Stream.concat(sentences.stream(), Stream.of(sentence)).toList(), notes);
  }

  /** With a safety note. */
  public Meaning with(Note note) {
    return new Meaning(sentences, Stream.concat(notes.stream(), Stream.of(note)).toList());
  }
}
