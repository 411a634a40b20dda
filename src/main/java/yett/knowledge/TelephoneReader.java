package yett.knowledge;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.knowledge.Pressing.Urgency;

/** Reads what the cards hold for the telephone. */
final class TelephoneReader {
  private static final Pattern SPOKEN = Pattern.compile("[a-z0-9']++( [a-z0-9']++)*+");
  private static final List<String> URGENCIES =
      Arrays.stream(Urgency.values()).map(Urgency::word).toList();

  private final Map<String, List<String>> sayings = new LinkedHashMap<>();
  private final Map<String, Map<String, List<String>>> dangerSayings = new LinkedHashMap<>();
  private final Map<String, List<String>> synonyms = new LinkedHashMap<>();
  private final Map<String, Pressing> pressing = new LinkedHashMap<>();
  private final Map<String, List<String>> watch = new LinkedHashMap<>();
  private final Map<String, List<String>> untilThen = new LinkedHashMap<>();
  private final Map<String, List<String>> desk = new LinkedHashMap<>();
  private final Map<String, String> cautions = new LinkedHashMap<>();

  /** Takes from a card what belongs here; the rest is left to others. */
  void card(String kind, String id, Fields fields) {
    switch (kind) {
      case "complaint" -> {
        sayings.putIfAbsent(id, fields.texts("sayings"));
        untilThen.putIfAbsent(id, fields.texts("until-then"));
      }
      case "check" -> dangerSayings(id, fields);
      case "repair" -> watch.putIfAbsent(id, fields.texts("watch"));
      case "stop" -> desk.putIfAbsent(id, fields.texts("desk"));
      case "caution" -> cautions.putIfAbsent(id, fields.text("lay", ""));
      case "synonyms" -> synonyms(fields);
      case "pressing" -> pressing.putIfAbsent(id, pressing(id, fields));
      default -> {}
    }
  }

  Telephone read() {
    return new Telephone(
        Collections.unmodifiableMap(sayings),
        Collections.unmodifiableMap(dangerSayings),
        Collections.unmodifiableMap(synonyms),
        Collections.unmodifiableMap(pressing),
        Collections.unmodifiableMap(watch),
        Collections.unmodifiableMap(untilThen),
        Collections.unmodifiableMap(desk),
        Collections.unmodifiableMap(cautions));
  }

  /** By outcome, because each outcome of a danger is a danger of its own. */
  private void dangerSayings(String id, Fields fields) {
    if (!fields.has("sayings")) {
      return;
    }
    Fields inner = fields.inner("sayings");
    Map<String, List<String>> byOutcome = new LinkedHashMap<>();
    List<String> outcomes = fields.inner("outcomes").names();
    for (String outcome : inner.names()) {
      if (outcomes.contains(outcome)) {
        byOutcome.put(outcome, inner.texts(outcome));
      } else {
        fields.problem(
            "sayings/" + outcome,
            "unknown-name",
            "\"" + outcome + "\" is not an outcome of this check",
            Names.advice(outcome, outcomes));
      }
    }
    dangerSayings.putIfAbsent(id, byOutcome);
  }

  private void synonyms(Fields fields) {
    fields.text("source");
    Fields words = fields.inner("words");
    for (String word : words.names()) {
      List<String> others = words.texts(word);
      spoken(fields, "words/" + word, word);
      others.forEach(other -> spoken(fields, "words/" + word, other));
      once(fields, word, word);
      synonyms.putIfAbsent(word, List.of());
      for (String other : others) {
        once(fields, word, other);
        synonyms.merge(word, List.of(other), TelephoneReader::joined);
      }
    }
  }

  private static List<String> joined(List<String> some, List<String> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  private static void spoken(Fields fields, String field, String word) {
    if (!SPOKEN.matcher(word).matches()) {
      fields.problem(
          field,
          "bad-word",
          "\"" + word + "\" cannot be found in what people say",
          "Write small letters, figures and apostrophes, with one blank between words.");
    }
  }

  /** One expression with two meanings would make each of them the other. */
  private void once(Fields fields, String word, String other) {
    if (synonyms.containsKey(other)
        || synonyms.values().stream().anyMatch(v -> v.contains(other))) {
      fields.problem(
          "words/" + word,
          "word-twice",
          "\"" + other + "\" stands for two words",
          "Keep it where it is meant most often.");
    }
  }

  private static Pressing pressing(String id, Fields fields) {
    Urgency urgency = urgency(fields, "urgency", Urgency.NEXT_WORKING_DAY);
    return new Pressing(
        id,
        fields.text("ask"),
        fields.text("said"),
        urgency,
        urgency(fields, "weekend", urgency),
        fields.texts("if-said"),
        fields.texts("until-then"),
        fields.text("source"));
  }

  private static Urgency urgency(Fields fields, String field, Urgency usual) {
    String word = fields.oneOf(field, usual.word(), URGENCIES);
    return Urgency.values()[URGENCIES.indexOf(word)];
  }
}
