package yett.knowledge;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The protections of people in a rule base, for comparison with another.
 *
 * @param whole cards and rules that serve only protection, as {@code stop person-trapped} and
 *     {@code rule wires are bare}, with their text
 * @param partly by card: what it needs, warns of and has to prove, how urgent it is and who may do
 *     it
 */
public record Safeguards(SortedMap<String, String> whole, SortedMap<String, String> partly) {

  /** Cards and rules of the other rule base that are missing or different in this one. */
  public SortedSet<String> lacks(Safeguards other) {
    SortedSet<String> lacking = new TreeSet<>();
    other.whole.forEach(
        (name, says) -> {
          if (!says.equals(whole.get(name))) {
            lacking.add(name);
          }
        });
    other.partly.forEach(
        (card, kept) -> {
          if (!kept.equals(partly.getOrDefault(card, kept))) {
            lacking.add(card);
          }
        });
    return lacking;
  }
}
