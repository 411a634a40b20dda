package yett.command.gates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.casebook.SiteName;
import yett.command.common.GateNames;
import yett.interview.SiteFacts;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.Wording;

/**
 * Reads gates from a sheet with a line for each gate and a column for each question, as {@link
 * GateSheet} writes it.
 *
 * @param known names of the gates of the casebook
 */
record GateImport(RuleBase base, SheetFile sheet, List<String> known) {
  /** Columns of {@link GateSheet} that say nothing about the gate itself and are skipped. */
  private static final List<String> PASSED_OVER =
      List.of("last visit", "cases", "open cases", "retired");

  /**
   * The answers about each gate, by name and question. A question with an empty cell is left out. A
   * cell with the usual answer gives an empty answer, which replaces an earlier one.
   *
   * @throws yett.command.common.UsageException with all that is wrong, if anything is
   */
  Map<String, Map<String, Optional<String>>> gates() {
    int gate = sheet.column("Gate");
    Map<Integer, SiteQuestion> questions = questions(gate);
    Map<String, Map<String, Optional<String>>> gates = new LinkedHashMap<>();
    for (SheetFile.Row row : sheet.rows()) {
      String name = SheetFile.name(row.cell(gate));
      nameProblem(name, gates).ifPresent(p -> sheet.problem(row, gate, p));
      Map<String, String> told = new LinkedHashMap<>();
      questions.forEach(
          (column, question) -> {
            String cell = row.cell(column);
            if (!cell.isEmpty()) {
              answer(question, cell)
                  .ifPresentOrElse(
                      a -> told.put(question.id(), a),
                      () -> sheet.problem(row, column, refusal(question, cell)));
            }
          });
      gates.put(name, withoutUsual(told));
    }
    sheet.refuseIfWrong();
    return gates;
  }

  private Map<String, Optional<String>> withoutUsual(Map<String, String> told) {
    SiteFacts facts = new SiteFacts(base);
    Map<String, Optional<String>> fresh = new LinkedHashMap<>();
    told.forEach(
        (id, answer) -> {
          SiteQuestion question = base.siteQuestions().get(id);
          boolean known = question.follows().map(told::containsKey).orElse(true);
          String usual = facts.usual(question, told);
          fresh.put(id, Optional.of(answer).filter(a -> !known || !same(question, a, usual)));
        });
    return fresh;
  }

  /**
   * Whether the answers are equal, also if the sheet has them in other units and rounded as shown.
   */
  private static boolean same(SiteQuestion question, String answer, String usual) {
    return question.same(answer, usual)
        || Wording.site(question, answer).equals(Wording.site(question, usual));
  }

  private Map<Integer, SiteQuestion> questions(int gate) {
    Map<Integer, SiteQuestion> questions = new LinkedHashMap<>();
    List<String> head = sheet.head();
    for (int i = 0; i < head.size(); i++) {
      String column = head.get(i);
      if (i == gate || PASSED_OVER.contains(column.toLowerCase(Locale.ROOT))) {
        continue;
      }
      Optional<SiteQuestion> question =
          base.siteQuestions().values().stream()
              .filter(q -> q.id().equalsIgnoreCase(column) || q.name().equalsIgnoreCase(column))
              .findFirst();
      if (question.isPresent()) {
        questions.put(i, question.get());
      } else {
        List<String> names = new ArrayList<>(base.siteQuestions().keySet());
        sheet.problemInHead(
            i,
            "no question about a gate is called \""
                + column
                + "\". "
                + Names.advice(column, names));
      }
    }
    return questions;
  }

  private Optional<String> nameProblem(String name, Map<String, ?> before) {
    if (name.isEmpty() || !GateNames.isName(name)) {
      return Optional.of(name.isEmpty() ? GateNames.NO_NAME : GateNames.refusal(name));
    }
    if (before.containsKey(name)) {
      return Optional.of("the gate \"" + name + "\" is in the sheet twice.");
    }
    String letters = SiteName.letters(name);
    return known.contains(name)
        ? Optional.empty()
        : known.stream()
            .filter(k -> !letters.isEmpty() && SiteName.letters(k).equals(letters))
            .findFirst()
            .map(k -> "there is a gate \"" + k + "\" already. Write the name in the same way.");
  }

  private static Optional<String> answer(SiteQuestion question, String cell) {
    return question.choices().entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(cell) || e.getValue().equalsIgnoreCase(cell))
        .map(Map.Entry::getKey)
        .findFirst()
        .or(() -> Optional.of(typed(cell)).filter(c -> SiteFacts.canBe(question, c)));
  }

  /** The cell without the value in other units that a sheet has after it: "8 m (26.25 ft)". */
  private static String typed(String cell) {
    return cell.replaceFirst(" \\([^()]*\\)$", "");
  }

  private static String refusal(SiteQuestion question, String cell) {
    return "\"" + cell + "\" is not an answer. " + GateAnswers.possible(question);
  }
}
