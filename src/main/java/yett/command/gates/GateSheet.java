package yett.command.gates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yett.command.common.SheetText;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Writes the gates as CSV for a spreadsheet, one line for each gate. */
final class GateSheet {
  private final RuleBase base;
  private final GateViews views;

  /** Whether a question that nobody answered has the usual answer, or an empty cell. */
  private final boolean filled;

  private GateSheet(RuleBase base, boolean filled) {
    this.base = base;
    this.views = new GateViews(base);
    this.filled = filled;
  }

  /** For people: every question has an answer, the usual one where nobody gave another. */
  static GateSheet toRead(RuleBase base) {
    return new GateSheet(base, true);
  }

  /** For another casebook: only what was entered. */
  static GateSheet toCarry(RuleBase base) {
    return new GateSheet(base, false);
  }

  String csv(List<Gates.Gate> gates) {
    List<String> questions =
        base.siteQuestions().values().stream()
            .filter(q -> !q.id().equals(SiteQuestion.TEMPERATURE_TODAY)) // of one day only
            .map(SiteQuestion::name)
            .toList();
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
      Map<String, String> told = gate.told().orElse(Map.of());
      Map<String, String> described = gate.told().map(views::described).orElse(new HashMap<>());
      if (!filled) {
        described.keySet().retainAll(names(told));
      }
      questions.forEach(q -> row.add(SheetText.name(described.getOrDefault(q, ""))));
      rows.add(row);
    }
    return SheetText.csv(rows);
  }

  private Set<String> names(Map<String, String> told) {
    return told.keySet().stream()
        .filter(base.siteQuestions()::containsKey)
        .map(id -> base.siteQuestions().get(id).name())
        .collect(Collectors.toSet());
  }
}
