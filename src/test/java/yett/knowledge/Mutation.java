package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Slips of the pen, drawn at random. */
final class Mutation {
  private static final List<String> VALUES =
      List.of("[]", "{}", "~", "-1", "1e400", ".nan", "\"\"", "[[]]", "{a: {b: c}}", "yes", "a: b");
  private static final Pattern NUMBER = Pattern.compile("\\d+\\.?\\d*");
  private static final Pattern NAME = Pattern.compile("[a-z]+(?:-[a-z]+)+");
  private static final Pattern MARK = Pattern.compile("[:,{}\\[\\]\"-]");

  private final Random random;
  private final List<String> lines;
  private final int at;
  private final int other;

  private Mutation(String text, Random random) {
    this.random = random;
    this.lines = new ArrayList<>(text.lines().toList());
    this.at = random.nextInt(lines.size());
    this.other = random.nextInt(lines.size());
  }

  static String of(String text, Random random) {
    if (random.nextInt(12) == 0) {
      return text.substring(0, random.nextInt(text.length()));
    }
    Mutation mutation = new Mutation(text, random);
    mutation.apply(random.nextInt(11));
    return String.join("\n", mutation.lines) + "\n";
  }

  private void apply(int kind) {
    String line = lines.get(at);
    switch (kind) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, line);
      case 2 -> lines.set(at, lines.set(other, line));
      case 3 -> swapValues();
      case 4 -> lines.set(at, "  " + line);
      case 5 -> lines.set(at, line.replaceFirst("^ +", ""));
      case 6 -> lines.set(at, line.replaceFirst(":.*", "") + ": " + any(VALUES));
      case 7 -> replace(NUMBER, List.of("-3", "0", "1.7", "40", "1e9", "0.0.1", "often"));
      case 8 -> replace(NAME, List.of("chain-slak", "battery", "charger-dead", "cover-off", "x"));
      case 9 -> replace(MARK, List.of("", " ", "\t", "::"));
      default -> {
        int cut = line.isEmpty() ? 0 : random.nextInt(line.length());
        int end = Math.min(line.length(), cut + 1 + random.nextInt(3));
        lines.set(at, line.substring(0, cut) + line.substring(end));
      }
    }
  }

  private void swapValues() {
    String[] one = lines.get(at).split(": ", 2);
    String[] two = lines.get(other).split(": ", 2);
    if (one.length == 2 && two.length == 2) {
      lines.set(at, one[0] + ": " + two[1]);
      lines.set(other, two[0] + ": " + one[1]);
    }
  }

  private void replace(Pattern what, List<String> by) {
    String line = lines.get(at);
    List<MatchResult> found = what.matcher(line).results().toList();
    if (!found.isEmpty()) {
      MatchResult one = found.get(random.nextInt(found.size()));
      lines.set(at, line.substring(0, one.start()) + any(by) + line.substring(one.end()));
    }
  }

  private String any(List<String> words) {
    return words.get(random.nextInt(words.size()));
  }
}
