package yett.replay;

import java.util.Optional;
import java.util.function.Function;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Expectation;

/** Answers in place of a person: a case file, or a simulated gate. */
public interface Respondent {

  /**
   * An answer.
   *
   * @param assumed whether it is an assumption, because the source has no answer
   * @param why reason for the assumption, in words
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
   * @param meaning gives the outcome that an answer would be taken to mean; empty if it would not
   *     be used as evidence
   */
  Said answer(Check check, Optional<Expectation> usual, Function<Answer, Optional<String>> meaning);

  void repaired(Repair repair);

  /** The result of the next retest; empty if it is not known. */
  Optional<Event.Retested> retest();
}
