package yett.replay;

import java.util.Optional;
import java.util.function.Function;
import yett.interview.Answer;
import yett.interview.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Expectation;

/** Whoever answers in place of a person: the lines of a file, or a gate that is made up. */
public interface Respondent {

  /**
   * What is said.
   *
   * @param assumed whether nobody says it
   * @param why of an assumption, in words
   */
  record Said(Answer answer, boolean assumed, String why) {
    public static Said told(Answer answer) {
      return new Said(answer, false, "");
    }

    static Said assumed(Answer answer, String why) {
      return new Said(answer, true, why);
    }
  }

  /**
   * Answers a check.
   *
   * @param usual the usual range on this gate, where the rules give one
   * @param meaning the outcome that an answer would be taken to mean, if it can be weighed
   */
  Said answer(Check check, Optional<Expectation> usual, Function<Answer, Optional<String>> meaning);

  void repaired(Repair repair);

  /** How the gate runs when it is tried; empty if that is not known. */
  Optional<Event.Retested> retest();
}
