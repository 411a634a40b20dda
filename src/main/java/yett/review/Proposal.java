package yett.review;

import java.util.List;
import java.util.Locale;
import yett.calculation.SharePosterior;

/**
 * A chance, or a row of chances, that the cases contradict, with its replacement.
 *
 * @param kind of chance
 * @param check id of the check or complaint; empty for a prior
 * @param cause id of the cause; empty for the row without any cause
 * @param outcomes ids of the outcomes, in the order of the posterior
 * @param card what the card says now: a number for each outcome; one number for a prior or a
 *     complaint
 * @param instead what to write, in the same form
 * @param posterior of the chances as they show in cases, from judgement and counts together
 */
public record Proposal(
    Kind kind,
    String check,
    String cause,
    List<String> outcomes,
    double[] card,
    double[] instead,
    SharePosterior posterior) {

  /** The kind of chance to be changed. */
  public enum Kind {
    PRIOR,
    ROW,
    OTHERWISE
  }

  /**
   * The name that a trainer uses: prior/chain-slack, chain-sag/chain-slack, chain-sag/otherwise.
   */
  public String name() {
    return switch (kind) {
      case PRIOR -> "prior/" + cause;
      case ROW -> check + "/" + cause;
      case OTHERWISE -> check + "/" + kind.name().toLowerCase(Locale.ROOT);
    };
  }
}
