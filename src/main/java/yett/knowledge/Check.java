package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.quantity.Units;

/**
 * One thing to ask, look at, try or measure. Complaints and proofs are checks of their own kind.
 *
 * @param danger whether it asks about a danger; such checks always come first, because they may end
 *     the interview
 * @param inspected inspections that it belongs to
 */
public record Check(
    String id,
    Kind kind,
    Question question,
    Evidence evidence,
    Work work,
    String area,
    Map<String, List<String>> onlyIf,
    boolean danger,
    Inspected inspected,
    String source)
    implements SiteCard {

  /**
   * The question, how to make the check, and its outcomes.
   *
   * @param name a few words for tables; empty if the id is clear enough
   * @param lay wording for a lay person; empty if the trade's wording will do
   * @param how instructions; for a complaint, how to see that it has gone where a watched run does
   *     not show it; may be empty
   * @param outcomes from ordinary to most unusual; several causes combine by noisy-MAX in this
   *     order
   * @param several whether several of the outcomes after the first may be true at once
   * @param columns what two answers may be about; empty if there is only one
   */
  public record Question(
      String name,
      String ask,
      String lay,
      String how,
      Optional<Measures> measures,
      List<Outcome> outcomes,
      boolean several,
      Optional<Columns> columns) {

    /** A question with one answer. */
    public Question(
        String name,
        String ask,
        String lay,
        String how,
        Optional<Measures> measures,
        List<Outcome> outcomes) {
      this(name, ask, lay, how, measures, outcomes, false, Optional.empty());
    }

    Question in(Units units) {
      return new Question(
          name,
          units.in(ask),
          units.in(lay),
          units.in(how),
          measures.map(m -> m.in(units)),
          outcomes.stream().map(o -> o.in(units)).toList(),
          several,
          columns);
    }
  }

  /**
   * How strongly an answer speaks for a cause.
   *
   * @param likelihood by cause, the chance of each outcome if that cause alone is present
   * @param otherwise the chance of each outcome when none of those causes is present
   * @param reliability by role, how often a person reports the outcome correctly; missing means
   *     always
   * @param unmentioned for a complaint, the chance that it is present but not mentioned
   */
  public record Evidence(
      Map<String, double[]> likelihood,
      double[] otherwise,
      Map<Role, Double> reliability,
      Optional<Repeats> repeats,
      double unmentioned) {

    Evidence with(Map<String, double[]> rows) {
      return new Evidence(rows, otherwise, reliability, repeats, unmentioned);
    }
  }

  /**
   * What the check requires.
   *
   * @param who the least qualified person who may do it
   * @param minutes usual time without entering set-ups
   * @param needs set-ups
   * @param place for a look, where it is made; empty for a check made alone
   */
  public record Work(
      Role who, double minutes, List<String> needs, List<String> hazards, Optional<Place> place) {

    Work by(Role other) {
      return new Work(other, minutes, needs, hazards, place);
    }
  }

  /** What a check is for. */
  public enum Kind {
    CHECK,
    COMPLAINT,
    PROOF
  }

  /** One possible answer; a measured check's outcome carries its band. */
  public record Outcome(String id, String text, Optional<Band> band) {
    Outcome in(Units units) {
      return new Outcome(id, units.in(text), band);
    }
  }

  /**
   * Says that this check repeats another one to a degree: with chance {@code share} it shows the
   * same outcome again. Outcomes are matched by id.
   */
  public record Repeats(String check, double share) {}

  /** The outcome of a proof that lets the gate return to service. */
  public static final String PASS = "pass";

  /** The outcome of a proof that keeps the gate out of use. */
  public static final String FAIL = "fail";

  /** The outcome of a complaint that was made. */
  public static final String SAID = "said";

  /** The position of an outcome, or -1. */
  public int indexOf(String outcome) {
    for (int i = 0; i < outcomes().size(); i++) {
      if (outcomes().get(i).id().equals(outcome)) {
        return i;
      }
    }
    return -1;
  }

  /** A copy with other rows. */
  public Check withLikelihood(Map<String, double[]> rows) {
    return with(question, evidence.with(rows), work);
  }

  /** A copy for another least qualified person. */
  Check withWho(Role other) {
    return other == who() ? this : with(question, evidence, work.by(other));
  }

  /** A copy with texts and readings in these units. */
  Check in(Units units) {
    return with(question.in(units), evidence, work);
  }

  private Check with(Question asked, Evidence says, Work takes) {
    return new Check(id, kind, asked, says, takes, area, onlyIf, danger, inspected, source);
  }

  /** A few words for a table that say what the check is about. */
  public String name() {
    String words = question.name.isEmpty() ? id.replace('-', ' ') : question.name;
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  public String ask() {
    return question.ask;
  }

  public String lay() {
    return question.lay;
  }

  public String how() {
    return question.how;
  }

  public Optional<Measures> measures() {
    return question.measures;
  }

  public List<Outcome> outcomes() {
    return question.outcomes;
  }

  /** Whether several of the outcomes after the first may be true at once. */
  public boolean several() {
    return question.several;
  }

  /** What two answers may be about; empty if there is only one. */
  public Optional<Columns> columns() {
    return question.columns;
  }

  public Map<String, double[]> likelihood() {
    return evidence.likelihood;
  }

  public double[] otherwise() {
    return evidence.otherwise;
  }

  public Map<Role, Double> reliability() {
    return evidence.reliability;
  }

  public Optional<Repeats> repeats() {
    return evidence.repeats;
  }

  public double unmentioned() {
    return evidence.unmentioned;
  }

  public Role who() {
    return work.who;
  }

  public double minutes() {
    return work.minutes;
  }

  public List<String> needs() {
    return work.needs;
  }

  public List<String> hazards() {
    return work.hazards;
  }

  public Optional<Place> place() {
    return work.place;
  }

  /** The question in words that a lay person understands. */
  public String spoken() {
    return question.lay.isEmpty() ? question.ask : question.lay;
  }

  public boolean measured() {
    return question.measures.isPresent();
  }
}
