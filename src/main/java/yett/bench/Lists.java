package yett.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import yett.knowledge.Names;

/** Reads answers that name several things. */
final class Lists {
  private Lists() {}

  /** The parts of a list separated by commas (or by semicolons, if parts may contain commas). */
  static List<String> parts(String text, String divider) {
    return Arrays.stream(text.split(divider)).map(String::strip).filter(p -> !p.isEmpty()).toList();
  }

  /**
   * What checks showed, each with its check, divided by semicolons; a comma divides too where the
   * id of a check follows it.
   */
  static List<String> shown(String text, Collection<String> checks) {
    List<String> shown = new ArrayList<>();
    for (String part : parts(text, ";")) {
      StringBuilder one = new StringBuilder();
      for (String piece : part.split(",")) {
        if (!one.isEmpty() && checks.contains(piece.strip().split("[\\s:]+", 2)[0])) {
          shown.add(one.toString().strip());
          one.setLength(0);
        }
        one.append(one.isEmpty() ? "" : ",").append(piece);
      }
      shown.add(one.toString().strip());
    }
    return shown;
  }

  static List<String> ids(String text) {
    return parts(text, "[,\\s]+");
  }

  static List<String> ids(List<Candidate> known) {
    return known.stream().map(Candidate::id).toList();
  }

  static List<String> keys(List<Question> questions) {
    return questions.stream().map(Question::key).toList();
  }

  /** A complaint about the first id that is not known; empty if all are. */
  static Optional<String> unknown(String text, String what, Collection<String> known) {
    return ids(text).stream()
        .filter(id -> !known.contains(id))
        .findFirst()
        .map(id -> "There is no " + what + " \"" + id + "\". " + Names.advice(id, known));
  }
}
