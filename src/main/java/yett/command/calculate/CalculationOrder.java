package yett.command.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the command: the name of a calculation, then inputs. Each input reaches up to the
 * one with the next equals sign.
 */
record CalculationOrder(String name, List<Typed> inputs) {
  private static final Pattern INPUT =
      Pattern.compile("([A-Za-z][A-Za-z0-9-]*)=(.*)", Pattern.DOTALL);

  record Typed(String name, String value) {}

  static CalculationOrder of(List<String> words) {
    List<String> name = new ArrayList<>();
    List<Typed> inputs = new ArrayList<>();
    for (String word : words) {
      Matcher input = INPUT.matcher(word);
      if (input.matches()) {
        inputs.add(new Typed(input.group(1), input.group(2)));
      } else if (inputs.isEmpty()) {
        name.add(word);
      } else {
        Typed last = inputs.remove(inputs.size() - 1);
        inputs.add(new Typed(last.name, last.value + " " + word));
      }
    }
    return new CalculationOrder(
        String.join(" ", name),
        inputs.stream().map(i -> new Typed(i.name, unquoted(i.value.strip()))).toList());
  }

  /**
   * The value without quotes. At the program's own prompt, quotes after an equals sign are still
   * part of the word.
   */
  private static String unquoted(String value) {
    return value.length() > 1 && value.startsWith("\"") && value.endsWith("\"")
        ? value.substring(1, value.length() - 1)
        : value;
  }
}
