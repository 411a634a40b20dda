package yett.knowledge;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A position where a person makes several looks together: a row of the table {@code
 * shared/places.csv}, which is in walking order.
 *
 * @param name as a heading, without a full stop
 * @param needs set-ups that are in force there
 */
public record Place(String id, String name, List<String> needs) {
  private static final Map<String, Place> ALL = read();

  /** All places in walking order. */
  public static List<Place> all() {
    return List.copyOf(ALL.values());
  }

  static List<String> ids() {
    return List.copyOf(ALL.keySet());
  }

  /** The place of this id; empty if there is none. */
  public static Optional<Place> named(String id) {
    return Optional.ofNullable(ALL.get(id));
  }

  private static Map<String, Place> read() {
    Map<String, Place> all = new LinkedHashMap<>();
    for (Map<String, String> row : SharedTable.read("places.csv")) {
      List<String> needs =
          Arrays.stream(row.get("needs").split(" ")).filter(n -> !n.isBlank()).toList();
      all.put(row.get("place"), new Place(row.get("place"), row.get("name"), needs));
    }
    return all;
  }
}
