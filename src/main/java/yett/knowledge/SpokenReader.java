package yett.knowledge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the wordings that people use from the cards. */
final class SpokenReader {
  private static final Pattern WORDS = Pattern.compile("[a-z0-9']++( [a-z0-9']++)*+");

  private final Map<String, Map<String, List<String>>> sayings = new LinkedHashMap<>();
  private final Map<String, Map<String, List<String>>> outcomes = new LinkedHashMap<>();
  private final Map<String, Map<String, Map<String, String>>> tellsOf = new LinkedHashMap<>();
  private final List<String> nothing = new ArrayList<>();
  private final Map<String, List<String>> synonyms = new LinkedHashMap<>();

  /** Reads the fields of a card that belong here and leaves the others. */
  void card(String kind, String id, Fields fields) {
    switch (kind) {
      case "complaint", "pressing" -> {
        sayings(kind, id, fields);
        tellsOf(kind, id, fields);
      }
      case "history", "effect" -> sayings(kind, id, fields);
      case "check" -> outcomes(id, fields);
      case "synonyms" -> synonyms(fields);
      default -> {}
    }
  }

  Spoken read() {
    return new Spoken(
        Collections.unmodifiableMap(sayings),
        Collections.unmodifiableMap(outcomes),
        Collections.unmodifiableMap(tellsOf),
        Collections.unmodifiableList(nothing),
        Collections.unmodifiableMap(synonyms));
  }

  private void sayings(String kind, String id, Fields fields) {
    sayings
        .computeIfAbsent(kind, k -> new LinkedHashMap<>())
        .putIfAbsent(id, fields.texts("sayings"));
  }

  private void tellsOf(String kind, String id, Fields fields) {
    Map<String, String> dangers = new LinkedHashMap<>();
    if (fields.has("tells-of")) {
      Fields inner = fields.inner("tells-of");
      inner.names().forEach(check -> dangers.put(check, inner.text(check)));
    }
    tellsOf.computeIfAbsent(kind, k -> new LinkedHashMap<>()).putIfAbsent(id, dangers);
  }

  /** Reads wordings by outcome, because people describe an outcome, not the check. */
  private void outcomes(String id, Fields fields) {
    if (!fields.has("sayings")) {
      return;
    }
    Fields inner = fields.inner("sayings");
    Map<String, List<String>> byOutcome = new LinkedHashMap<>();
    List<String> known = fields.inner("outcomes").names();
    for (String outcome : inner.names()) {
      if (known.contains(outcome)) {
        byOutcome.put(outcome, inner.texts(outcome));
      } else {
        fields.problem(
            "sayings/" + outcome,
            "unknown-name",
            "\"" + outcome + "\" is not an outcome of this check",
            Names.advice(outcome, known));
      }
    }
    outcomes.putIfAbsent(id, byOutcome);
  }

  private void synonyms(Fields fields) {
    fields.text("source");
    nothing.addAll(fields.texts("says-nothing"));
    Fields words = fields.inner("words");
    for (String word : words.names()) {
      List<String> others = words.texts(word);
      spoken(fields, "words/" + word, word);
      others.forEach(other -> spoken(fields, "words/" + word, other));
      requireOneMeaning(fields, word, word);
      synonyms.putIfAbsent(word, List.of());
      for (String other : others) {
        requireOneMeaning(fields, word, other);
        synonyms.merge(word, List.of(other), SpokenReader::joined);
      }
    }
  }

  private static List<String> joined(List<String> some, List<String> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  private static void spoken(Fields fields, String field, String word) {
    if (!WORDS.matcher(word).matches()) {
      fields.problem(
          field,
          "bad-word",
          "\"" + word + "\" cannot be found in what people say",
          "Write small letters, figures and apostrophes, with one space between words.");
    }
  }

  /**
   * Refuses a second meaning for an expression, which would make its two meanings synonyms of each
   * other.
   */
  private void requireOneMeaning(Fields fields, String word, String other) {
    if (synonyms.containsKey(other)
        || synonyms.values().stream().anyMatch(v -> v.contains(other))) {
      fields.problem(
          "words/" + word,
          "word-twice",
          "\"" + other + "\" stands for two words",
          "Keep it where it is meant most often.");
    }
  }
}
