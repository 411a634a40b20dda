package yett.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds a set of cards that is enough for something while no part of it is. It searches in halves,
 * then in smaller parts (delta debugging).
 */
record LeastSet(Predicate<Set<String>> enough) {

  /** Such a set within one that is enough as a whole. */
  Set<String> of(Set<String> all) {
    List<String> guilty = new ArrayList<>(all);
    int parts = 2;
    while (guilty.size() > 1) {
      int size = (guilty.size() + parts - 1) / parts;
      Optional<List<String>> smaller = Optional.empty();
      for (int from = 0; from < guilty.size() && smaller.isEmpty(); from += size) {
        int to = Math.min(guilty.size(), from + size);
        List<String> part = guilty.subList(from, to);
        List<String> rest = new ArrayList<>(guilty);
        rest.removeAll(part);
        if (enough.test(new LinkedHashSet<>(part))) {
          smaller = Optional.of(List.copyOf(part));
        } else if (parts > 2 && enough.test(new LinkedHashSet<>(rest))) {
          smaller = Optional.of(rest);
        }
      }
      if (smaller.isPresent()) {
        guilty = new ArrayList<>(smaller.get());
        parts = 2;
      } else if (size == 1) {
        break;
      } else {
        parts = Math.min(guilty.size(), 2 * parts);
      }
    }
    return new LinkedHashSet<>(guilty);
  }
}
