package yett.command.diagnose.look;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.command.diagnose.screen.CheckViews;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Columns;

/**
 * What was said of the two columns of one look of a round, such as opening and closing: {@code
 * 3b/a} is b opening and the usual closing, {@code 3b closing} is b closing only.
 *
 * @param look its position
 * @param unusual the columns that are out of the ordinary
 * @param answer the one further down the card; empty if the line does not say how it differs
 * @param remark both, if both are out of the ordinary and differ
 * @param complaint what is wrong with the line
 */
record LookColumns(
    int look,
    Set<String> unusual,
    Optional<Answer> answer,
    Optional<String> remark,
    Optional<String> complaint) {
  private static final Pattern BOTH = Pattern.compile("(\\d{1,3})([a-z]?)/([a-z]?)");
  private static final Pattern NUMBERED = Pattern.compile("(\\d{1,3})([a-z]*)(\\s.*)");

  /** Letters for both columns; empty if the word is none such. */
  static Optional<LookColumns> both(List<Check> looks, String word) {
    Matcher two = BOTH.matcher(word);
    if (!two.matches()) {
      return Optional.empty();
    }
    int look = Integer.parseInt(two.group(1)) - 1;
    Optional<Columns> columns = columns(looks, look);
    if (columns.isEmpty()) {
      return Optional.of(wrong(look, "\"" + word + "\" is not understood: " + where(looks) + "."));
    }
    Check check = looks.get(look);
    int first = outcome(two.group(2));
    int second = outcome(two.group(3));
    if (Math.max(first, second) >= check.outcomes().size()) {
      return Optional.of(
          wrong(look, "\"" + word + "\" is not understood: " + LookAnswers.lettered(check)));
    }
    Answer answer = new Answer.Chosen(check.outcomes().get(Math.max(first, second)).id());
    boolean apart = first > 0 && second > 0 && first != second;
    return Optional.of(
        new LookColumns(
            look,
            unusual(columns.get(), first > 0, second > 0),
            Optional.of(answer),
            apart
                ? Optional.of(
                    said(check, columns.get().first(), first)
                        + ", "
                        + said(check, columns.get().second(), second))
                : Optional.empty(),
            Optional.empty()));
  }

  /** A part of a line without the word for its only column, and that column. */
  record Only(int look, String column, String rest) {}

  /** A numbered part that names one column, such as "3b closing" or "3 closing bangs". */
  static Optional<Only> only(List<Check> looks, String part) {
    Matcher numbered = NUMBERED.matcher(part);
    if (!numbered.matches()) {
      return Optional.empty();
    }
    int look = Integer.parseInt(numbered.group(1)) - 1;
    return columns(looks, look).stream()
        .flatMap(c -> c.names().stream())
        .flatMap(
            name -> {
              String word =
                  "(?:\\s+(?:only|when|while))*\\s+" + Pattern.quote(name) + "(?:\\s+only)?";
              Matcher at =
                  Pattern.compile("^" + word + "\\b|" + word + "$").matcher(numbered.group(3));
              return at.find()
                  ? Stream.of(
                      new Only(
                          look, name, numbered.group(1) + numbered.group(2) + at.replaceFirst("")))
                  : Stream.empty();
            })
        .findFirst();
  }

  /** How to answer the columns of looks that have them; empty if none has. */
  static Optional<String> help(List<Check> looks) {
    return columns(looks)
        .map(
            c ->
                "For "
                    + numbers(looks)
                    + ", "
                    + c.first()
                    + " and "
                    + c.second()
                    + " can differ: 3b/a is b "
                    + c.first()
                    + " only, 3a/b "
                    + c.second()
                    + " only.");
  }

  private static String where(List<Check> looks) {
    return columns(looks)
        .map(c -> "only " + numbers(looks) + " can be answered for " + CheckViews.names(c))
        .orElse("no look of this round has two columns");
  }

  private static String numbers(List<Check> looks) {
    return IntStream.range(0, looks.size())
        .filter(i -> looks.get(i).columns().isPresent())
        .mapToObj(i -> Integer.toString(i + 1))
        .collect(Collectors.joining(", "));
  }

  private static Optional<Columns> columns(List<Check> looks) {
    return looks.stream().flatMap(look -> look.columns().stream()).findFirst();
  }

  private static Optional<Columns> columns(List<Check> looks, int look) {
    return look >= 0 && look < looks.size() ? looks.get(look).columns() : Optional.empty();
  }

  private static LookColumns wrong(int look, String complaint) {
    return new LookColumns(
        look, Set.of(), Optional.empty(), Optional.empty(), Optional.of(complaint));
  }

  private static int outcome(String letter) {
    return letter.isEmpty() ? 0 : letter.charAt(0) - 'a';
  }

  private static Set<String> unusual(Columns columns, boolean first, boolean second) {
    return first && second
        ? Set.of(columns.first(), columns.second())
        : first ? Set.of(columns.first()) : second ? Set.of(columns.second()) : Set.of();
  }

  private static String said(Check check, String column, int outcome) {
    return column + ": " + check.outcomes().get(outcome).text();
  }
}
