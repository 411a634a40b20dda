package yett.command.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** The gates for a spreadsheet: CSV, a line a gate. */
final class GateSheet {
  private static final ObjectWriter CSV = new CsvMapper().writer();

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
    List<String> head = new ArrayList<>(List.of("Gate", "Last visit", "Cases", "Open cases"));
    head.addAll(questions);
    rows.add(head);
    for (Gates.Gate gate : gates) {
      List<String> row = new ArrayList<>();
      row.add(harmless(gate.name()));
      row.add(gate.history().lastVisit().map(GateViews::day).orElse(""));
      row.add(String.valueOf(gate.history().cases().size() + gate.unread()));
      row.add(String.valueOf(gate.history().open()));
      Map<String, String> described = gate.told().map(views::described).orElse(Map.of());
      questions.forEach(q -> row.add(described.getOrDefault(q, "")));
      rows.add(row);
    }
    return CSV.writeValueAsString(rows);
  }

  /** A spreadsheet works out what begins so; a name is to stay a name. */
  private static String harmless(String name) {
    return name.matches("(?s)[=+\\-@].*") ? "'" + name : name;
  }
}
