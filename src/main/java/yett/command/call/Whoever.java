package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who calls, told in one breath: "Ina Teal, 4 Quay Road, 555 0107".
 *
 * @param where the place of the gate
 */
record Whoever(String name, String phone, String where) {
  private static final Pattern PHONE = Pattern.compile("\\+?\\(?\\d[\\d ()/.-]{4,}\\d");
  private static final Pattern TALK =
      Pattern.compile(
          "^(?:this is|my name is|it's|i am|i'm|from|at)\\s+", Pattern.CASE_INSENSITIVE);

  static Whoever of(String line) {
    Matcher phone = PHONE.matcher(line);
    String number = "";
    String rest = line;
    while (phone.find()) {
      if (phone.group().chars().filter(Character::isDigit).count() >= 6) {
        number = phone.group().strip();
        rest = line.substring(0, phone.start()) + "," + line.substring(phone.end());
      }
    }
    String name = "";
    List<String> where = new ArrayList<>();
    for (String part : rest.split("[,;]")) {
      String text = part.strip();
      boolean place = text.matches("(?i)(?:from|at)\\s.*") || text.matches(".*\\d.*");
      String said = TALK.matcher(text).replaceFirst("").strip();
      if (said.isEmpty()) {
        continue;
      }
      if (name.isEmpty() && !place) {
        name = said;
      } else {
        where.add(said);
      }
    }
    return new Whoever(name, number, String.join(", ", where));
  }
}
