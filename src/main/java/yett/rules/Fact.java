package yett.rules;

import yett.knowledge.Role;

/** What the rules are told. Cards are facts as well. */
public sealed interface Fact {

  /** An answer to a site question: a choice's id, or a value in the canonical unit. */
  record Site(String question, String choice, double value) implements Fact {
    public static Site chosen(String question, String choice) {
      return new Site(question, choice, Double.NaN);
    }

    public static Site measured(String question, double value) {
      return new Site(question, "", value);
    }

    /** As good as one of all parts, which Java would put together at every start. */
    @Override
    public int hashCode() {
      return question.hashCode();
    }
  }

  /**
   * What a check read when the gate was inspected and in order, in the canonical unit.
   *
   * @param day on which, such as 2025-03-02
   */
  record Baseline(String check, double value, String day) implements Fact {}

  /**
   * How a reading moved since its baseline, in the canonical unit a year; told only where there are
   * enough readings.
   *
   * @param low end of the interval of 95 % of the slope; the reading surely rises if it is above 0
   * @param high end of it; the reading surely falls if it is below 0
   * @param how in words, such as: rises by 0.4 A a year (0.2 A to 0.6 A), 4 readings since
   *     2023-03-02
   */
  record Trend(String check, double slope, double low, double high, String how) implements Fact {}

  /** Who answers. */
  record Person(Role role) implements Fact {}

  /** The complaints were taken: those not said can now count as unsaid. */
  record ComplaintsTaken() implements Fact {}

  /** A complaint that was picked. */
  record Complained(String complaint) implements Fact {}

  /** Something that happened lately. */
  record Happened(String history) implements Fact {}

  /**
   * An answer to a check. A measured one has a value and an empty outcome.
   *
   * @param event number of the event in the case
   * @param epoch how many repairs had been done before it
   */
  record Given(
      String check, String outcome, double value, boolean measured, Role by, long event, int epoch)
      implements Fact {}

  /** A danger of which somebody could say neither yes nor no. */
  record Untold(String check, long event) implements Fact {}

  /** A repair that was done as number {@code epoch}, counted from 1. */
  record Done(String repair, int epoch) implements Fact {}
}
