package yett.worksheet;

import java.util.List;

/**
 * The meaning of results at the gate.
 *
 * @param sentences one or two, about these numbers
 * @param notes safety notes that these numbers call for
 */
public record Meaning(List<String> sentences, List<Note> notes) {
  public Meaning {
    sentences = List.copyOf(sentences);
    notes = List.copyOf(notes);
  }
}
