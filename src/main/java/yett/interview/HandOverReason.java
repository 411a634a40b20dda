package yett.interview;

import java.util.List;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.MainsPart;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;

/** Why a case is handed over. */
public sealed interface HandOverReason {

  /** What each kind of reason comes to. */
  interface Visitor<R> {
    R wanted(Wanted reason);

    R barred(Barred reason);

    R stopped(Stopped reason);

    R nothingLeft(NothingLeft reason);

    R untold(Untold reason);

    R unproved(Unproved reason);
  }

  <R> R accept(Visitor<R> visitor);

  /** The person wants it, and said why in their own words. */
  record Wanted(String why) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.wanted(this);
    }
  }

  /** The work stands in a set-up that this person may not change. */
  record Barred(SetUp setUp) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.barred(this);
    }
  }

  /** A danger to people ended it. */
  record Stopped(List<Stop> stops) implements HandOverReason {
    /** Whether somebody else looks into what happened before anybody goes on. */
    public boolean inquiry() {
      return stops.stream().anyMatch(Stop::inquiry);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stopped(this);
    }
  }

  /**
   * No check or repair that is open to somebody of this role is worth its cost.
   *
   * @param reserved what would be for somebody better qualified, the most promising first
   */
  record NothingLeft(Role role, List<Reserved> reserved) implements HandOverReason {
    public NothingLeft(Role role) {
      this(role, List.of());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.nothingLeft(this);
    }
  }

  /** A caller could tell nothing of what was asked. */
  record Untold() implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.untold(this);
    }
  }

  /** A repair that a better qualified person may do. */
  record Reserved(Repair repair, Optional<MainsPart> part) {}

  /** The gate runs, and these proofs are still to be made. */
  record Unproved(List<Check> proofs) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unproved(this);
    }
  }
}
