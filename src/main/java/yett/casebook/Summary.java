package yett.casebook;

/**
 * What a list of cases shows of one case; written together with the events that changed it.
 *
 * @param title one line, as the casebook's reader would tell the case
 */
public record Summary(CaseState state, String title) {
  public Summary {
    Storable.text("title", title);
  }
}
