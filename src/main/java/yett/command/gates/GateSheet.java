package yett.command.gates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.command.common.SheetText;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Writes the gates as CSV for a spreadsheet, one line for each gate. */
final class GateSheet {
  private final RuleBase base;
  private final GateViews views;

  GateSheet(RuleBase base) {
    this.base = base;
    this.views = new GateViews(base);
  }

  String csv(List<Gates.Gate> gates) {
    List<String> questions =
        base.siteQuestions().values().stream().map(SiteQuestion::name).toList();
    List<List<String>> rows = new ArrayList<>();
    List<String> head =
        new ArrayList<>(List.of("Gate", "Last visit", "Cases", "Open cases", "Retired"));
    questions.forEach(q -> head.add(SheetText.name(q)));
    rows.add(head);
    for (Gates.Gate gate : gates) {
      List<String> row = new ArrayList<>();
      row.add(SheetText.name(gate.name()));
      row.add(gate.history().lastVisit().map(GateViews::day).orElse(""));
      row.add(String.valueOf(gate.history().cases().size() + gate.unread()));
      row.add(String.valueOf(gate.history().open()));
      row.add(gate.retired().map(LocalDate::toString).orElse(""));
      Map<String, String> described = gate.told().map(views::described).orElse(Map.of());
      questions.forEach(q -> row.add(SheetText.name(described.getOrDefault(q, ""))));
      rows.add(row);
    }
    return SheetText.csv(rows);
  }
}
