package yett.wording;

import yett.interview.Moment;
import yett.knowledge.Role;

/**
 * How far something speaks for a cause or against it: as a figure in decibans, or in words on a
 * call, where nobody asked for a unit of evidence.
 */
public enum EvidenceWords {
  FIGURES,
  WORDS;

  /** Ten times the odds. */
  private static final double CLEARLY = 10;

  /** Twice the odds. */
  private static final double PLAINLY = 3;

  public static EvidenceWords at(Moment moment) {
    return moment.state().role() == Role.CALLER ? WORDS : FIGURES;
  }

  /** What evidence is called, or its figure. */
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

  /** A figure in brackets behind what it belongs to; in words there is none. */
  public String behind(double decibans) {
    return this == FIGURES ? " (" + of(decibans) + ")" : "";
  }

  /** That the odds of a cause are multiplied before anything is asked. */
  public String odds(double factor) {
    return this == FIGURES
        ? "odds times " + factor
        : factor < 1 ? "less often here" : "more often here";
  }
}
