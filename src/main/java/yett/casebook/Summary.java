package yett.casebook;

/**
 * What a list of cases shows of one case. It is written together with the events that changed it.
 *
 * @param title one line that describes the case to a reader of the list
 * @param cause id of the most believed cause; empty if nothing was said yet
 */
public record Summary(CaseStatus state, String title, String cause) {
  public Summary {
    Storable.text("cause", cause);
    Storable.text("title", title);
  }

  /** The summary of a case without a cause. */
  public Summary(CaseStatus state, String title) {
    this(state, title, "");
  }
}
