package yett.wording;

import yett.interview.moment.Moment;
import yett.knowledge.Role;

/**
 * Says how strongly something speaks for or against a cause: with a figure in decibans, or on a
 * call in words, because a caller does not know the unit.
 */
public enum EvidenceWords {
  FIGURES,
  WORDS;

  /** In decibans; ten times the odds. */
  private static final double CLEARLY = 10;

  /** In decibans; twice the odds. */
  private static final double PLAINLY = 3;

  public static EvidenceWords at(Moment moment) {
    return moment.state().role() == Role.CALLER ? WORDS : FIGURES;
  }

  /** The evidence as a figure, or in words. */
  public String of(double decibans) {
    if (this == FIGURES) {
      return Figures.decibans(decibans);
    }
    String side = decibans < 0 ? "against it" : "for it";
    double size = Math.abs(decibans);
    return size >= CLEARLY
        ? "clearly " + side
        : size >= PLAINLY ? side : Double.isNaN(size) ? "off the scale" : "slightly " + side;
  }

  /** The figure in brackets, to be put after what it belongs to; in words nothing. */
  public String behind(double decibans) {
    return this == FIGURES ? " (" + of(decibans) + ")" : "";
  }

  /** Says that the odds of a cause are multiplied by a factor before anything is asked. */
  public String odds(double factor) {
    return this == FIGURES
        ? "odds times " + factor
        : factor < 1 ? "less often here" : "more often here";
  }
}
