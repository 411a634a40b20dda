package yett.study;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A page whose numbers a program writes, each between two marks, and whose words a person does. */
final class Page {
  private Page() {}

  /**
   * @throws IllegalArgumentException if the page has no such marks
   */
  static String with(String page, String name, String numbers) {
    String begin = "<!-- from the study: " + name + " -->";
    String end = "<!-- end -->";
    Pattern between =
        Pattern.compile(Pattern.quote(begin) + ".*?" + Pattern.quote(end), Pattern.DOTALL);
    Matcher found = between.matcher(page);
    if (!found.find()) {
      throw new IllegalArgumentException("the page has no place for \"" + name + "\"");
    }
    return found.replaceFirst(
        Matcher.quoteReplacement(begin + "\n" + numbers.strip() + "\n" + end));
  }
}
