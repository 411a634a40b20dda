package yett.study;

import java.util.List;
import java.util.Locale;
import yett.calculation.Range;
import yett.calculation.SmallNumbers;

/** Numbers in words, and tables in Markdown. */
final class Text {
  private Text() {}

  static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values).replace(System.lineSeparator(), "\n");
  }

  /** A head, with numbers to the right in all columns but the first. */
  static String head(List<String> columns) {
    return row(columns) + "|---|" + "--:|".repeat(columns.size() - 1) + "\n";
  }

  static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }

  static String mean(Sample sample, int digits) {
    String number = "%." + digits + "f";
    return words(number + " ± " + number, sample.mean(), sample.margin());
  }

  static String ninetieth(Sample sample) {
    double[] interval = sample.ninetiethInterval();
    return words("%.0f (%.0f–%.0f)", sample.ninetieth(), interval[0], interval[1]);
  }

  /** A share with its interval, in per cent. */
  static String share(long hits, long of) {
    if (of == 0) {
      return "–";
    }
    Range interval = SmallNumbers.share((int) hits, (int) of);
    return words(
        "%.1f %% (%.0f–%.0f)", 100.0 * hits / of, 100 * interval.low(), 100 * interval.high());
  }
}
