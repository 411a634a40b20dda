package yett.knowledge;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table of causes against complaints, looks and effects for a spreadsheet. It holds what is
 * written on cards, not what follows from it.
 */
public final class CauseTable {
  static final String CAUSE = "cause";
  static final String NAME = "name";
  static final String PRIOR = "prior";

  private final RuleBase base;
  private final Map<String, Column> columns = new LinkedHashMap<>();
  private final List<Cause> causes;

  /**
   * One column.
   *
   * @param check whose row it belongs to; empty for an effect
   * @param outcome position among those of the check
   * @param effect id; empty for a check
   */
  record Column(Optional<Check> check, int outcome, String effect) {}

  /**
   * @param which causes to include
   */
  public CauseTable(RuleBase base, Predicate<Cause> which) {
    this.base = base;
    this.causes =
        base.causes().values().stream()
            .filter(c -> !c.id().equals(Cause.NOT_IN_RULE_BASE))
            .filter(which)
            .toList();
    for (Effect effect : base.effects().values()) {
      if (causes.stream().anyMatch(c -> c.leadsTo().containsKey(effect.id()))) {
        columns.put("effect " + effect.id(), new Column(Optional.empty(), 0, effect.id()));
      }
    }
    for (Check check : base.checks().values()) {
      if (causes.stream().anyMatch(c -> own(c, check))) {
        columns(check);
      }
    }
  }

  private void columns(Check check) {
    if (check.kind() == Check.Kind.COMPLAINT) {
      columns.put("complaint " + check.id(), new Column(Optional.of(check), 1, ""));
      return;
    }
    String kind = check.kind() == Check.Kind.PROOF ? "proof " : "check ";
    for (int o = 0; o < check.outcomes().size(); o++) {
      columns.put(
          kind + check.id() + " " + check.outcomes().get(o).id(),
          new Column(Optional.of(check), o, ""));
    }
  }

  /**
   * Whether a card has a row for the cause on this check; otherwise the row may follow from
   * effects.
   */
  boolean own(Cause cause, Check check) {
    return own(base, cause, check);
  }

  /**
   * Whether a card of an add-on says something of a cause: its own card, or a check with a row of
   * it. Only these lines can be changed in the folder of the add-on.
   */
  public static boolean isOf(AddOn addOn, Cause cause, RuleBase base) {
    Set<String> cards =
        Stream.concat(addOn.adds().stream(), addOn.replaces().stream())
            .map(card -> card.substring(card.indexOf(' ') + 1))
            .collect(Collectors.toSet());
    return cards.contains(cause.id())
        || base.checks().values().stream()
            .anyMatch(c -> cards.contains(c.id()) && own(base, cause, c));
  }

  private static boolean own(RuleBase base, Cause cause, Check check) {
    return check.likelihood().containsKey(cause.id())
        && base.effectRows().behind(cause, check).isEmpty();
  }

  public boolean isEmpty() {
    return causes.isEmpty();
  }

  Map<String, Column> columns() {
    return columns;
  }

  List<Cause> causes() {
    return causes;
  }

  /** The figure in a cell; empty where no card gives one. */
  Optional<Double> figure(Cause cause, Column column) {
    if (column.check().isEmpty()) {
      return Optional.ofNullable(cause.leadsTo().get(column.effect()));
    }
    Check check = column.check().get();
    return own(cause, check)
        ? Optional.of(check.likelihood().get(cause.id())[column.outcome()])
        : Optional.empty();
  }

  /** The table as CSV (RFC 4180), one line for each cause. */
  public String csv() {
    return csv(rows());
  }

  /** The table as cells, the heading first. */
  public List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(CAUSE, NAME, PRIOR));
    head.addAll(columns.keySet());
    rows.add(head);
    for (Cause cause : causes) {
      List<String> row =
          new ArrayList<>(List.of(cause.id(), SheetCell.words(cause.name()), shown(cause.prior())));
      columns.values().forEach(c -> row.add(figure(cause, c).map(CauseTable::shown).orElse("")));
      rows.add(row);
    }
    return rows;
  }

  /** Cells as CSV. */
  public static String csv(List<List<String>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(CauseTable::quoted).collect(Collectors.joining(",")) + "\r\n")
        .collect(Collectors.joining());
  }

  static String shown(double figure) {
    return new BigDecimal(figure).round(new MathContext(6)).stripTrailingZeros().toPlainString();
  }

  private static String quoted(String words) {
    boolean plain = words.chars().noneMatch(c -> c == ',' || c == ';' || c == '"' || c < ' ');
    return plain ? words : "\"" + words.replace("\"", "\"\"") + "\"";
  }

  /** The spreadsheet name of a cell: column 0 of line 1 is A1. */
  static String cell(int column, int line) {
    StringBuilder letters = new StringBuilder();
    for (int left = column; left >= 0; left = left / 26 - 1) {
      letters.insert(0, (char) ('A' + left % 26));
    }
    return letters.toString() + line;
  }

  /** The columns of one check, in the order of its outcomes. */
  List<String> columnsOf(Check check) {
    return columns.entrySet().stream()
        .filter(e -> e.getValue().check().filter(c -> c.id().equals(check.id())).isPresent())
        .map(Map.Entry::getKey)
        .toList();
  }
}
