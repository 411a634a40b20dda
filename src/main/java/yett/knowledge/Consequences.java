package yett.knowledge;

import java.util.List;

/** Problems that are there only because another card could not be read at all. */
final class Consequences {
  private Consequences() {}

  /**
   * Takes out of the problems what will be gone once the cards that cannot be parsed are mended.
   *
   * @param unreadable kind and id of such cards
   */
  static void remove(List<Problem> problems, List<String> unreadable) {
    for (String card : unreadable) {
      String kind = card.substring(0, card.indexOf(' '));
      String id = "\"" + card.substring(card.indexOf(' ') + 1) + "\"";
      problems.removeIf(
          p ->
              switch (p.kind()) {
                case "unknown-name", "missing-cause" -> p.message().contains(id);
                case "no-repair" -> kind.equals("repair");
                case "no-caution" -> kind.equals("caution");
                default -> false;
              });
    }
  }
}
