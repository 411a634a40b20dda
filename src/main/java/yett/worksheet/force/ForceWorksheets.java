package yett.worksheet.force;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about the force at an obstruction. */
public final class ForceWorksheets {
  public static final List<Worksheet> ALL = List.of(new ObstructionForceSheet());

  private ForceWorksheets() {}
}
