package yett.wording;

import java.util.List;
import java.util.Optional;
import yett.interview.step.HandOverReason;
import yett.knowledge.MainsPart;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * Says who may do a piece of work, and why nobody less qualified, without a capital and a full
 * stop.
 */
public final class WhoMay {
  private WhoMay() {}

  /** For example: for an electrician, because it is work on mains terminals. */
  public static String words(RuleBase base, String card, Role who, List<String> hazards) {
    return words(who, Optional.ofNullable(base.mainsParts().get(card)), hazards);
  }

  static String words(Role who, Optional<MainsPart> part, List<String> hazards) {
    String whom = "for " + Wording.aPerson(who);
    if (part.isPresent()) {
      return whom + ", because it is work on " + part.get().says() + "; the firm may name others";
    }
    return hazards.contains("mains") || hazards.contains("live-mains")
        ? whom + ", because it is work at the mains"
        : whom;
  }

  /** The same for a repair, with its name; or who reads what has to be known before it. */
  static String words(HandOverReason.Reserved reserved) {
    Repair repair = reserved.repair();
    String name = "\"" + repair.name() + "\"";
    return reserved
        .first()
        .map(c -> name + " waits until " + Wording.aPerson(c.who()) + " has read: " + c.ask())
        .orElseGet(() -> name + " is " + words(repair.who(), reserved.part(), repair.hazards()));
  }
}
