package yett.command.gates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.casebook.SiteName;
import yett.command.common.GateNames;
import yett.interview.site.SiteFacts;
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
   * The answers about each gate, by name and question. A question with an empty cell is left out.
   *
   * @throws yett.command.common.UsageException with all that is wrong, if anything is
   */
  Map<String, Map<String, String>> gates() {
    int gate = sheet.column("Gate");
    Map<Integer, SiteQuestion> questions = questions(gate);
    Map<String, Map<String, String>> gates = new LinkedHashMap<>();
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
      gates.put(name, told);
    }
    sheet.refuseIfWrong();
    return gates;
  }

  /**
   * What is known of a gate together with what the sheet says. What the sheet only repeats stays as
   * it was typed, or as nobody told it.
   *
   * @param before what is known; empty for a gate that nobody described yet
   */
  Map<String, String> with(Optional<Map<String, String>> before, Map<String, String> told) {
    Map<String, String> answers = new LinkedHashMap<>(before.orElse(Map.of()));
    Map<String, String> now = before.map(new SiteFacts(base)::answers).orElse(Map.of());
    told.forEach(
        (id, answer) -> {
          boolean repeats =
              now.containsKey(id) && same(base.siteQuestions().get(id), answer, now.get(id));
          if (!repeats) {
            answers.put(id, answer);
          }
        });
    return answers;
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
        if (!question.get().id().equals(SiteQuestion.TEMPERATURE_TODAY)) { // of one day only
          questions.put(i, question.get());
        }
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
