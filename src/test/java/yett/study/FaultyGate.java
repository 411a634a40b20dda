package yett.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Expectation;

/** A gate with something wrong: it answers checks, can be repaired, and runs or does not. */
public interface FaultyGate {

  /** Answers to site questions that differ from the usual ones. */
  Map<String, String> site();

  /** What was read of it before, if that is known. */
  default List<Event.Earlier> earlier() {
    return List.of();
  }

  /** Ids of checks that are read before anything is looked for, and cost nothing. */
  default List<String> readForNothing() {
    return List.of();
  }

  /** Ids of the complaints that its users make. */
  List<String> complaints();

  /** What is wrong at the call-out, in the words of the rule base. */
  Set<String> truth();

  /** What of it is still wrong. */
  Set<String> remaining();

  /**
   * What somebody finds who makes a check now.
   *
   * @param usual what the rules take to be usual on this gate, if they say
   */
  Answer answer(Check check, Optional<Expectation> usual);

  void repair(Repair repair);

  /** Whether the gate runs as it should when it is tried. */
  boolean runs();

  /** Whether a gate that did not run does all of what was reported. */
  boolean sameTrouble();
}
