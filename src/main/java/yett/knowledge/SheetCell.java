package yett.knowledge;

import java.util.regex.Pattern;

/** Words of people in a cell of a spreadsheet. */
public final class SheetCell {
  /**
   * Where a spreadsheet begins to work something out: at the beginning of a cell, wherever it
   * thinks one begins. Which signs part cells depends on its country, not on the file.
   */
  private static final Pattern FORMULA =
      Pattern.compile("(^|[;,|\\t\\r\\n])([\\s\"]*+)(?=[=+\\-@\uff1d\uff0b\uff0d\uff20])");

  /** Below nought, with its unit or without. */
  private static final Pattern READING =
      Pattern.compile("[+\\-]\\d{1,9}([.,]\\d{1,9})?( ?[°%\\p{L}]{1,4})?");

  private SheetCell() {}

  /** The same words, with a sign before what a spreadsheet would take for a formula. */
  public static String words(String said) {
    return READING.matcher(said).matches() ? said : FORMULA.matcher(said).replaceAll("$1$2'");
  }
}
