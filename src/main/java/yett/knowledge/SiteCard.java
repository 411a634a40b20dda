package yett.knowledge;

import java.util.List;
import java.util.Map;

/** A card that does not belong to every gate. */
public sealed interface SiteCard extends Card permits Cause, Check, Repair, SiteQuestion {

  /** Site question to the answers under which the card applies; empty means always. */
  Map<String, List<String>> onlyIf();
}
