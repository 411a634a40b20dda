package yett.rules;

import java.util.List;
import yett.knowledge.Role;

/** What rules can match: the facts of a case. Cards are facts as well. */
public sealed interface Fact {

  /** An answer to a site question: a choice's id, or a value in the canonical unit. */
  record Site(String question, String choice, double value) implements Fact {
    public static Site chosen(String question, String choice) {
      return new Site(question, choice, Double.NaN);
    }

    public static Site measured(String question, double value) {
      return new Site(question, "", value);
    }

    /** Hashes one component only: the generated hashCode of a record is slow at every start. */
    @Override
    public int hashCode() {
      return question.hashCode();
    }
  }

  /**
   * A reading of a check taken when the gate was inspected and in order, in the canonical unit.
   *
   * @param day of the reading, such as 2025-03-02
   */
  record Baseline(String check, double value, String day) implements Fact {}

  /**
   * The change of a reading since its baseline, in the canonical unit a year; only where there are
   * enough readings.
   *
   * @param low end of the 95 % interval of the slope; if it is above 0, the reading certainly rises
   * @param high end of that interval; if it is below 0, the reading certainly falls
   * @param how in words, such as: rises by 0.4 A a year (0.2 A to 0.6 A), 4 readings since
   *     2023-03-02
   */
  record Trend(String check, double slope, double low, double high, String how) implements Fact {}

  /**
   * Who answers.
   *
   * @param child whether a child is on the telephone, and no grown-up
   */
  record Person(Role role, boolean child) implements Fact {
    public Person(Role role) {
      this(role, false);
    }
  }

  /** The complaints have been taken: those not made now count as not made. */
  record ComplaintsTaken() implements Fact {}

  /** A complaint that was made. */
  record Complained(String complaint) implements Fact {}

  /** A recent event from the history cards. */
  record Happened(String history) implements Fact {}

  /**
   * An answer to a check. A measured one has a value and an empty outcome. Of several outcomes that
   * are true at once, each is a fact of its own with the same event.
   *
   * @param event number of the event in the case
   * @param epoch number of repairs done before it
   * @param also the other outcomes of the same answer
   */
  record Given(
      String check,
      String outcome,
      double value,
      boolean measured,
      Role by,
      long event,
      int epoch,
      List<String> also)
      implements Fact {
    /** An answer of one outcome, or a reading. */
    public Given(
        String check,
        String outcome,
        double value,
        boolean measured,
        Role by,
        long event,
        int epoch) {
      this(check, outcome, value, measured, by, event, epoch, List.of());
    }
  }

  /** A check, or a danger, about which somebody could not tell. */
  record Untold(String check, long event) implements Fact {}

  /** A repair that was done; {@code epoch} counts the repairs from 1. */
  record Done(String repair, int epoch) implements Fact {}

  /** The gate was tried after {@code epoch} repairs: same fault as reported. */
  record StillFails(int epoch) implements Fact {}
}
