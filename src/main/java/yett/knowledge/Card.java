package yett.knowledge;

/** One entry of the rule base. */
public sealed interface Card
    permits Cause, Check, History, Repair, SetUp, Caution, Stop, SiteQuestion, Planning, Pressing {
  /** Unique among cards of its kind; leads to it everywhere. */
  String id();
}
