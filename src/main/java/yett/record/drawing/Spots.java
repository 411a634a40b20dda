package yett.record.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Numbers the places of a drawing in the order in which they are first mentioned. */
public final class Spots {
  private final GateShape shape;
  private final Map<Spot, Integer> numbers = new LinkedHashMap<>();

  public Spots(GateShape shape) {
    this.shape = shape;
  }

  /**
   * The number of a place, which is assigned if it has none yet. Empty if this gate does not have
   * the place.
   */
  public Optional<Integer> number(Optional<Spot> spot) {
    return spot.filter(shape::has).map(s -> numbers.computeIfAbsent(s, n -> numbers.size() + 1));
  }

  public Map<Spot, Integer> numbers() {
    return Map.copyOf(numbers);
  }

  /** The meaning of the numbers, in one line. */
  public String legend() {
    StringBuilder words = new StringBuilder();
    numbers.forEach(
        (spot, number) ->
            words
                .append(words.isEmpty() ? "" : "; ")
                .append(number)
                .append(' ')
                .append(spot.word()));
    return words.toString();
  }
}
