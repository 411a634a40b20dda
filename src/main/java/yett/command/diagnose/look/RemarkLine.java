package yett.command.diagnose.look;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A remark on one look of a round, as in {@code remark 6 gravel washed out, 1b}. Its words end
 * where the next look is named: what is said of that look must not be lost in the remark.
 *
 * @param look its number in the round
 * @param rest the line without the remark; empty if there was nothing else
 */
record RemarkLine(int look, String words, String rest) {
  private static final Pattern REMARK =
      Pattern.compile("(?i)(?:^|[,;])\\s*remark\\s+(\\d{1,2})\\s+(\\S.*)");

  /** A number with a unit names no look. */
  private static final String NO_UNIT = "(?!\\s*(?:[cm]?m|in|ft|[VAsN])\\b)";

  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;]\\s*(?=remark\\s+\\d)|[,;]\\s+(?=[?-]?\\d{1,2}[a-z]?\\b" + NO_UNIT + ")");

  static boolean is(String line) {
    return REMARK.matcher(line).find();
  }

  /** The first remark of a line that {@link #is} one. */
  static RemarkLine first(String line) {
    Matcher remark = REMARK.matcher(line);
    if (!remark.find()) {
      throw new IllegalArgumentException("No remark: " + line);
    }
    String[] parts = NEXT.split(remark.group(2), 2);
    String rest =
        Stream.of(line.substring(0, remark.start()), parts.length > 1 ? parts[1] : "")
            .filter(s -> !s.isBlank())
            .collect(Collectors.joining(", "));
    return new RemarkLine(Integer.parseInt(remark.group(1)), parts[0].strip(), rest.strip());
  }
}
