package yett.command.common;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;

/** Tells whether a typed line is a request to the program or an answer. */
public final class Words {
  private Words() {}

  /** What other prompts ask for. Where it was not asked for, it was typed too late or too early. */
  private static final Set<String> PROMPTED =
      Set.of("close", "done", "cannot", "send", "leave", "list", "both", "first", "second");

  /** A request that a person can make at every prompt instead of answering. */
  public enum Wish {
    WHY("why", "why this question"),
    BELIEF("belief", "what is believed now, and what speaks for and against it"),
    ACCOUNT("belief all", "every answer's weight, with its source"),
    BACK("back", "take the last answer back"),
    CORRECT("correct", "change an earlier answer; words of its question may follow"),
    UNKNOWN("unknown", "you cannot tell"),
    SENSELESS("does not apply", "the question makes no sense at this gate"),
    LATER("later", "not now"),
    TELL("tell", "tell … reports what you see or read, asked or not"),
    CHECKS("checks", "the checks you can make now, the most telling first"),
    ASK("ask", "ask … makes a check the next one: its number in that list, or words from it"),
    SUSPECT("suspect", "suspect … a cause: what speaks for it and what would settle it"),
    NOTE(
        "note",
        "note … keeps a remark for the record; note for the customer … puts it on their page"),
    DANGER("danger", "report a danger"),
    HANDOVER("hand over", "give the case to the next level; a reason may follow"),
    WORKS_AGAIN("works again", "on a call: it runs again, which ends the call"),
    CANCEL("cancel", "on a call: they no longer want anybody sent; a reason may follow"),
    NO_REPLY("no reply", "on a call: the caller can no longer be reached"),
    CUT_OFF("x", "the call dropped: keep what was said"),
    SAVE("save", "stop here and save"),
    HELP("help", "this list");

    private final String word;
    private final String meaning;

    Wish(String word, String meaning) {
      this.word = word;
      this.meaning = meaning;
    }

    public String word() {
      return word;
    }

    /** Whether further words may follow the request on the line. */
    public boolean takesWords() {
      return this == NOTE
          || this == CORRECT
          || this == TELL
          || this == ASK
          || this == SUSPECT
          || this == HANDOVER
          || this == CANCEL;
    }

    /** Whether a reason may stand behind the request and a comma, though nothing is made of it. */
    private boolean takesReason() {
      return this == LATER || this == SAVE;
    }

    /** The words after the request on a line that begins with it; may be empty. */
    public String after(String line) {
      String text = plain(line);
      return text.length() > word.length()
          ? text.substring(word.length()).replaceFirst("^[\\s,:;]+", "").strip()
          : "";
    }

    private boolean begins(String text) {
      String rest = text.startsWith(word) ? text.substring(word.length()) : "";
      return takesWords() && rest.matches("[\\s,:;].*")
          || takesReason() && rest.matches("\\s*[,:;].*");
    }

    public String meaning() {
      return meaning;
    }
  }

  /** A line without the punctuation at its end, and "hand over" as two words. */
  private static String plain(String line) {
    return line.strip()
        .replaceFirst("(?i)^hand-?over(?=$|[\\s,:;.!])", "hand over")
        .replaceFirst("(?<=\\w)\\s*[,:;.!]+$", "");
  }

  /**
   * The request that a line begins with; empty if it is none. "?" asks for help. A comma or a colon
   * may stand between a request and the words after it.
   */
  public static Optional<Wish> wish(String line) {
    String text = plain(line).toLowerCase(Locale.ROOT);
    if (text.equals("?")) {
      return Optional.of(Wish.HELP);
    }
    for (Wish wish : Wish.values()) {
      if (text.equals(wish.word()) || wish.begins(text)) {
        return Optional.of(wish);
      }
    }
    if (CannotTellWords.isSaid(text)) {
      return Optional.of(Wish.UNKNOWN);
    }
    return switch (text) {
      case "not now" -> Optional.of(Wish.LATER);
      case "doesn't apply", "n/a", "na", "not applicable", "makes no sense", "no sense" ->
          Optional.of(Wish.SENSELESS);
      case "stop", "quit", "exit" -> Optional.of(Wish.SAVE);
      default -> Optional.empty();
    };
  }

  /** Whether the line goes back; at a question within another one, that leads to the other one. */
  public static boolean isBack(String line) {
    return wish(line).filter(w -> w == Wish.BACK).isPresent();
  }

  /** Whether some other prompt asks for this word. */
  public static boolean isPrompted(String line) {
    return PROMPTED.contains(line.strip().toLowerCase(Locale.ROOT));
  }

  /** The letter of the answer at this position. */
  public static String letter(int position) {
    return Character.toString('a' + position);
  }

  public static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  /** Typed text, as it is quoted back to the person. */
  public static String quoted(String text) {
    return "\"" + shortened(text) + "\"";
  }

  /** The prompt of a check, which says what to type. */
  public static String prompt(Check check) {
    return check
        .measures()
        .map(m -> m.unitWord().isEmpty() ? "Reading" : "Reading (" + m.unitWord() + ")")
        .orElse(check.several() ? "Answer (several may be true)" : "Answer");
  }
}
