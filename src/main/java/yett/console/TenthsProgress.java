package yett.console;

import java.io.PrintStream;

/**
 * Shows progress as a plain line at every tenth of the job, for terminals that cannot overwrite.
 */
final class TenthsProgress implements Progress {
  private final PrintStream err;
  private final String what;
  private final int total;
  private int done;

  TenthsProgress(PrintStream err, String what, int total) {
    this.err = err;
    this.what = what;
    this.total = total;
  }

  @Override
  public void step() {
    int before = tenth();
    done = Math.min(total, done + 1);
    if (tenth() > before) {
      err.println(Percentage.line(what, done, total));
      err.flush();
    }
  }

  private int tenth() {
    return Percentage.of(done, total) / 10;
  }

  @Override
  public void close() {
    // Each line is complete; nothing has to be cleaned up.
  }
}
