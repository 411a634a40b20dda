package yett.worksheet.duty;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about the load of an operator over time. */
public final class DutyWorksheets {
  public static final List<Worksheet> ALL = List.of(new DutyCycles(), new DutyHeat());

  private DutyWorksheets() {}
}
