package yett.worksheet.travel;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about travel, limits and marker. */
public final class TravelWorksheets {
  public static final List<Worksheet> ALL =
      List.of(
          new TravelTime(),
          new ChainTravel(),
          new LimitShift(),
          new MarkerPlace(),
          new MarkerSearchSheet());

  private TravelWorksheets() {}
}
