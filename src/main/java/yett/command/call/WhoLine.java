package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line typed where the name is asked for: who calls, and what they say of the gate in the same
 * breath.
 *
 * @param details the name, the number and the place as typed; blank if there is none
 * @param said the rest
 */
record WhoLine(String details, List<String> said) {
  /** Where something else may begin: "Joan from the bakery, and the gate won't close". */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;!?]+\\s*|\\.\\s+|\\s+(?=(?:(?:and|but|because) )?"
              + "(?:it|(?:the|our|your|my|this) gate)\\b)");

  /**
   * @param isSaid whether a part of the line tells something of the gate
   */
  static WhoLine of(String typed, Predicate<String> isSaid) {
    String line = SpokenDigits.written(typed);
    StringBuilder details = new StringBuilder();
    List<String> said = new ArrayList<>();
    for (String part : parts(line)) {
      String words = NEXT.matcher(part).replaceAll(" ").strip();
      if (CallerDetails.of(part).phone().isEmpty()
          && !CallerDetails.isDetail(words)
          && isSaid.test(words)) {
        said.add(words);
      } else {
        details.append(part);
      }
    }
    return new WhoLine(details.toString(), said);
  }

  /** The parts, each with what separates it from the next; a number is a part. */
  private static List<String> parts(String line) {
    TreeSet<Integer> ends = new TreeSet<>();
    NEXT.matcher(line).results().forEach(m -> ends.add(m.end()));
    Matcher phone = CallerDetails.PHONE.matcher(line);
    while (phone.find()) {
      ends.subSet(phone.start(), phone.end()).clear();
      ends.add(phone.start());
      ends.add(phone.end());
    }
    ends.add(line.length());
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int end : ends) {
      parts.add(line.substring(from, end));
      from = end;
    }
    return parts.stream().filter(p -> !p.isEmpty()).toList();
  }
}
