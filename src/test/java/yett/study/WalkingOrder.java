package yett.study;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.RuleBase;

/** In which order one comes past the checks of a gate, from its outside to its released leaf. */
final class WalkingOrder {
  private final Map<String, Integer> order = new HashMap<>();

  WalkingOrder(RuleBase base) {
    base.checks().values().forEach(c -> order.put(c.id(), place(base, c)));
  }

  /** The number of the place, counted as one walks. */
  int of(Check check) {
    return order.get(check.id());
  }

  /**
   * Its own place; what has none is made at the first place in the same state of the work, or at
   * the last one on the way to that state; in a state of its own, at the cabinet.
   */
  private static int place(RuleBase base, Check check) {
    List<Place> places = Place.all();
    if (check.place().isPresent()) {
      return places.indexOf(check.place().get());
    }
    Set<String> state = new LinkedHashSet<>(base.withOuter(check.needs()));
    state.removeIf(n -> base.setUps().containsKey(n) && base.setUps().get(n).isCondition());
    int last = 0;
    for (int i = 0; i < places.size(); i++) {
      Set<String> there = Set.copyOf(base.withOuter(places.get(i).needs()));
      if (there.equals(state)) {
        return i;
      }
      if (state.containsAll(there)) {
        last = i;
      }
    }
    boolean ownState = !state.isEmpty() && places.get(last).needs().isEmpty();
    return ownState ? cabinet(places) : last;
  }

  /** Where work goes on in a state that no place has: at the open cabinet. */
  private static int cabinet(List<Place> places) {
    return places.stream().map(Place::id).toList().indexOf("cabinet-dead");
  }
}
