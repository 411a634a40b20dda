package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * Something wrong that can be put right.
 *
 * @param prior chance that it is present at a call-out, 0 to 1
 * @param consequences causes that this one makes present, each with its chance (noisy-OR)
 * @param leadsTo effects that it makes present, each with its chance (noisy-OR)
 * @param retestFails chance that the gate fails its retest while this cause remains
 * @param onlyIf site question to the answers under which the cause can exist; empty means always
 */
public record Cause(
    String id,
    String name,
    String area,
    double prior,
    Map<String, Double> consequences,
    Map<String, Double> leadsTo,
    double retestFails,
    Map<String, List<String>> onlyIf,
    String arises,
    String prevent,
    String source)
    implements SiteCard {

  /** Nothing is broken: a setting, a use, an obstruction or expected behaviour. */
  public static final String NOTHING_WRONG = "nothing-wrong";

  /** A switch, a timer or somebody's order keeps the gate open or shut; nothing is broken. */
  public static final String HELD_ON_PURPOSE = "held-open-on-purpose";

  /** Any cause that the rule base does not know, so that the tool can say so. */
  public static final String NOT_IN_RULE_BASE = "not-in-rule-base";
}
