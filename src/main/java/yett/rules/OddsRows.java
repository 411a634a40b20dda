package yett.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.knowledge.Names;
import yett.rules.Row.MovedOdds;

/** Reads rows with factors on the odds of causes: {@code chain-slack 1.5, chain-worn 1.3}. */
final class OddsRows implements RowKind {
  private static final String ODDS = "odds";
  private static final Pattern FACTOR = Pattern.compile("(\\S+)\\s+(\\d{1,3}(?:\\.\\d{1,4})?)");

  /** Smallest factor, as on the cards of histories. */
  private static final double LEAST = 0.01;

  private static final double MOST = 100;

  @Override
  public List<String> columns() {
    return List.of(ODDS);
  }

  @Override
  public List<String> possible() {
    return List.of(TableReader.HAPPENED, TableReader.NOT_HAPPENED);
  }

  @Override
  public Optional<Row> row(RowCells cells, Grounds grounds, Reason reason) {
    return cells
        .parsed(ODDS, text -> factors(text, cells))
        .map(factors -> new MovedOdds(factors, grounds, reason));
  }

  private static Map<String, Double> factors(String cell, RowCells cells) {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (String part : cell.split(",")) {
      Matcher matcher = FACTOR.matcher(part.strip());
      double factor = matcher.matches() ? Double.parseDouble(matcher.group(2)) : 0;
      if (factor < LEAST || factor > MOST) {
        throw new IllegalArgumentException(
            "\"" + part.strip() + "\" is not a cause with a factor; write \"chain-slack 1.5\"");
      }
      String cause = matcher.group(1);
      if (!cells.base().causes().containsKey(cause) && !cells.base().switchedOff(cause)) {
        throw new IllegalArgumentException(
            "\""
                + cause
                + "\" is not a known cause. "
                + Names.advice(cause, cells.base().causes().keySet()));
      }
      if (factors.put(cause, factor) != null) {
        throw new IllegalArgumentException("\"" + cause + "\" is here twice");
      }
    }
    return factors;
  }
}
