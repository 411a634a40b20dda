package yett.worksheet.sensing;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about loops, beams and edges. */
public final class SensingWorksheets {
  public static final List<Worksheet> ALL =
      List.of(
          new LoopInductance(),
          new LoopTurns(),
          new LoopInsulation(),
          new BeamMargin(),
          new BeamAim(),
          new EdgeCheck());

  private SensingWorksheets() {}
}
