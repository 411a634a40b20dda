package yett.knowledge;

/** One entry of the rule base. */
public sealed interface Card permits SiteCard, Effect, SetUp, Caution, Stop, Planning, Pressing {
  /** Unique among cards of its kind; other cards, rules and cases refer to the card by it. */
  String id();
}
