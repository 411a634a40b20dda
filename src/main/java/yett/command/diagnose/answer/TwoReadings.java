package yett.command.diagnose.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Columns;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;

/**
 * Two readings for one check, one for each of its columns, such as "24.1/0.3 V" or "24.1 V opening,
 * closing 0.3 V".
 */
public record TwoReadings(Check check, Columns columns, Answer.Read first, Answer.Read second) {
  private static final Pattern NUMBERS =
      Pattern.compile("[-+]?[\\d.,]+\\s*/\\s*[-+]?[\\d.,]+\\s*(?<unit>(?:[^\\d\\s].*)?)");

  private static final Pattern INCHES =
      Pattern.compile("(?i)(?:[\"\u2033\u201d]|\\bin(?:ch(?:es)?)?\\.?)$");

  /** A line at this check as two readings; empty if it is none, or a single reading. */
  public static Optional<TwoReadings> of(Check check, String line) {
    if (check.measures().isEmpty() || check.columns().isEmpty()) {
      return Optional.empty();
    }
    Measures measures = check.measures().get();
    List<String> parts = parts(check.columns().get(), line);
    if (parts.size() != 2
        || !isTwoNumbers(measures, line) && WanderingReading.read(measures, line).isPresent()) {
      return Optional.empty();
    }
    Optional<Answer.Read> second = WanderingReading.read(measures, parts.get(1));
    Optional<Answer.Read> first =
        WanderingReading.read(
            measures,
            parts.get(0).matches("[-+\\d.,]+") ? parts.get(0) + unit(parts.get(1)) : parts.get(0));
    return first.isPresent() && second.isPresent()
        ? Optional.of(new TwoReadings(check, check.columns().get(), first.get(), second.get()))
        : Optional.empty();
  }

  /** Whether "6/14 mm" are two readings; only inches come as fractions, "1/2 in". */
  private static boolean isTwoNumbers(Measures measures, String line) {
    Matcher two = NUMBERS.matcher(line.strip());
    if (!two.matches()) {
      return false;
    }
    String unit = two.group("unit").isEmpty() ? measures.asStored("1") : two.group("unit");
    return !INCHES.matcher(unit).find();
  }

  /** The text of each column, in the order of the card. */
  private static List<String> parts(Columns columns, String line) {
    List<String> parts =
        List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s*(?:[/;]|,\\s|\\band\\b)\\s*"));
    if (parts.size() != 2) {
      return List.of();
    }
    boolean turned = names(parts.get(0), columns.second()) || names(parts.get(1), columns.first());
    boolean straight =
        names(parts.get(0), columns.first()) || names(parts.get(1), columns.second());
    boolean slash = line.contains("/");
    if (turned == straight && (turned || !slash)) {
      return List.of(); // two of the same column, or none named
    }
    List<String> bare = parts.stream().map(p -> bare(columns, p)).toList();
    return turned ? List.of(bare.get(1), bare.get(0)) : bare;
  }

  /** Whether a text names a column, if only by the beginning of its word: "open 24 V". */
  private static boolean names(String text, String column) {
    return text.matches(".*\\b" + stem(column) + "\\w*\\b.*");
  }

  private static String bare(Columns columns, String text) {
    String bare = text;
    for (String column : columns.names()) {
      bare = bare.replaceAll("\\b" + stem(column) + "\\w*", "");
    }
    return bare.strip();
  }

  /** "in height" is known by "height". */
  private static String stem(String column) {
    String word = column.substring(column.lastIndexOf(' ') + 1);
    return (word.length() < column.length() ? "(?:in )?" : "")
        + word.substring(0, Math.min(4, word.length()));
  }

  private static String unit(String typed) {
    return typed.replaceFirst("^[-+\\d.,]+", "");
  }

  /** The one that is judged. */
  public Answer.Read judged() {
    return columns.counts().orElseThrow().isFirst(first.value(), second.value()) ? first : second;
  }

  /** The columns whose reading is out of the ordinary; none if that cannot be told on this gate. */
  public List<String> unusual(Optional<Expectation> usual) {
    List<String> unusual = new ArrayList<>();
    if (isUnusual(first, usual)) {
      unusual.add(columns.first());
    }
    if (isUnusual(second, usual)) {
      unusual.add(columns.second());
    }
    return unusual;
  }

  private boolean isUnusual(Answer.Read read, Optional<Expectation> usual) {
    return WanderingReading.outcome(check, read, usual)
        .filter(outcome -> check.indexOf(outcome) > 0)
        .isPresent();
  }

  /** Both, for the record. */
  public Event noted() {
    Measures measures = check.measures().orElseThrow();
    return new Event.Noted(
        columns.first()
            + " "
            + measures.show(first.value())
            + ", "
            + columns.second()
            + " "
            + measures.show(second.value()),
        Optional.of(check.id()));
  }
}
