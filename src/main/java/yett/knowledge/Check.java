package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.quantity.Units;

/**
 * One thing to ask, look at, try or measure. Complaints and proofs are checks of their own kind.
 *
 * @param outcomes from ordinary to telling; several causes combine by noisy-MAX over this order
 * @param likelihood for each cause that shows here, the chance of each outcome if it alone made it
 * @param otherwise the chance of each outcome when none of those causes is present
 * @param reliability how often a person of a role reports the outcome right; missing means always
 * @param who the least qualified person who may do it
 * @param minutes usual time without entering set-ups
 * @param danger asked first, always, because it may end the interview
 * @param unmentioned for a complaint, the chance that it is so and left unsaid
 * @param place where it is a look among others; empty for what is done by itself
 * @param inspected inspections that it belongs to
 */
public record Check(
    String id,
    Kind kind,
    String ask,
    String lay,
    String how,
    String area,
    Optional<Measures> measures,
    List<Outcome> outcomes,
    Map<String, double[]> likelihood,
    double[] otherwise,
    Map<Role, Double> reliability,
    Optional<Repeats> repeats,
    Role who,
    double minutes,
    List<String> needs,
    List<String> hazards,
    Map<String, List<String>> onlyIf,
    boolean danger,
    double unmentioned,
    Optional<Place> place,
    Inspected inspected,
    String source)
    implements SiteCard {

  /** What a check is for. */
  public enum Kind {
    CHECK,
    COMPLAINT,
    PROOF
  }

  /** One possible answer; a measured check's outcome carries its band. */
  public record Outcome(String id, String text, Optional<Band> band) {}

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
    for (int i = 0; i < outcomes.size(); i++) {
      if (outcomes.get(i).id().equals(outcome)) {
        return i;
      }
    }
    return -1;
  }

  /** The same check with other rows. */
  Check withLikelihood(Map<String, double[]> rows) {
    return with(rows, who, measures);
  }

  /** The same check for another person. */
  Check withWho(Role other) {
    return other == who ? this : with(likelihood, other, measures);
  }

  /** The same check for somebody who works in these units. */
  Check in(Units units) {
    return measures.isEmpty() ? this : with(likelihood, who, measures.map(m -> m.in(units)));
  }

  private Check with(Map<String, double[]> rows, Role other, Optional<Measures> read) {
    return new Check(
        id,
        kind,
        ask,
        lay,
        how,
        area,
        read,
        outcomes,
        rows,
        otherwise,
        reliability,
        repeats,
        other,
        minutes,
        needs,
        hazards,
        onlyIf,
        danger,
        unmentioned,
        place,
        inspected,
        source);
  }

  /** The question in words that a lay person understands. */
  public String spoken() {
    return lay.isEmpty() ? ask : lay;
  }

  public boolean measured() {
    return measures.isPresent();
  }
}
