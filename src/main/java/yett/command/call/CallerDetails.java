package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The caller's name, number and place, read from one line such as "Ina Teal, 4 Quay Road, 555
 * 0107".
 *
 * @param where the place of the gate
 */
record CallerDetails(String name, String phone, String where) {
  static final Pattern PHONE = Pattern.compile("\\+?\\(?\\d[\\d ()/.-]{4,}\\d");

  /** Words before a name or a place that belong to neither. */
  private static final Pattern TALK =
      Pattern.compile(
          "^(?:(?:(?:i )?(?:dunno|do ?n[o'’]?t know)|hi|hello|hallo|good (?:morning|afternoon|evening)|yes|well|and|this is|here is"
              + "|(?:my |the )?name(?:'s| is)?|it'?s|it is|i am|i'?m|we are|we're|calling)\\b[ ,:]*)+",
          Pattern.CASE_INSENSITIVE);

  /** Words that follow a name. */
  private static final Pattern HERE =
      Pattern.compile(
          "\\s+(?:here|speaking|calling|again|is my name)(?: again)?$", Pattern.CASE_INSENSITIVE);

  /** Words before a telephone number. */
  private static final Pattern REACHED =
      Pattern.compile(
          "(?:^|\\s+)(?:and )?(?:you can )?(?:(?:call|ring|reach|phone) me(?: back)?(?: on| at)?"
              + "|(?:(?:my|the|our|on) )*(?:(?:tele)?phone|mobile|cell|tel|number|no)"
              + "(?: number)?(?: is)?[.:]?|on)$",
          Pattern.CASE_INSENSITIVE);

  /** What a caller is, said behind the name: it belongs to the name and is no place. */
  private static final Pattern CALLING =
      Pattern.compile(
          "(?i)(?:i am |i'?m |the |a |an |our |your )*(?:[\\p{L}-]+ ){0,2}"
              + "(?:driver|guard|caretaker|janitor|porter|manager|owner|tenant|resident"
              + "|neighbou?r|receptionist|cleaner|visitor|landlord|security|gatekeeper|doorman"
              + "|electrician|plumber|gardener|nurse|carer)");

  /** Said where a number was asked for, it is neither a name nor a place. */
  private static final Pattern NO_NUMBER =
      Pattern.compile(
          "(?i)(?:(?:i have |there is |there's |with )?no (?:(?:tele)?phone|number|mobile|cell)"
              + "(?: number)?|(?:number|(?:tele)?phone|mobile) (?:is )?(?:withheld|unknown|not known)"
              + "|number|phone|tel)[.:]?");

  private static final Pattern PLACE =
      Pattern.compile("^(?:from|at|in|the gate (?:is )?at)\\s+", Pattern.CASE_INSENSITIVE);

  /** Words that lead from a name to a place: "Joan from the bakery". */
  private static final Pattern OF_PLACE =
      Pattern.compile("\\s+(?=(?:from|at)\\s)", Pattern.CASE_INSENSITIVE);

  /** Whether words can only be about the caller: what they do, or that there is no number. */
  static boolean isDetail(String words) {
    return CALLING.matcher(words.strip()).matches() || NO_NUMBER.matcher(words.strip()).matches();
  }

  static CallerDetails of(String typed) {
    String line = SpokenDigits.written(typed);
    Matcher phone = PHONE.matcher(line);
    String number = "";
    String rest = line;
    while (phone.find()) {
      if (phone.group().chars().filter(Character::isDigit).count() >= 6) {
        number = phone.group().strip();
        rest =
            REACHED.matcher(line.substring(0, phone.start()).strip()).replaceFirst("")
                + ","
                + line.substring(phone.end());
      }
    }
    String name = "";
    List<String> where = new ArrayList<>();
    for (String part : rest.split("[,;]")) {
      for (String text : OF_PLACE.split(said(part))) {
        boolean place = PLACE.matcher(text).find() || text.matches(".*\\d.*");
        String told = HERE.matcher(PLACE.matcher(text).replaceFirst("")).replaceFirst("").strip();
        if (told.isEmpty() || NO_NUMBER.matcher(told).matches()) {
          continue;
        }
        if (!name.isEmpty() && CALLING.matcher(told).matches()) {
          name += ", " + told;
        } else if (name.isEmpty() && !place) {
          name = told;
        } else {
          where.add(told);
        }
      }
    }
    return new CallerDetails(name, number, String.join(", ", where));
  }

  private static String said(String part) {
    return TALK.matcher(part.strip()).replaceFirst("").strip().replaceFirst("[.]+$", "");
  }
}
