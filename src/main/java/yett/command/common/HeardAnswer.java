package yett.command.common;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yett.interview.Answer;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.quantity.ReadingException;

/** What was typed as the answer to a check: an answer, or what is wrong with the line. */
public record HeardAnswer(Optional<Answer> answer, String complaint) {
  /** A range wider than so many of its uncertainties is read over decades. */
  private static final double DECADES = 1e5;

  public static HeardAnswer of(Answer answer) {
    return new HeardAnswer(Optional.of(answer), "");
  }

  public static HeardAnswer refused(String complaint) {
    return new HeardAnswer(Optional.empty(), complaint);
  }

  /** Reads an answer to a check: a number of the list, words of an outcome, or a reading. */
  public static HeardAnswer to(Check check, String line) {
    String text = line.strip();
    if (text.isEmpty()) {
      return refused(
          check.measured()
              ? "Type a reading such as "
                  + example(check.measures().get())
                  + ", or unknown, later, back; help has more."
              : "Type a number from the list, or unknown, later, back; help has more.");
    }
    return check.measures().isPresent()
        ? reading(check.measures().get(), text)
        : chosen(check, text);
  }

  /** The middle of what can be read; of a range over decades, what is read at its low end. */
  private static String example(Measures measures) {
    double span = measures.most() - measures.least();
    double unsure = measures.procedureUncertainty();
    if (!Double.isFinite(span)) {
      return measures.show(1);
    }
    boolean decades = unsure > 0 && span > DECADES * unsure;
    return measures.show(measures.least() + (decades ? 10 * unsure : span / 2));
  }

  public static HeardAnswer reading(Measures measures, String text) {
    try {
      String stored = measures.asStored(text);
      double value = measures.parse(stored);
      if (!measures.possible(value)) {
        return refused(
            measures.show(value)
                + " cannot be: readings here lie between "
                + measures.show(measures.least())
                + " and "
                + measures.show(measures.most())
                + ". Look at the unit and at the point, and type it again.");
      }
      return of(new Answer.Read(stored, value));
    } catch (ReadingException e) {
      return refused(e.getMessage());
    }
  }

  private static HeardAnswer chosen(Check check, String text) {
    List<Integer> found =
        ListChoice.pick(
            text,
            check.outcomes().stream().map(Check.Outcome::id).toList(),
            check.outcomes().stream().map(Check.Outcome::text).toList());
    if (found.size() == 1) {
      return of(new Answer.Chosen(check.outcomes().get(found.get(0)).id()));
    }
    String list =
        IntStream.range(0, check.outcomes().size())
            .mapToObj(i -> (i + 1) + " " + check.outcomes().get(i).text())
            .reduce((a, b) -> a + "; " + b)
            .orElse("");
    return refused(
        found.isEmpty()
            ? Words.quoted(text) + " is not one of the answers: " + list + "."
            : Words.quoted(text) + " could be more than one of: " + list + ".");
  }
}
