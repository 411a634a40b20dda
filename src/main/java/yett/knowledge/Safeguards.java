package yett.knowledge;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What keeps people from harm in a rule base, so that two can be held against each other.
 *
 * @param whole cards and rules that do nothing else, as {@code stop person-trapped} and {@code rule
 *     wires are bare}, with what they say
 * @param partly by card, what it needs, warns of and has to prove, how urgent it is and who may do
 *     it
 */
public record Safeguards(SortedMap<String, String> whole, SortedMap<String, String> partly) {

  /** Cards and rules that another rule base has and this one has not, or has otherwise. */
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
