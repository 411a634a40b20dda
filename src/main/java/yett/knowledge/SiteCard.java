package yett.knowledge;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/** A card that applies only to some gates. */
public sealed interface SiteCard extends Card permits Cause, Check, History, Repair, SiteQuestion {

  /** Site question to the answers under which the card applies; empty means always. */
  Map<String, List<String>> onlyIf();

  /**
   * Whether the conditions of this card and the other exclude each other, so that no gate has both.
   */
  default boolean neverWith(SiteCard other) {
    for (Map.Entry<String, List<String>> mine : onlyIf().entrySet()) {
      List<String> others = other.onlyIf().get(mine.getKey());
      if (others != null && Collections.disjoint(mine.getValue(), others)) {
        return true;
      }
    }
    return false;
  }
}
