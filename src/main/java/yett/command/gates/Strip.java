package yett.command.gates;

/**
 * Draws a reading on a line that goes from the least to the greatest reading, with the usual range
 * in brackets: {@code ...[==*===].....}. Plain characters, so that it looks the same in a pipe.
 *
 * @param low lower end of the usual range; minus infinity if it has none
 * @param high upper end; infinity if it has none. Both are NaN if there is no usual range
 */
record Strip(double from, double to, double low, double high) {

  String draw(double value, int columns) {
    StringBuilder line = new StringBuilder(".".repeat(columns));
    int first = column(Math.max(low, from), columns);
    int last = column(Math.min(high, to), columns);
    for (int i = first; !Double.isNaN(low + high) && i <= last; i++) {
      line.setCharAt(i, '=');
    }
    if (low >= from) {
      line.setCharAt(first, '[');
    }
    if (high <= to) {
      line.setCharAt(last, ']');
    }
    line.setCharAt(column(value, columns), '*');
    return line.toString();
  }

  private int column(double value, int columns) {
    return to > from ? (int) Math.round((value - from) / (to - from) * (columns - 1)) : 0;
  }
}
