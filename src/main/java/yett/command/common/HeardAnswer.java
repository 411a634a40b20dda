package yett.command.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.quantity.ReadingException;
import yett.rules.Conclusion.Expectation;

/**
 * What was typed as the answer to a check: either an answer, or a message that says what is wrong
 * with the line.
 */
public record HeardAnswer(Optional<Answer> answer, String complaint) {
  public static HeardAnswer of(Answer answer) {
    return new HeardAnswer(Optional.of(answer), "");
  }

  public static HeardAnswer refused(String complaint) {
    return new HeardAnswer(Optional.empty(), complaint);
  }

  /** Reads an answer to a check: the number of an outcome, words of an outcome, or a reading. */
  public static HeardAnswer to(Check check, String line) {
    return to(check, line, Optional.empty());
  }

  /**
   * @param usual the usual range of this reading on this gate, used for the example in the message
   */
  public static HeardAnswer to(Check check, String line, Optional<Expectation> usual) {
    String text = line.strip();
    String example = check.measures().map(m -> Examples.of(check, m, usual)).orElse("");
    if (text.isEmpty()) {
      return refused(
          (check.measured() ? "Type a reading such as " + example : "Type a number from the list")
              + ", or unknown, later, back; help has more.");
    }
    return check.measures().isPresent()
        ? reading(check.measures().get(), text, example)
        : chosen(check, text, i -> Integer.toString(i + 1));
  }

  /** Reads an answer by its words only, for a list whose outcomes have letters. */
  public static HeardAnswer lettered(Check check, String line) {
    String text = line.strip();
    return text.isEmpty()
        ? refused("Type a letter from the list, or unknown, later, back; help has more.")
        : chosen(check, text, Words::letter);
  }

  public static HeardAnswer reading(Measures measures, String text) {
    return reading(measures, text, measures.example());
  }

  /**
   * @param example a reading as it may be typed, for a message to somebody who typed none
   */
  public static HeardAnswer reading(Measures measures, String text, String example) {
    try {
      String stored = measures.asStored(text);
      double value = measures.parse(stored, example);
      if (!measures.possible(value)) {
        return refused(
            measures.show(value)
                + " cannot be: readings here lie between "
                + measures.show(measures.least())
                + " and "
                + measures.show(measures.most())
                + ". Check the unit and the decimal point, and type it again.");
      }
      return of(new Answer.Read(stored, value));
    } catch (ReadingException e) {
      return refused(e.getMessage());
    }
  }

  /**
   * Outcomes that were named together.
   *
   * @param outcomes ids, in any order
   */
  public static HeardAnswer together(Check check, List<String> outcomes) {
    List<String> named = outcomes.stream().distinct().toList();
    return Answer.Chosen.canBe(check, named)
        ? of(Answer.Chosen.of(check, named))
        : refused(
            Words.quoted(check.outcomes().get(0).text())
                + " goes with no other answer. Name it alone, or only the others.");
  }

  private static HeardAnswer chosen(Check check, String text, IntFunction<String> label) {
    return several(check, text, label).orElseGet(() -> one(check, text, pick(check, text), label));
  }

  private static List<Integer> pick(Check check, String text) {
    return ListChoice.pick(text, ids(check), texts(check));
  }

  private static List<String> ids(Check check) {
    return check.outcomes().stream().map(Check.Outcome::id).toList();
  }

  private static List<String> texts(Check check) {
    return check.outcomes().stream().map(Check.Outcome::text).toList();
  }

  /**
   * Several answers in one line, where several may be true. Empty if the line has one part, or none
   * of its parts is clear by itself.
   */
  private static Optional<HeardAnswer> several(
      Check check, String text, IntFunction<String> label) {
    List<String> parts = ListChoice.apart(text);
    boolean whole = ListChoice.same(text, ids(check), texts(check)).size() == 1;
    if (!check.several() || whole || parts.size() < 2) {
      return Optional.empty();
    }
    List<String> named = new ArrayList<>();
    Optional<HeardAnswer> unclear = Optional.empty();
    for (String part : parts) {
      List<Integer> found = pick(check, part);
      if (found.size() == 1) {
        named.add(ids(check).get(found.get(0)));
      } else if (unclear.isEmpty()) {
        unclear = Optional.of(one(check, part, found, label));
      }
    }
    return named.isEmpty()
        ? Optional.empty()
        : unclear.or(() -> Optional.of(together(check, named)));
  }

  private static HeardAnswer one(
      Check check, String text, List<Integer> found, IntFunction<String> label) {
    if (found.size() == 1) {
      return of(new Answer.Chosen(check.outcomes().get(found.get(0)).id()));
    }
    String list =
        IntStream.range(0, check.outcomes().size())
            .mapToObj(i -> label.apply(i) + " " + check.outcomes().get(i).text())
            .collect(Collectors.joining("; "));
    return refused(
        found.isEmpty()
            ? Words.quoted(text) + " is not one of the answers: " + list + "."
            : Words.quoted(text) + " could be more than one of: " + list + ".");
  }
}
