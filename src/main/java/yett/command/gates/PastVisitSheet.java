package yett.command.gates;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.desk.PastVisit;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.quantity.ReadingException;

/** Reads visits of the past from a sheet of readings that was typed in from paper. */
record PastVisitSheet(RuleBase base) {

  /**
   * The visits of a sheet. Readings taken on a call are skipped, because they do not show what the
   * gate reads in order.
   *
   * @throws yett.command.common.UsageException with all that is wrong, if anything is
   */
  List<PastVisit> visits(SheetFile sheet, List<String> gates, LocalDate today) {
    int[] columns = ReadingSheet.HEAD.stream().mapToInt(sheet::column).toArray();
    Map<PastVisit, Map<String, Answer.Read>> visits = new LinkedHashMap<>();
    for (SheetFile.Row row : sheet.rows()) {
      if (row.cell(columns[2]).equalsIgnoreCase("call")) {
        continue;
      }
      Optional<String> gate = gate(sheet, row, columns[0], gates);
      Optional<LocalDate> day = day(sheet, row, columns[1], today);
      Optional<InspectionKind> kind = kind(sheet, row, columns[2]);
      Optional<Check> check = check(sheet, row, columns[3]);
      Optional<Answer.Read> read = check.flatMap(c -> read(sheet, row, columns[4], c));
      if (gate.isPresent() && day.isPresent() && kind.isPresent() && read.isPresent()) {
        PastVisit visit = new PastVisit(gate.get(), day.get(), kind.get(), Map.of());
        Map<String, Answer.Read> readings =
            visits.computeIfAbsent(visit, v -> new LinkedHashMap<>());
        if (readings.putIfAbsent(check.get().id(), read.get()) != null) {
          sheet.problem(row, columns[3], "it was read on that visit already, in a line above.");
        }
      }
    }
    sheet.refuseIfWrong();
    return visits.entrySet().stream().map(e -> e.getKey().with(e.getValue())).toList();
  }

  private static Optional<String> gate(
      SheetFile sheet, SheetFile.Row row, int column, List<String> gates) {
    String name = SheetFile.name(row.cell(column));
    if (!gates.contains(name)) {
      sheet.problem(
          row,
          column,
          "there is no gate \"" + name + "\". " + Names.advice(name, gates) + " New: gates add.");
    }
    return Optional.of(name).filter(gates::contains);
  }

  private static Optional<LocalDate> day(
      SheetFile sheet, SheetFile.Row row, int column, LocalDate today) {
    try {
      LocalDate day = LocalDate.parse(row.cell(column));
      if (!day.isAfter(today) && day.getYear() >= 1980) {
        return Optional.of(day);
      }
    } catch (DateTimeParseException e) {
      // Reported below, with the example.
    }
    sheet.problem(
        row, column, "\"" + row.cell(column) + "\" is not a past date such as 2024-03-02.");
    return Optional.empty();
  }

  private static Optional<InspectionKind> kind(SheetFile sheet, SheetFile.Row row, int column) {
    for (InspectionKind kind : InspectionKind.values()) {
      if (kind.word().equalsIgnoreCase(row.cell(column))) {
        return Optional.of(kind);
      }
    }
    sheet.problem(
        row,
        column,
        "write commissioning or service if the paper says that the gate passed on that"
            + " day, call if somebody was there for a fault; readings from calls are skipped.");
    return Optional.empty();
  }

  private Optional<Check> check(SheetFile sheet, SheetFile.Row row, int column) {
    String wanted = row.cell(column);
    Optional<Check> check =
        base.ordinaryChecks()
            .filter(Check::measured)
            .filter(
                c ->
                    c.name().equalsIgnoreCase(wanted)
                        || c.id().equalsIgnoreCase(wanted.replace(' ', '-')))
            .findFirst();
    if (check.isEmpty()) {
      List<String> names = base.ordinaryChecks().filter(Check::measured).map(Check::name).toList();
      sheet.problem(
          row,
          column,
          "nothing measured is called \"" + wanted + "\". " + Names.advice(wanted, names));
    }
    return check;
  }

  private static Optional<Answer.Read> read(
      SheetFile sheet, SheetFile.Row row, int column, Check check) {
    Measures measures = check.measures().orElseThrow();
    String typed = row.cell(column);
    try {
      double value = measures.parse(typed);
      if (measures.possible(value)) {
        return Optional.of(new Answer.Read(typed, value));
      }
      sheet.problem(
          row,
          column,
          measures.show(value)
              + " cannot be: from "
              + measures.show(measures.least())
              + " to "
              + measures.show(measures.most())
              + ".");
    } catch (ReadingException e) {
      sheet.problem(row, column, e.getMessage());
    }
    return Optional.empty();
  }
}
