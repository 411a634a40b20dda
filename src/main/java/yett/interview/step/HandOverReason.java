package yett.interview.step;

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

  /** One method for each kind of reason. */
  interface Visitor<R> {
    R wanted(Wanted reason);

    R barred(Barred reason);

    R stopped(Stopped reason);

    R nothingLeft(NothingLeft reason);

    R untold(Untold reason);

    R unproved(Unproved reason);

    R unset(Unset reason);
  }

  <R> R accept(Visitor<R> visitor);

  /** The person wants it and gave this reason in their own words. */
  record Wanted(String why) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.wanted(this);
    }
  }

  /** A set-up is in force that this person may not change. */
  record Barred(SetUp setUp) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.barred(this);
    }
  }

  /** A danger to people ended the work. */
  record Stopped(List<Stop> stops) implements HandOverReason {
    /** Whether somebody else investigates before anybody goes on. */
    public boolean inquiry() {
      return stops.stream().anyMatch(Stop::inquiry);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stopped(this);
    }
  }

  /**
   * No check or repair that this role may do is worth its cost, as far as it can be done here.
   *
   * @param reserved repairs for somebody better qualified, the most promising first
   * @param refused repairs that could not be done, the most promising first
   * @param alone likely repairs that do not make the gate run while those could not be done
   * @param standing dangers that stand, and that forbid more than is left
   */
  record NothingLeft(
      Role role,
      List<Reserved> reserved,
      List<Refused> refused,
      List<Repair> alone,
      List<Stop> standing)
      implements HandOverReason {
    public NothingLeft(Role role, List<Reserved> reserved) {
      this(role, reserved, List.of(), List.of(), List.of());
    }

    public NothingLeft(Role role) {
      this(role, List.of());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.nothingLeft(this);
    }
  }

  /** A caller could not answer any of the last questions. */
  record Untold() implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.untold(this);
    }
  }

  /**
   * A repair that could not be done.
   *
   * @param why as typed; may be empty
   */
  record Refused(Repair repair, String why) {}

  /**
   * A repair that a better qualified person may do.
   *
   * @param first what they have to read before it; then this person may do the repair
   */
  record Reserved(Repair repair, Optional<MainsPart> part, Optional<Check> first) {
    public Reserved(Repair repair, Optional<MainsPart> part) {
      this(repair, part, Optional.empty());
    }
  }

  /** The gate runs, and these proofs have still to be made. */
  record Unproved(List<Check> proofs) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unproved(this);
    }
  }

  /** The gate passed its proofs, but these settings that a repair made necessary are to be done. */
  record Unset(List<Repair> settings) implements HandOverReason {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unset(this);
    }
  }
}
