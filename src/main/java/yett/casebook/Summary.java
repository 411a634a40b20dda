package yett.casebook;

/**
 * What a list of cases shows of one case; written together with the events that changed it.
 *
 * @param title one line, as the casebook's reader would tell the case
 * @param cause id of the cause believed most; empty if nothing was told yet
 */
public record Summary(CaseStatus state, String title, String cause) {
  public Summary {
    Storable.text("cause", cause);
    Storable.text("title", title);
  }

  /** Of a case without a cause. */
  public Summary(CaseStatus state, String title) {
    this(state, title, "");
  }
}
