package yett.console;

/** A share of a job, rounded down so that 100 % means finished. */
final class Percentage {
  private Percentage() {}

  static int of(int done, int total) {
    return total == 0 ? 100 : (int) (100L * done / total);
  }

  static String line(String what, int done, int total) {
    return "%s: %d %% (%d of %d)".formatted(what, of(done, total), done, total);
  }
}
