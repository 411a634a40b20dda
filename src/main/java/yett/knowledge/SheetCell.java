package yett.knowledge;

import java.util.regex.Pattern;

/** Makes texts by people safe for a cell of a spreadsheet. */
public final class SheetCell {
  /**
   * The start of a formula: at the beginning of a cell, as any spreadsheet may split the text. The
   * separator of cells depends on the spreadsheet's country, not on the file.
   */
  private static final Pattern FORMULA =
      Pattern.compile("(^|[;,|\\t\\r\\n])([\\s\"]*+)(?=[=+\\-@\uff1d\uff0b\uff0d\uff20])");

  /** A negative number, with or without a unit. */
  private static final Pattern READING =
      Pattern.compile("[+\\-]\\d{1,9}([.,]\\d{1,9})?( ?[°%\\p{L}]{1,4})?");

  private SheetCell() {}

  /** The text, with a sign put before anything that a spreadsheet would take for a formula. */
  public static String words(String said) {
    return READING.matcher(said).matches() ? said : FORMULA.matcher(said).replaceAll("$1$2'");
  }
}
