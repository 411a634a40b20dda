package yett.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yett.knowledge.Check.Outcome;

/**
 * Reads a row of chances, one for each outcome of a check. Figures have to add up to 1. Words are
 * scaled to 1: outcomes left out share the rest in the proportions of a sound gate, so that a word
 * about one outcome says nothing about the others; if nothing is left to share, or no outcome was
 * left out, all are scaled by one factor.
 */
public final class LikelihoodRow {
  /** Largest deviation of the sum of figures from 1; allows thirds written with two digits. */
  public static final double TOLERANCE = 0.011;

  /** Largest sum of words: they are rough figures, so they may be scaled by up to a third. */
  public static final double MOST_IN_WORDS = 4.0 / 3;

  private final Fields fields;
  private final String name;
  private final List<String> ids;
  private final boolean words;
  private final double[] sound;
  private final double[] row;

  /** Whether an error was already reported, so that the sum means nothing. */
  private boolean reported;

  private final List<Integer> leftOut = new ArrayList<>();

  private LikelihoodRow(Fields fields, String name, List<Outcome> outcomes, double[] sound) {
    this.fields = fields;
    this.name = name;
    this.ids = outcomes.stream().map(Outcome::id).toList();
    this.words = fields.inWords(name);
    this.sound = sound;
    this.row = new double[ids.size()];
    this.reported = ids.size() < 2 || !fields.get(name).isObject();
  }

  /** Reads the row of a sound gate; outcomes left out share the rest evenly. */
  static double[] sound(Fields fields, String name, List<Outcome> outcomes) {
    return read(fields, name, outcomes, new double[outcomes.size()]);
  }

  /**
   * Reads the row of a cause.
   *
   * @param name the field that holds it
   * @param sound the row of a sound gate
   * @return a chance for each outcome, in their order; adds up to 1
   */
  static double[] read(Fields fields, String name, List<Outcome> outcomes, double[] sound) {
    if (!fields.has(name)) {
      fields.text(name); // reports the problem
    }
    LikelihoodRow row = new LikelihoodRow(fields, name, outcomes, sound);
    row.place(fields.chances(name));
    return row.broughtToOne();
  }

  private void place(Map<String, Double> chances) {
    for (int i = 0; i < row.length; i++) {
      if (chances.containsKey(ids.get(i))) {
        row[i] = chances.get(ids.get(i));
      } else {
        leftOut.add(i);
      }
    }
    for (String outcome : chances.keySet()) {
      if (!ids.contains(outcome) && !ids.isEmpty()) { // no outcomes at all is already reported
        reported = true;
        fields.problem(
            name + "/" + outcome,
            "unknown-name",
            "\"" + outcome + "\" is not an outcome of this check",
            Names.advice(outcome, ids));
      }
    }
  }

  private double[] broughtToOne() {
    double sum = Arrays.stream(row).sum();
    if (words && sum < 1 && !leftOut.isEmpty()) {
      share(row, leftOut, 1 - sum, sound);
      return row;
    }
    boolean near =
        words ? sum >= 1 / MOST_IN_WORDS && sum <= MOST_IN_WORDS : Math.abs(sum - 1) <= TOLERANCE;
    if (!near && !reported) {
      fields.problem(
          name,
          "does-not-add-up",
          "the chances of \"" + name + "\" add up to " + Math.round(sum * 1000) / 1000.0 + shown(),
          words
              ? "They should come to about 1; outcomes that you leave out share what is left."
              : "They should add up to 1.");
    }
    if (sum <= 0) {
      Arrays.fill(row, 1.0 / row.length);
      return row;
    }
    return Arrays.stream(row).map(p -> p / sum).toArray();
  }

  /**
   * Shares a chance among some outcomes in the proportions of a sound gate; evenly if a sound gate
   * never shows them.
   */
  public static void share(double[] row, List<Integer> among, double chance, double[] sound) {
    double usual = among.stream().mapToDouble(i -> sound[i]).sum();
    among.forEach(i -> row[i] = chance * (usual > 0 ? sound[i] / usual : 1.0 / among.size()));
  }

  private String shown() {
    if (!words) {
      return "";
    }
    List<String> said = new ArrayList<>();
    for (int i = 0; i < row.length; i++) {
      if (!leftOut.contains(i)) {
        said.add(String.format(Locale.ROOT, "%s %s", ids.get(i), row[i]));
      }
    }
    return " (" + String.join(", ", said) + ")";
  }
}
