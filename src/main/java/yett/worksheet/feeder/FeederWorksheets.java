package yett.worksheet.feeder;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about feeder and supply. */
public final class FeederWorksheets {
  public static final List<Worksheet> ALL =
      List.of(new FeederDrop(), new FeederSize(), new FeederVoltage(), new SupplyTap());

  private FeederWorksheets() {}
}
