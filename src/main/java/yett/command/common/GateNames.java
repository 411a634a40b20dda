package yett.command.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.casebook.SiteName;
import yett.casebook.SiteRecord;
import yett.console.Block;
import yett.console.Console;

/**
 * Finds the gate that somebody means by a name. Gates are told apart by the exact name; if another
 * gate has a similar name, the person is asked.
 */
public final class GateNames {
  public static final String NO_NAME = "A name of at most 80 letters, please.";
  private static final int LONGEST = 80;

  private final Console console;
  private final List<SiteRecord> known;

  public GateNames(Console console, List<SiteRecord> known) {
    this.console = console;
    this.known = known;
  }

  /** Why a text cannot be a gate's name. */
  public static String refusal(String text) {
    return isWish(text)
        ? "\"" + text + "\" is a command word, not the name of a gate. Which gate is it?"
        : NO_NAME;
  }

  /** Whether the text is a request to the program, which nobody means as the name of a gate. */
  private static boolean isWish(String text) {
    return List.of("?", "help", "save", "stop", "quit", "exit")
        .contains(text.toLowerCase(Locale.ROOT));
  }

  public static boolean isName(String text) {
    return !isWish(text)
        && text.length() <= LONGEST
        && text.codePoints().noneMatch(Character::isISOControl);
  }

  /** The name of the gate that is meant; empty if the person leaves. */
  public Optional<String> meant(String name) {
    List<String> names = known.stream().map(SiteRecord::id).toList();
    String letters = SiteName.letters(name);
    List<String> near =
        names.stream()
            .filter(n -> !letters.isEmpty() && SiteName.letters(n).equals(letters))
            .toList();
    if (names.contains(name) || near.isEmpty()) {
      return Optional.of(name);
    }
    List<String> choices = new ArrayList<>(near);
    choices.add("another gate, called " + name);
    console.show(
        Block.paragraph("There is a gate with a similar name. Which do you mean?"),
        Block.numbered(choices));
    return Prompt.forWords(console)
        .until(
            "Number> ",
            line ->
                Prompt.number(line, choices.size())
                    .map(n -> Prompt.Reading.of(n <= near.size() ? near.get(n - 1) : name))
                    .orElse(
                        Prompt.Reading.again("Type a number from 1 to " + choices.size() + ".")));
  }
}
