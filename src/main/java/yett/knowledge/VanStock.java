package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The parts on a van, from {@code van.yaml} in the settings of this computer, in the form of {@code
 * shared/van.schema.json}.
 *
 * @param items in the order of the file
 */
public record VanStock(List<Item> items) {
  private static final int MOST = 999;

  public VanStock {
    items = List.copyOf(items);
  }

  /**
   * A part on the van.
   *
   * @param part by the trade description that the cards use
   * @param size empty if it comes in one size, or was not written down
   * @param count at least 1
   */
  public record Item(String part, Optional<String> size, int count) {}

  /**
   * Reads the list.
   *
   * @param file its name, for messages
   * @throws KnowledgeException with every error
   */
  public static VanStock read(String file, String text) {
    List<Problem> problems = new ArrayList<>();
    List<Item> items = new ArrayList<>();
    for (CardFile.Document document : CardFile.read(file, text, problems)) {
      Fields fields = new Fields(document, "", document.root(), problems);
      for (Fields item : fields.innerList("parts")) {
        items.add(
            new Item(
                item.text("part"),
                Optional.of(item.text("size", "")).filter(s -> !s.isBlank()),
                (int) item.number("count", 1, 1, MOST)));
        item.finish();
      }
      fields.finish();
    }
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems, "the list of the van");
    }
    return new VanStock(items);
  }

  /** The parts that no card of the rule base names, so that no sheet will refer to them. */
  public List<String> unknownTo(RuleBase base) {
    Set<String> known = base.parts().keySet();
    return items.stream().map(Item::part).filter(p -> !known.contains(p)).distinct().toList();
  }

  /**
   * A phrase that says whether a part is on the van.
   *
   * @param size what is needed, if it is known
   */
  public String words(String part, Optional<String> size) {
    List<Item> there = items.stream().filter(i -> i.part().equals(part)).toList();
    List<Item> fitting = there.stream().filter(i -> fits(i, size)).toList();
    if (!fitting.isEmpty() && (size.isPresent() || !isSized(fitting))) {
      int count = fitting.stream().mapToInt(Item::count).sum();
      return "on the van" + (count > 1 ? " (" + count + ")" : "");
    }
    return there.isEmpty()
        ? "to fetch"
        : (size.isEmpty() ? "on the van in " : "to fetch; on the van only in ") + sizes(there);
  }

  private static boolean fits(Item item, Optional<String> size) {
    return size.isEmpty() || item.size().isEmpty() || item.size().equals(size);
  }

  private static boolean isSized(List<Item> items) {
    return items.stream().anyMatch(i -> i.size().isPresent());
  }

  private static String sizes(List<Item> items) {
    return String.join(
        ", ", items.stream().flatMap(i -> i.size().stream()).distinct().sorted().toList());
  }
}
