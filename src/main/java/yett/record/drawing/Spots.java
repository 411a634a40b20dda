package yett.record.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The places of a drawing that have a number, in the order in which they were first spoken of. */
public final class Spots {
  private final GateShape shape;
  private final Map<Spot, Integer> numbers = new LinkedHashMap<>();

  public Spots(GateShape shape) {
    this.shape = shape;
  }

  /** The number of a place; it gets one if it has none yet. Empty if it is not at this gate. */
  public Optional<Integer> number(Optional<Spot> spot) {
    return spot.filter(shape::has).map(s -> numbers.computeIfAbsent(s, n -> numbers.size() + 1));
  }

  public Map<Spot, Integer> numbers() {
    return Map.copyOf(numbers);
  }

  /** What the numbers mean, in a line. */
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
