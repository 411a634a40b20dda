package yett.worksheet;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.quantity.Unit;

/** What was given for the inputs of a calculation, each in the unit that a formula wants. */
public final class Entries {
  private final Map<String, Given> givens = new LinkedHashMap<>();

  Entries(Collection<Given> givens) {
    givens.forEach(given -> this.givens.put(given.input().id(), given));
  }

  public List<Given> all() {
    return List.copyOf(givens.values());
  }

  /** Whether an input that may be left out was given. */
  public boolean has(String id) {
    return givens.containsKey(id);
  }

  /** The value of an input in a unit. */
  public double in(String id, Unit unit) {
    Given given = given(id);
    if (unit.quantity() != given.input().quantity()) {
      throw new IllegalStateException(id + " is no " + unit.quantity().label());
    }
    return unit.fromCanonical(given.value());
  }

  /** A ratio as a fraction: 0.03 for 3 %. */
  public double fraction(String id) {
    return in(id, Unit.PERCENT) / 100;
  }

  public int whole(String id) {
    return (int) given(id).value();
  }

  public Choice choice(String id) {
    return given(id).choice();
  }

  /** As the person reads it. */
  public String shown(String id) {
    return given(id).shown();
  }

  private Given given(String id) {
    return Optional.ofNullable(givens.get(id))
        .orElseThrow(() -> new IllegalStateException("no input " + id));
  }

  /** The same with other values for some inputs, in their order, in canonical units. */
  Entries moved(List<Given> some, double[] values) {
    Entries moved = new Entries(givens.values());
    for (int i = 0; i < some.size(); i++) {
      moved.givens.put(some.get(i).input().id(), some.get(i).moved(values[i]));
    }
    return moved;
  }
}
