package yett.console;

/**
 * The size and abilities of a screen.
 *
 * @param width columns of a line; brought into 40 to 120, because longer lines are hard to follow
 *     and shorter ones leave no room for a reading next to its name
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
