package yett.worksheet;

import java.util.List;

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
}
