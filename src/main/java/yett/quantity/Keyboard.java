package yett.quantity;

import java.util.Map;

/**
 * Replaces the variants of a character that phones and keyboards produce, such as typographic
 * quotes and dashes, with the plain one.
 */
final class Keyboard {
  private static final Map<Integer, String> PLAIN =
      Map.ofEntries(
          Map.entry(0x00A0, " "), // no-break space
          Map.entry(0x2007, " "), // figure space
          Map.entry(0x2009, " "), // thin space
          Map.entry(0x202F, " "), // narrow no-break space
          Map.entry(0x2010, "-"), // hyphen
          Map.entry(0x2011, "-"), // non-breaking hyphen
          Map.entry(0x2012, "-"), // figure dash
          Map.entry(0x2013, "-"), // en dash
          Map.entry(0x2212, "-"), // minus
          Map.entry(0x2044, "/"), // fraction slash
          Map.entry(0x2215, "/"), // division slash
          Map.entry(0x2126, "Ω"), // ohm sign, to the Greek letter
          Map.entry(0x2103, "°C"), // degree Celsius in one sign
          Map.entry(0x2109, "°F"), // degree Fahrenheit in one sign
          Map.entry(0x00BA, "°"), // masculine ordinal, a look-alike
          Map.entry(0x02DA, "°"), // ring above, a look-alike
          Map.entry(0x2018, "'"),
          Map.entry(0x2019, "'"),
          Map.entry(0x2032, "'"), // prime
          Map.entry(0x00B4, "'"), // acute accent, a look-alike
          Map.entry(0x201C, "\""),
          Map.entry(0x201D, "\""),
          Map.entry(0x2033, "\""), // double prime
          Map.entry(0x22C5, "·"), // dot operator
          // The spaces keep a fraction apart from digits beside it.
          Map.entry(0x00BC, " 1/4 "),
          Map.entry(0x00BD, " 1/2 "),
          Map.entry(0x00BE, " 3/4 "),
          Map.entry(0x2153, " 1/3 "),
          Map.entry(0x2154, " 2/3 "),
          Map.entry(0x215B, " 1/8 "),
          Map.entry(0x215C, " 3/8 "),
          Map.entry(0x215D, " 5/8 "),
          Map.entry(0x215E, " 7/8 "));

  private Keyboard() {}

  static String plain(String typed) {
    StringBuilder plain = new StringBuilder();
    typed.codePoints().forEach(c -> plain.append(PLAIN.getOrDefault(c, Character.toString(c))));
    return plain.toString().strip().replaceAll(" +", " ");
  }
}
