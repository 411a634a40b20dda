package yett.worksheet.earthing;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about earth rods. */
public final class EarthingWorksheets {
  public static final List<Worksheet> ALL =
      List.of(new EarthRodSheet(), new EarthRods(), new EarthReading());

  private EarthingWorksheets() {}
}
