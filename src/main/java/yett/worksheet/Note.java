package yett.worksheet;

import yett.knowledge.Caution;

/** A safety note of a calculation: what to mind while measuring for it or acting on it. */
public record Note(Caution.Word word, String text) {

  public static Note danger(String text) {
    return new Note(Caution.Word.DANGER, text);
  }

  public static Note warning(String text) {
    return new Note(Caution.Word.WARNING, text);
  }

  public static Note caution(String text) {
    return new Note(Caution.Word.CAUTION, text);
  }

  public static Note notice(String text) {
    return new Note(Caution.Word.NOTICE, text);
  }
}
