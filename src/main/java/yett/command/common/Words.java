package yett.command.common;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.interview.Answer;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.quantity.ReadingException;
import yett.rules.Conclusion.Expectation;

/** What a typed line means: an instruction to the program, or an answer. */
public final class Words {
  private Words() {}

  /** What a person can say at every prompt besides answering. */
  public enum Wish {
    WHY("why", "why this question"),
    BELIEF("belief", "what is believed now, and what speaks for and against it"),
    ACCOUNT("belief all", "every answer's weight, with its source"),
    BACK("back", "take the last answer back"),
    CORRECT("correct", "change an earlier answer; words of its question may follow"),
    UNKNOWN("unknown", "it cannot be told"),
    LATER("later", "not now"),
    TELL("tell", "tell … says what you see or read, asked or not"),
    CHECKS("checks", "the checks open to you now, the most telling first"),
    ASK("ask", "ask … takes a check next: its number in that list, or its words"),
    SUSPECT("suspect", "suspect … a cause: what speaks for it and what would settle it"),
    NOTE("note", "note … keeps a remark for the record"),
    DANGER("danger", "report a danger"),
    HANDOVER("hand over", "give the case to the next level"),
    WORKS_AGAIN("works again", "on a call: it runs again, which ends the call"),
    CANCEL("cancel", "on a call: they no longer want anybody sent; a reason may follow"),
    NO_REPLY("no reply", "on a call: the caller can no longer be reached"),
    CUT_OFF("x", "the call dropped: keep what was said"),
    SAVE("save", "stop here and save"),
    HELP("help", "these words");

    private final String word;
    private final String meaning;

    Wish(String word, String meaning) {
      this.word = word;
      this.meaning = meaning;
    }

    public String word() {
      return word;
    }

    /** Whether words may follow it on the line. */
    public boolean takesWords() {
      return this == NOTE
          || this == CORRECT
          || this == TELL
          || this == ASK
          || this == SUSPECT
          || this == CANCEL;
    }

    /** What follows it on a line that begins with it; may be empty. */
    public String after(String line) {
      String text = line.strip();
      return text.length() > word.length() ? text.substring(word.length()).strip() : "";
    }

    public String meaning() {
      return meaning;
    }
  }

  /** The wish that a line begins with, if it is one; "?" is a question for help. */
  public static Optional<Wish> wish(String line) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    if (text.equals("?")) {
      return Optional.of(Wish.HELP);
    }
    for (Wish wish : Wish.values()) {
      boolean begins = wish.takesWords() && text.startsWith(wish.word() + " ");
      if (text.equals(wish.word()) || begins) {
        return Optional.of(wish);
      }
    }
    if (CannotTell.isSaid(text)) {
      return Optional.of(Wish.UNKNOWN);
    }
    return switch (text) {
      case "not now" -> Optional.of(Wish.LATER);
      case "stop", "quit", "exit" -> Optional.of(Wish.SAVE);
      case "handover" -> Optional.of(Wish.HANDOVER);
      default -> Optional.empty();
    };
  }

  /** Either an answer, or what is wrong with the line. */
  public record Heard(Optional<Answer> answer, String complaint) {
    public static Heard of(Answer answer) {
      return new Heard(Optional.of(answer), "");
    }

    public static Heard refused(String complaint) {
      return new Heard(Optional.empty(), complaint);
    }
  }

  /** Reads an answer to a check: a number of the list, words of an outcome, or a reading. */
  public static Heard answer(Check check, String line) {
    return answer(check, line, Optional.empty());
  }

  /**
   * @param usual what such a reading is on this gate; it is shown how to type
   */
  public static Heard answer(Check check, String line, Optional<Expectation> usual) {
    String text = line.strip();
    String example = check.measures().map(m -> Examples.of(check, m, usual)).orElse("");
    if (text.isEmpty()) {
      return Heard.refused(
          (check.measured() ? "Type a reading such as " + example : "Type a number from the list")
              + ", or unknown, later, back; help has more.");
    }
    return check.measures().isPresent()
        ? reading(check.measures().get(), text, example)
        : chosen(check, text, i -> Integer.toString(i + 1));
  }

  /** An answer of a list that has letters: by its words. */
  public static Heard lettered(Check check, String line) {
    String text = line.strip();
    return text.isEmpty()
        ? Heard.refused("Type a letter from the list, or unknown, later, back; help has more.")
        : chosen(check, text, Words::letter);
  }

  /** The letter of an answer, from its position. */
  public static String letter(int position) {
    return Character.toString('a' + position);
  }

  public static Heard reading(Measures measures, String text) {
    return reading(measures, text, measures.example());
  }

  /**
   * @param example a reading as it may be typed, for whoever typed none
   */
  public static Heard reading(Measures measures, String text, String example) {
    try {
      String stored = measures.asStored(text);
      double value = measures.parse(stored, example);
      if (!measures.possible(value)) {
        return Heard.refused(
            measures.show(value)
                + " cannot be: readings here lie between "
                + measures.show(measures.least())
                + " and "
                + measures.show(measures.most())
                + ". Look at the unit and at the point, and type it again.");
      }
      return Heard.of(new Answer.Read(stored, value));
    } catch (ReadingException e) {
      return Heard.refused(e.getMessage());
    }
  }

  private static Heard chosen(Check check, String text, IntFunction<String> label) {
    List<Integer> found =
        ListChoice.pick(
            text,
            check.outcomes().stream().map(Check.Outcome::id).toList(),
            check.outcomes().stream().map(Check.Outcome::text).toList());
    if (found.size() == 1) {
      return Heard.of(new Answer.Chosen(check.outcomes().get(found.get(0)).id()));
    }
    String list =
        IntStream.range(0, check.outcomes().size())
            .mapToObj(i -> label.apply(i) + " " + check.outcomes().get(i).text())
            .collect(Collectors.joining("; "));
    return Heard.refused(
        found.isEmpty()
            ? "\"" + shortened(text) + "\" is not one of the answers: " + list + "."
            : "\"" + shortened(text) + "\" could be more than one of: " + list + ".");
  }

  public static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  /** What is asked for at the prompt of a check. */
  public static String prompt(Check check) {
    return check
        .measures()
        .map(m -> m.unitWord().isEmpty() ? "Reading" : "Reading in " + m.unitWord())
        .orElse("Answer");
  }
}
