package yett.knowledge;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/** A card that does not belong to every gate. */
public sealed interface SiteCard extends Card permits Cause, Check, Repair, SiteQuestion {

  /** Site question to the answers under which the card applies; empty means always. */
  Map<String, List<String>> onlyIf();

  /** Whether no gate has both this card and the other, by what each says of it. */
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
