package yett.worksheet.battery;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about batteries and charging. */
public final class BatteryWorksheets {
  public static final List<Worksheet> ALL =
      List.of(
          new BatteryCharge(),
          new BatteryResistance(),
          new BatteryLoadTest(),
          new CapacityLeft(),
          new BatteryRuntime(),
          new BatteryCycles(),
          new ChargeVoltage(),
          new ChargerBalance(),
          new SolarBalance());

  private BatteryWorksheets() {}
}
