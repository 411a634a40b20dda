package yett.interview.course;

import yett.interview.search.Adviser;

/** Hands the seam by which a test chooses the plan to tests and studies in other packages. */
public final class Advised {
  private Advised() {}

  /** An interview in which the adviser chooses among what may be done. */
  public static Interview interview(Expertise expertise, Adviser adviser) {
    return new Interview(expertise, adviser);
  }
}
