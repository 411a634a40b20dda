package yett.worksheet.duty;

import java.util.List;
import yett.worksheet.Worksheet;

/** Those about how hard an operator is worked. */
public final class DutyWorksheets {
  public static final List<Worksheet> ALL = List.of(new DutyCycles(), new DutyHeat());

  private DutyWorksheets() {}
}
