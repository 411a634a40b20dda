package yett.worksheet.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;
import yett.worksheet.battery.BatteryWorksheets;
import yett.worksheet.chain.ChainWorksheets;
import yett.worksheet.duty.DutyWorksheets;
import yett.worksheet.earthing.EarthingWorksheets;
import yett.worksheet.feeder.FeederWorksheets;
import yett.worksheet.force.ForceWorksheets;
import yett.worksheet.leaf.LeafWorksheets;
import yett.worksheet.sensing.SensingWorksheets;
import yett.worksheet.travel.TravelWorksheets;

/** Every calculation, by subject. */
public final class Catalogue {
  private static final List<Worksheet> ALL =
      Stream.of(
              FeederWorksheets.ALL,
              BatteryWorksheets.ALL,
              ChainWorksheets.ALL,
              LeafWorksheets.ALL,
              TravelWorksheets.ALL,
              ForceWorksheets.ALL,
              EarthingWorksheets.ALL,
              SensingWorksheets.ALL,
              DutyWorksheets.ALL)
          .flatMap(List::stream)
          .sorted(Comparator.comparing(Worksheet::subject))
          .toList();

  private Catalogue() {}

  public static List<Worksheet> all() {
    return ALL;
  }

  public static List<Worksheet> about(Subject subject) {
    return ALL.stream().filter(sheet -> sheet.subject() == subject).toList();
  }

  /** The calculation with this name; spaces count as hyphens. */
  public static Optional<Worksheet> named(String name) {
    String id = name.strip().replaceAll("[ _]+", "-");
    return ALL.stream().filter(sheet -> sheet.id().equalsIgnoreCase(id)).findFirst();
  }
}
