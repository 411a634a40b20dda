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
 * Writes a row in sentences, so that its author sees what it means: how often each outcome is seen,
 * and how much evidence it is, in decibans, against a sound gate and against the causes that look
 * alike.
 */
final class RowInSentences {
  /** Less evidence than this is ignored when remarking on what speaks against its own cause. */
  private static final double NOTHING = 0.5;

  private final Check check;
  private final Map<String, double[]> others = new LinkedHashMap<>();

  /**
   * @param like causes from which it must be told
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
   * @param named outcomes that were named; the others follow the sound gate and are hardly evidence
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
        .filter(o -> o > 0 || !speaksForIt) // naming the ordinary outcome too is no mistake
        .filter(o -> decibans(row, check.otherwise(), o) <= -NOTHING)
        .forEach(o -> lines.add(against(o)));
    return lines;
  }

  /** Rounded to the tenth that is shown; zero without a sign. */
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
