package yett.knowledge;

import java.util.List;

/** Removes problems that exist only because another card could not be parsed. */
final class Consequences {
  private Consequences() {}

  /**
   * Removes the problems that will disappear once the cards that cannot be parsed are corrected.
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
