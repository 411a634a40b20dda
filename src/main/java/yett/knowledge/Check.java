package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.quantity.Units;

/**
 * One thing to ask, look at, try or measure. Complaints and proofs are checks of their own kind.
 *
 * @param danger asked first, always, because it may end the interview
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
   * What is asked, and what may come of it.
   *
   * @param name a few words for tables; empty if its id says as much
   * @param lay in words for a lay person; empty if the trade's will do
   * @param how it is done; may be empty
   * @param outcomes from ordinary to telling; several causes combine by noisy-MAX over this order
   */
  public record Question(
      String name,
      String ask,
      String lay,
      String how,
      Optional<Measures> measures,
      List<Outcome> outcomes) {

    Question in(Units units) {
      return new Question(
          name,
          units.in(ask),
          units.in(lay),
          units.in(how),
          measures.map(m -> m.in(units)),
          outcomes.stream().map(o -> o.in(units)).toList());
    }
  }

  /**
   * How strongly an answer speaks for a cause.
   *
   * @param likelihood for each cause that shows here, the chance of each outcome if it alone made
   *     it
   * @param otherwise the chance of each outcome when none of those causes is present
   * @param reliability how often a person of a role reports the outcome right; missing means always
   * @param unmentioned for a complaint, the chance that it is so and left unsaid
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
   * What it takes to answer.
   *
   * @param who the least qualified person who may do it
   * @param minutes usual time without entering set-ups
   * @param needs set-ups
   * @param place where it is a look among others; empty for what is done by itself
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

  /** This share of the check is another check over again; outcomes are matched by id. */
  public record Repeats(String check, double share) {}

  /** The outcome of a proof that lets the gate return to service. */
  public static final String PASS = "pass";

  /** The outcome of a proof that does not. */
  public static final String FAIL = "fail";

  /** A complaint that was picked. */
  public static final String SAID = "said";

  /** Position of an outcome, or -1. */
  public int indexOf(String outcome) {
    for (int i = 0; i < outcomes().size(); i++) {
      if (outcomes().get(i).id().equals(outcome)) {
        return i;
      }
    }
    return -1;
  }

  /** The same check with other rows. */
  public Check withLikelihood(Map<String, double[]> rows) {
    return with(question, evidence.with(rows), work);
  }

  /** The same check for another person. */
  Check withWho(Role other) {
    return other == who() ? this : with(question, evidence, work.by(other));
  }

  /** The same check for somebody who works in these units. */
  Check in(Units units) {
    return with(question.in(units), evidence, work);
  }

  private Check with(Question asked, Evidence says, Work takes) {
    return new Check(id, kind, asked, says, takes, area, onlyIf, danger, inspected, source);
  }

  /** What it is about, in a few words for a table. */
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
