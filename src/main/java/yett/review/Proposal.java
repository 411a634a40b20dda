package yett.review;

import java.util.List;
import java.util.Locale;
import yett.calculation.SharePosterior;

/**
 * A chance, or a row of chances, that the cases speak against, and what to write instead.
 *
 * @param kind of what is to be changed
 * @param check id of the check or complaint; empty for a prior
 * @param cause id of the cause; empty for what shows without any
 * @param outcomes ids of the outcomes, as the posterior counts them
 * @param card what the card says now, a number for each outcome; for a prior and a complaint one
 * @param instead what to write, the same
 * @param posterior of what is shown, judgement and counts together
 */
public record Proposal(
    Kind kind,
    String check,
    String cause,
    List<String> outcomes,
    double[] card,
    double[] instead,
    SharePosterior posterior) {

  /** What is to be changed. */
  public enum Kind {
    PRIOR,
    ROW,
    OTHERWISE
  }

  /** By what a trainer names it: prior/chain-slack, chain-sag/chain-slack, chain-sag/otherwise. */
  public String name() {
    return switch (kind) {
      case PRIOR -> "prior/" + cause;
      case ROW -> check + "/" + cause;
      case OTHERWISE -> check + "/" + kind.name().toLowerCase(Locale.ROOT);
    };
  }
}
