package yett.console;

/**
 * The page to write on.
 *
 * @param width columns a line may fill; brought into 40 to 120, as longer lines are hard to follow
 *     and shorter ones leave no room for a reading beside its name
 * @param colour whether emphasis and signal words may be coloured
 * @param unicode whether characters beyond ASCII can be shown
 */
public record Layout(int width, boolean colour, boolean unicode) {
  static final int NARROWEST = 40;
  static final int WIDEST = 120;
  static final int USUAL = 80;
  static final int USUAL_ROWS = 24;

  public Layout {
    width = Math.max(NARROWEST, Math.min(WIDEST, width));
  }
}
