package yett.e2e;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What appeared from one prompt to the next.
 *
 * @param text begins with the echo of the answer and ends with the next prompt
 */
record Screen(String text) {
  /** A prompt ends in "> " and waits; if it fills the window, the cursor is on the next line. */
  static final Pattern PROMPT = Pattern.compile("(?:^|\n)[^\n>]*> \n?\\z");

  /** The prompt at the end of a page that is followed by another one. */
  static final Pattern MORE =
      Pattern.compile("Enter\\s+when\\s+you\\s+have\\s+read\\s+this(:\\s*)?> \n?\\z");

  /** Lines of the longest prompt in the narrowest window that is tested. */
  private static final int LONGEST_PROMPT = 6;

  /** The kind of prompt, recognised by its first words. */
  enum Kind {
    DANGERS("0 for none, or the numbers that apply"),
    SITE_NEEDED("Enter if this is right"),
    SITE("Enter if all is right"),
    SITE_QUESTION("Answer.*Enter to leave it"),
    COMPLAINTS("Numbers"),
    HISTORY("0 for none, or numbers"),
    LOOKS("Enter if all are as listed"),
    CAUTIONS("Press Enter when you have read the cautions"),
    DISAGREEMENT("Number of the one to check again"),
    SET_UP("\"done\" when (all|it is done(>|, \\?))"),
    REPAIR("\"done\" when it is done, \"cannot\""),
    STOP("\"done\" when it is done; \"correct\""),
    SURE("yes to keep it"),
    COMING_BACK("yes, or no>"),
    CLOSE("\"close\" to close"),
    RETEST("Answer> ", "Retest"),
    GONE("0 if (it has|all have) gone"),
    SETTLE("Answer> ", "Two answers contradict each other"),
    FAILED_PROOF("Answer> ", "A proof failed"),
    STOCK("Answer> ", "The last checks told little"),
    PROOF("(Answer|Reading.*)> ", "Proof"),
    CHECK("(Answer|Reading.*)> ", "Check \\d+"),
    COMMANDS("yett> ");

    private final Pattern prompt;
    private final Pattern heading;

    Kind(String prompt) {
      this(prompt, "");
    }

    Kind(String prompt, String heading) {
      this.prompt = Pattern.compile("^" + prompt);
      this.heading = Pattern.compile("(?m)^" + heading);
    }
  }

  /** The kind; empty for a prompt that comes again, after a refusal or a word such as "why". */
  Optional<Kind> kind() {
    return Stream.of(Kind.values())
        .filter(kind -> kind.prompt.matcher(prompt()).find() && kind.heading.matcher(text).find())
        .findFirst();
  }

  /**
   * The last line. In a narrow window the beginning of a prompt, or all its words, are in the lines
   * above it.
   */
  String prompt() {
    String[] lines = text.stripTrailing().split("\n");
    String last = lines[lines.length - 1] + " ";
    String words = last;
    for (int i = lines.length - 1; i >= 0 && lines.length - i < LONGEST_PROMPT; i--) {
      if (i < lines.length - 1) {
        words = lines[i].strip().replaceFirst(":$", "") + (words.equals("> ") ? "" : " ") + words;
      }
      String start = words;
      if (Stream.of(Kind.values()).anyMatch(k -> k.prompt.matcher(start).find())) {
        return start;
      }
    }
    return last;
  }

  /** The text as one line, to find a sentence wherever it was broken. */
  String flat() {
    return text.replaceAll("\\s+", " ");
  }

  boolean shows(String words) {
    return flat().contains(words.replaceAll("\\s+", " "));
  }

  /** The number before an entry of a list. */
  int numberOf(String entry) {
    Matcher matcher =
        Pattern.compile("(\\d+) " + Pattern.quote(entry.replaceAll("\\s+", " "))).matcher(flat());
    if (!matcher.find()) {
      throw new AssertionError("No entry \"" + entry + "\" on the screen:\n" + text);
    }
    return Integer.parseInt(matcher.group(1));
  }
}
