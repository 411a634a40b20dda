package yett.worksheet;

import java.util.Locale;

/** Subjects of calculations, in the order in which they are listed. */
public enum Subject {
  FEEDER("Feeder and supply"),
  BATTERY("Batteries and charging"),
  CHAIN("Chain"),
  LEAF("Leaf"),
  TRAVEL("Travel"),
  FORCE("Force at an obstruction"),
  EARTHING("Earthing"),
  SENSING("Loops and sensors"),
  DUTY("Duty");

  private final String title;

  Subject(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }

  /** The name in results: {@code feeder}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
