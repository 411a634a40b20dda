package yett.knowledge;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a person stands and looks at several things in one go: the table {@code shared/places.csv},
 * in the order in which one walks.
 *
 * @param name as a heading, without a full stop
 * @param needs set-ups that are in force there
 */
public record Place(String id, String name, List<String> needs) {
  private static final Map<String, Place> ALL = read();

  /** In walking order. */
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
