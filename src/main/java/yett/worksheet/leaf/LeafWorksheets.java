package yett.worksheet.leaf;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about the leaf: what moves it, stops it, and lets it run away. */
public final class LeafWorksheets {
  public static final List<Worksheet> ALL =
      List.of(
          new LeafForce(),
          new ScaleReading(),
          new WheelResistanceSheet(),
          new WindForce(),
          new MotorCurrent(),
          new LeafEnergy(),
          new StoppingDistance(),
          new LeafReleased());

  private LeafWorksheets() {}
}
