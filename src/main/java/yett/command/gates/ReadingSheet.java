package yett.command.gates;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.SheetText;
import yett.figures.GateHistory.Past;
import yett.figures.GateHistory.Reading;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;

/**
 * Writes the readings of visits as a sheet, one line for each reading; {@link PastVisitSheet} reads
 * it back.
 */
final class ReadingSheet {
  static final List<String> HEAD = List.of("Gate", "Date", "Visit", "Measured", "Reading");

  private final RuleBase base;
  private final ZoneId zone = ZoneId.systemDefault();

  ReadingSheet(RuleBase base) {
    this.base = base;
  }

  String csv(List<Gates.Gate> gates) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEAD);
    for (Gates.Gate gate : gates) {
      for (Past past : gate.history().cases()) {
        past.readings().forEach(r -> row(gate.name(), past, r).ifPresent(rows::add));
      }
    }
    return SheetText.csv(rows);
  }

  private Optional<List<String>> row(String gate, Past past, Reading reading) {
    return measures(reading.check())
        .map(
            m ->
                List.of(
                    SheetText.name(gate),
                    LocalDate.ofInstant(reading.at(), zone).toString(),
                    past.inspection().map(InspectionKind::word).orElse("call"),
                    base.checks().get(reading.check()).name(),
                    m.show(reading.value())));
  }

  private Optional<Measures> measures(String check) {
    return Optional.ofNullable(base.checks().get(check)).flatMap(Check::measures);
  }
}
