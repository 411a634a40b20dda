package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Decibans;
import yett.knowledge.Check;

/**
 * A row said in sentences, so that whoever wrote it sees what it makes of a look: how often each
 * outcome is there, and what seeing it will say, in decibans, against a sound gate and against the
 * causes that look like it.
 */
final class RowInSentences {
  /** Less than this says next to nothing; for a remark on what speaks against its own cause. */
  private static final double NOTHING = 0.5;

  private final Check check;
  private final Map<String, double[]> others = new LinkedHashMap<>();

  /**
   * @param like causes that it must be told from
   */
  RowInSentences(Check check, Collection<String> like) {
    this.check = check;
    others.put("a sound gate", check.otherwise());
    for (String cause : like) {
      others.put(cause, check.likelihood().getOrDefault(cause, check.otherwise()));
    }
  }

  /**
   * @param row what the new cause shows
   * @param named outcomes that were named; what is left follows the sound gate and says little
   */
  List<String> lines(double[] row, Collection<String> named) {
    List<Integer> said =
        IntStream.range(0, row.length)
            .filter(o -> named.contains(check.outcomes().get(o).id()))
            .boxed()
            .toList();
    List<String> lines = new ArrayList<>();
    if (check.kind() == Check.Kind.COMPLAINT) {
      said.forEach(
          o ->
              lines.add(
                  name(o)
                      + " "
                      + hundred(row[o])
                      + " of a hundred times: "
                      + against(row, o)
                      + "."));
    } else {
      lines.add("Of a hundred such gates: " + shares(row) + ".");
      said.forEach(o -> lines.add("Seen " + name(o) + ": " + against(row, o) + "."));
    }
    boolean speaksForIt = said.stream().anyMatch(o -> decibans(row, check.otherwise(), o) > 0);
    said.stream()
        .filter(o -> o > 0 || !speaksForIt) // the ordinary beside what tells is no slip
        .filter(o -> decibans(row, check.otherwise(), o) <= -NOTHING)
        .forEach(o -> lines.add(against(o)));
    return lines;
  }

  /** To the tenth that is shown; what is nought has no sign of its own. */
  private static double rounded(double decibans) {
    return Math.round(10 * decibans) / 10.0;
  }

  private String against(int outcome) {
    return "Mind: "
        + name(outcome)
        + " speaks against the new cause, for a sound gate shows it more often ("
        + hundred(check.otherwise()[outcome])
        + " of a hundred).";
  }

  private String shares(double[] row) {
    return IntStream.range(0, row.length)
        .mapToObj(o -> name(o) + " " + hundred(row[o]))
        .collect(Collectors.joining(", "));
  }

  private String name(int outcome) {
    String id = check.outcomes().get(outcome).id();
    return check.kind() == Check.Kind.CHECK ? id : check.id() + " " + id;
  }

  private String against(double[] row, int outcome) {
    return others.entrySet().stream()
        .map(
            other ->
                String.format(
                    Locale.ROOT,
                    "%+.1f dB against %s",
                    rounded(decibans(row, other.getValue(), outcome)),
                    other.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static String hundred(double chance) {
    return String.format(Locale.ROOT, chance > 0 && chance < 0.095 ? "%.1f" : "%.0f", 100 * chance);
  }

  private static double decibans(double[] row, double[] other, int outcome) {
    return Decibans.ofSeeing(row[outcome], other[outcome], row.length);
  }
}
