package yett.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * The changes to cards in a table that was edited in a spreadsheet. Only cells that differ from the
 * cards are written; the rest of the text stays.
 *
 * @param files contents by path, changed and unchanged; all unchanged if there is any problem
 * @param changed paths of the changed files
 * @param cells description of each change
 * @param problems one line each, with its cell
 */
public record CauseTableEdit(
    SortedMap<String, String> files,
    List<String> changed,
    List<String> cells,
    List<String> problems) {
  /** Largest difference that counts as rounding, not as an edit. */
  private static final double SAME = 2e-6;

  private static final double SUM = 0.001;

  /** Most lines that are read; the file may come from anywhere. */
  private static final int MOST_LINES = 5_000;

  /** Longest figure or word for a chance (characters). */
  private static final int LONGEST_FIGURE = 40;

  private static final int MOST_PROBLEMS = 100;

  /**
   * Compares an edited table with the cards.
   *
   * @param table of the present cards
   * @param csv the edited table
   * @param mine which of the paths may be written to
   */
  public static CauseTableEdit of(
      CauseTable table, String csv, SortedMap<String, String> files, Predicate<String> mine) {
    return new Reader(table, new CardEdit(files, mine)).read(csv, files);
  }

  private static final class Reader {
    private final CauseTable table;
    private final CardEdit edit;
    private final TreeSet<String> changed = new TreeSet<>();
    private final List<String> cells = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private List<String> head = List.of();
    private boolean decimalComma;

    Reader(CauseTable table, CardEdit edit) {
      this.table = table;
      this.edit = edit;
    }

    CauseTableEdit read(String csv, SortedMap<String, String> files) {
      List<List<String>> lines = lines(csv);
      if (problems.isEmpty()) {
        head = lines.isEmpty() ? List.of() : lines.get(0).stream().map(String::strip).toList();
        head();
      }
      if (problems.isEmpty()) {
        Map<String, Cause> byId = new LinkedHashMap<>();
        table.causes().forEach(c -> byId.put(c.id(), c));
        TreeSet<String> seen = new TreeSet<>();
        for (int i = 1; i < lines.size() && problems.size() < MOST_PROBLEMS; i++) {
          line(lines.get(i), i + 1, byId, seen);
        }
      }
      return problems.isEmpty()
          ? new CauseTableEdit(edit.files(), List.copyOf(changed), cells, List.of())
          : new CauseTableEdit(files, List.of(), List.of(), List.copyOf(problems));
    }

    /**
     * Splits the text into cells. In some countries spreadsheets separate cells by semicolons and
     * write decimal commas.
     */
    private List<List<String>> lines(String csv) {
      String text = csv.startsWith("\ufeff") ? csv.substring(1) : csv;
      String first = text.lines().findFirst().orElse("");
      decimalComma = first.startsWith(CauseTable.CAUSE + ";");
      CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(decimalComma ? ';' : ',');
      try (MappingIterator<List<String>> rows =
          new CsvMapper()
              .readerForListOf(String.class)
              .with(CsvReadFeature.WRAP_AS_ARRAY)
              .with(schema)
              .readValues(text)) {
        List<List<String>> lines = new ArrayList<>();
        while (rows.hasNext()) {
          if (lines.size() == MOST_LINES) {
            problems.add(
                "line "
                    + MOST_LINES
                    + ": a table has no more lines than this. Take the others away.");
            return List.of();
          }
          lines.add(rows.next());
        }
        return lines;
      } catch (JacksonException e) {
        problems.add(
            "line "
                + (e.getLocation() == null ? 1 : e.getLocation().getLineNr())
                + ": this is not a line of a table. Save it as CSV, in UTF-8.");
        return List.of();
      }
    }

    private void head() {
      if (head.isEmpty() || !head.get(0).equals(CauseTable.CAUSE)) {
        problems.add("A1: the first column has to be \"cause\". Leave the first line as it was.");
        return;
      }
      for (int c = 1; c < head.size() && problems.size() < MOST_PROBLEMS; c++) {
        String name = head.get(c);
        boolean known =
            name.equals(CauseTable.NAME)
                || name.equals(CauseTable.PRIOR)
                || table.columns().containsKey(name);
        if (!known || head.indexOf(name) < c) {
          problems.add(
              CauseTable.cell(c, 1)
                  + ": "
                  + (known ? "a second column \"" : "there is no column \"")
                  + shown(name)
                  + "\". "
                  + (known ? "Take one away." : advice(shown(name))));
        }
      }
    }

    private String advice(String name) {
      return Names.advice(name, List.copyOf(table.columns().keySet()));
    }

    private void line(
        List<String> line, int number, Map<String, Cause> byId, TreeSet<String> seen) {
      String id = line.isEmpty() ? "" : line.get(0).strip();
      if (id.isEmpty() && line.stream().allMatch(String::isBlank)) {
        return;
      }
      Cause cause = byId.get(id);
      if (cause == null || !seen.add(id)) {
        problems.add(
            CauseTable.cell(0, number)
                + ": "
                + (cause == null ? "there is no cause \"" : "a second line for \"")
                + shown(id)
                + "\" here. "
                + (cause == null
                    ? Names.advice(shown(id), List.copyOf(byId.keySet()))
                    : "Take one of them away."));
        return;
      }
      Map<String, Double> edited = new LinkedHashMap<>();
      for (int c = 1; c < head.size(); c++) {
        String typed = c < line.size() ? line.get(c).strip() : "";
        if (!head.get(c).equals(CauseTable.NAME)) {
          cell(cause, head.get(c), typed, CauseTable.cell(c, number), edited);
        }
      }
      write(cause, edited, number);
    }

    private void cell(
        Cause cause, String column, String typed, String cell, Map<String, Double> edited) {
      Optional<Double> now =
          column.equals(CauseTable.PRIOR)
              ? Optional.of(cause.prior())
              : table.figure(cause, table.columns().get(column));
      if (typed.isEmpty() && now.isEmpty()) {
        return;
      }
      OptionalDouble figure = figure(typed);
      if (typed.isEmpty()) {
        problems.add(
            cell
                + ": "
                + column
                + " of "
                + cause.id()
                + " was there and is empty. A card loses a row only by hand; write "
                + CauseTable.shown(now.get())
                + " again.");
      } else if (figure.isEmpty()) {
        problems.add(
            cell
                + ": \""
                + shown(typed)
                + "\" is not a probability. Write a figure from 0 to 1, or a word: "
                + LikelihoodWords.list()
                + ".");
      } else if (now.isEmpty()) {
        problems.add(
            cell
                + ": no card says anything of "
                + column
                + " and "
                + cause.id()
                + " yet. Write the row on a card first; then it can be edited here.");
      } else if (Math.abs(figure.getAsDouble() - now.get()) > SAME) {
        edited.put(column, figure.getAsDouble());
      }
    }

    private static String shown(String typed) {
      return typed.length() <= LONGEST_FIGURE ? typed : typed.substring(0, LONGEST_FIGURE) + "…";
    }

    private OptionalDouble figure(String typed) {
      if (typed.length() > LONGEST_FIGURE) {
        return OptionalDouble.empty();
      }
      OptionalDouble word = LikelihoodWords.chance(typed);
      if (word.isPresent()) {
        return word;
      }
      String plain = decimalComma ? typed.replace(',', '.') : typed;
      if (!plain.matches("\\d*\\.?\\d+([eE]-?\\d{1,2})?")) {
        return OptionalDouble.empty();
      }
      double figure = Double.parseDouble(plain);
      return figure >= 0 && figure <= 1 ? OptionalDouble.of(figure) : OptionalDouble.empty();
    }

    private void write(Cause cause, Map<String, Double> edited, int number) {
      TreeSet<String> rows = new TreeSet<>();
      edited.forEach(
          (column, figure) -> {
            if (column.equals(CauseTable.PRIOR)) {
              kept(edit.prior(cause.id(), figure), cause, column, figure, number);
            } else if (table.columns().get(column).check().isEmpty()) {
              String effect = table.columns().get(column).effect();
              kept(edit.leadsTo(cause.id(), effect, figure), cause, column, figure, number);
            } else if (rows.add(table.columns().get(column).check().get().id())) {
              row(cause, table.columns().get(column).check().get(), edited, number);
            }
          });
    }

    private void row(Cause cause, Check check, Map<String, Double> edited, int number) {
      double[] row = check.likelihood().get(cause.id()).clone();
      List<String> columns = table.columnsOf(check);
      for (String column : columns) {
        int outcome = table.columns().get(column).outcome();
        row[outcome] = edited.getOrDefault(column, row[outcome]);
      }
      String first = columns.stream().filter(edited::containsKey).findFirst().orElseThrow();
      if (check.kind() == Check.Kind.COMPLAINT) {
        row[0] = 1 - row[1];
      }
      double sum = Arrays.stream(row).sum();
      if (Math.abs(sum - 1) > SUM) {
        problems.add(
            CauseTable.cell(head.indexOf(first), number)
                + ": the outcomes of "
                + check.id()
                + " of "
                + cause.id()
                + " add up to "
                + CauseTable.shown(sum)
                + ". All of them together are 1: "
                + String.join(", ", columns)
                + ".");
        return;
      }
      List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
      Optional<String> file = edit.row(check.id(), cause.id(), outcomes, row);
      for (String column : columns) {
        if (edited.containsKey(column)) {
          kept(file, cause, column, edited.get(column), number);
        }
      }
    }

    private void kept(
        Optional<String> file, Cause cause, String column, double figure, int number) {
      if (file.isEmpty()) {
        problems.add(
            CauseTable.cell(head.indexOf(column), number)
                + ": the card with "
                + column
                + " of "
                + cause.id()
                + " is not in this folder. Edit the folder that it is in.");
        return;
      }
      changed.add(file.get());
      cells.add(cause.id() + ", " + column + ": " + CauseTable.shown(figure));
    }
  }
}
