package yett.e2e;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Draws what a terminal of 80 columns showed as SVG, without a font of its own. */
final class TerminalPicture {
  private static final int COLUMN = 8;
  private static final int LINE = 18;
  private static final int MARGIN = 16;
  private static final int COLUMNS = 80;

  /** A prompt, and what was typed after it. */
  private static final Pattern TYPED = Pattern.compile("^([^\\s>][^>]*> ?)(.*)$");

  /** Signal words in the colours of ISO 3864-2. */
  private static final Pattern SIGNAL = Pattern.compile("^ +(DANGER|WARNING|CAUTION):");

  private TerminalPicture() {}

  static String of(String title, List<String> lines) {
    int width = COLUMNS * COLUMN + 2 * MARGIN;
    int height = lines.size() * LINE + 2 * MARGIN;
    StringBuilder svg = new StringBuilder();
    svg.append(
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" role="img">
        <title>%s</title>
        <rect width="100%%" height="100%%" rx="8" fill="#1b2229"/>
        <g font-family="monospace" font-size="13" fill="#d6dde3" xml:space="preserve">
        """
            .formatted(width, height, width, height, escaped(title)));
    for (int i = 0; i < lines.size(); i++) {
      svg.append(line(lines.get(i), MARGIN + (i + 1) * LINE - 5));
    }
    return svg.append("</g>\n</svg>\n").toString();
  }

  private static String line(String line, int y) {
    Matcher typed = TYPED.matcher(line);
    if (typed.matches()) {
      return text(typed.group(1), 0, y, " fill=\"#8fbcd4\"")
          + text(
              typed.group(2), typed.group(1).length(), y, " fill=\"#ffffff\" font-weight=\"bold\"");
    }
    Matcher signal = SIGNAL.matcher(line);
    if (signal.find()) {
      String word = signal.group();
      return text(word, 0, y, " fill=\"#f0883e\" font-weight=\"bold\"")
          + text(line.substring(word.length()), word.length(), y, "");
    }
    boolean heading = !line.isEmpty() && line.charAt(0) != ' ';
    return text(line, 0, y, heading ? " fill=\"#ffffff\" font-weight=\"bold\"" : "");
  }

  /** Text stretched to the width of its columns, whatever font the reader has. */
  private static String text(String words, int column, int y, String style) {
    int blanks = words.length() - words.stripLeading().length();
    String shown = words.strip();
    if (shown.isEmpty()) {
      return "";
    }
    return "<text x=\"%d\" y=\"%d\" textLength=\"%d\" lengthAdjust=\"spacingAndGlyphs\"%s>%s</text>\n"
        .formatted(
            MARGIN + (column + blanks) * COLUMN, y, shown.length() * COLUMN, style, escaped(shown));
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
