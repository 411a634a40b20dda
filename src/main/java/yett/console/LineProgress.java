package yett.console;

import java.io.PrintStream;

/**
 * Shows progress in one line that overwrites itself. It uses no escape codes, so that any terminal
 * can show it.
 */
final class LineProgress implements Progress {
  private final PrintStream err;
  private final String what;
  private final int total;
  private final int width;
  private int done;
  private int shownColumns;
  private String shown = "";

  LineProgress(PrintStream err, String what, int total, int width) {
    this.err = err;
    this.what = what;
    this.total = total;
    this.width = width;
    draw();
  }

  @Override
  public void step() {
    done = Math.min(total, done + 1);
    draw();
  }

  private void draw() {
    String line = Percentage.line(what, done, total);
    // The last column stays free, because some terminals begin a new line when it is written.
    if (line.equals(shown) || Wrapping.columns(line) >= width) {
      return;
    }
    int columns = Wrapping.columns(line);
    err.print("\r" + line + " ".repeat(Math.max(0, shownColumns - columns)));
    err.flush();
    shown = line;
    shownColumns = columns;
  }

  @Override
  public void close() {
    err.print("\r" + " ".repeat(shownColumns) + "\r");
    err.flush();
    shownColumns = 0;
  }
}
