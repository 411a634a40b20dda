package yett.bench;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** The questions that several kinds of new cards have in common. */
final class CardQuestions {
  private static final String ID = "[a-z0-9]+(-[a-z0-9]+)*";

  private static final String AREA = "area";
  private static final String NEW = "new ";

  private final RuleBase base;
  private final Vocabulary vocabulary;
  private final Collection<String> files;

  /**
   * @param files paths that are already used
   */
  CardQuestions(RuleBase base, Collection<String> files) {
    this.base = base;
    this.vocabulary = new Vocabulary(base);
    this.files = files;
  }

  Question id(String kind, String example, Collection<String> taken) {
    return Question.of(
        "id",
        "Id of the " + kind + ", such as " + example,
        id -> badId(id, example).or(() -> taken(id, kind, taken)));
  }

  static Optional<String> badId(String id, String example) {
    return id.matches(ID)
        ? Optional.empty()
        : Optional.of(
            "\""
                + id
                + "\" cannot be an id: write lower-case words and figures joined by hyphens, such"
                + " as "
                + example
                + ".");
  }

  private Optional<String> taken(String id, String kind, Collection<String> taken) {
    if (taken.contains(id)) {
      return Optional.of(
          "There is " + article(kind) + kind + " \"" + id + "\" already. Choose another id.");
    }
    return files.stream()
        .filter(f -> f.endsWith("/" + id + ".yaml") || f.endsWith("/" + id + ".case.yaml"))
        .findFirst()
        .map(f -> "There is a file " + f + " already. Choose another id.");
  }

  private static String article(String kind) {
    return kind.equals("effect") ? "an " : "a ";
  }

  Question area() {
    List<String> areas = Lists.ids(vocabulary.areas());
    return Question.of(
            AREA,
            "Area under which a person of the trade would look for it",
            a -> badArea(a, areas))
        .naming(vocabulary.areas());
  }

  private static Optional<String> badArea(String answer, List<String> areas) {
    String area = areaOf(Map.of(AREA, answer));
    return badId(area, "chain")
        .or(
            () ->
                answer.startsWith(NEW) || areas.contains(area)
                    ? Optional.empty()
                    : Optional.of(
                        "There is no area \""
                            + area
                            + "\" yet. "
                            + Names.advice(area, areas)
                            + " To begin one, write: "
                            + NEW
                            + area
                            + "."));
  }

  /** The area that was answered. */
  static String areaOf(Map<String, String> answers) {
    String area = answers.get(AREA);
    return area.startsWith(NEW) ? area.substring(NEW.length()).strip() : area;
  }

  Question causes(String key, String ask) {
    return ids(key, ask, "cause", vocabulary.causes());
  }

  Question checks(String key, String ask) {
    return ids(key, ask, "check", vocabulary.checks());
  }

  /** Asks for the checks and proofs on which a cause shows. */
  Question marks(String ask) {
    List<Candidate> marks = Vocabulary.both(vocabulary.checks(), vocabulary.proofs());
    List<String> complaints = Lists.ids(vocabulary.complaints());
    return Question.of(
            "also",
            ask,
            answer ->
                Lists.ids(answer).stream()
                    .filter(complaints::contains)
                    .findFirst()
                    .map(
                        id ->
                            "\""
                                + id
                                + "\" is a complaint: say it where it is asked what people say.")
                    .or(() -> Lists.unknown(answer, "check or proof", Lists.ids(marks))))
        .naming(marks)
        .usual("");
  }

  /**
   * Asks for a repair by its id, or for a new one in words. An answer in the form of an id has to
   * be a known one.
   */
  Question repair(String key, String ask) {
    List<Candidate> repairs = vocabulary.repairs();
    return Question.of(key, ask, answer -> badRepair(answer, Lists.ids(repairs)))
        .naming(repairs)
        .telling(
            answer ->
                knownRepair(answer).isPresent() ? List.of() : MeaningIndex.like(answer, base));
  }

  private Optional<String> badRepair(String answer, List<String> repairs) {
    if (answer.isBlank()) {
      return Optional.of("Write a few words.");
    }
    Optional<String> word = knownRepair(answer).map(Map.Entry::getValue);
    if (word.isPresent()) {
      return word.filter(w -> RowAnswer.chance(w).isEmpty()).map(RowAnswer::wrongWord);
    }
    return answer.strip().matches("[a-z0-9]+(-[a-z0-9]+)+")
        ? Lists.unknown(answer, "repair", repairs).map(w -> w + " A new one is named in words.")
        : Optional.empty();
  }

  /**
   * The repair whose id the answer begins with, and how certainly it helps; empty for a new repair.
   */
  Optional<Map.Entry<String, String>> knownRepair(String answer) {
    return RowAnswer.parts(answer, "nearly always").entrySet().stream()
        .findFirst()
        .filter(r -> base.repairs().containsKey(r.getKey()));
  }

  Question complaints(String ask) {
    List<Candidate> complaints = vocabulary.complaints();
    return Question.of(
            "complaints",
            ask + " Ids, each with a word if you like: noisy-chain often",
            answer -> chances(answer, "complaint", Lists.ids(complaints)))
        .naming(Vocabulary.both(complaints, Vocabulary.chances()))
        .usual("");
  }

  /** What is wrong with an answer of ids, each with a chance; empty if nothing is. */
  static Optional<String> chances(String answer, String what, Collection<String> known) {
    for (Map.Entry<String, String> part : RowAnswer.parts(answer).entrySet()) {
      if (!known.contains(part.getKey())) {
        return Lists.unknown(part.getKey(), what, known);
      }
      if (RowAnswer.chance(part.getValue()).isEmpty()) {
        return Optional.of(RowAnswer.wrongWord(part.getValue()));
      }
    }
    return Optional.empty();
  }

  static Question ids(String key, String ask, String what, List<Candidate> known) {
    return Question.of(key, ask, answer -> Lists.unknown(answer, what, Lists.ids(known)))
        .naming(known)
        .usual("");
  }

  Question needs() {
    return ids("needs", "Set-ups that it needs, with commas", "set-up", vocabulary.setUps());
  }

  Question hazards() {
    return ids(
        "hazards", "What can hurt there? Hazards, with commas", "hazard", vocabulary.hazards());
  }

  Question entails() {
    return ids(
        "entails",
        "What has to follow it? Repairs or checks, with commas",
        "card",
        Vocabulary.both(vocabulary.repairs(), vocabulary.checks()));
  }

  static Question who() {
    return Question.of("who", "Who may do it, at least", word -> oneOf(word, Role.words()))
        .naming(roles())
        .usual(Role.TECHNICIAN.word());
  }

  static List<Candidate> roles() {
    return Role.words().stream().map(word -> new Candidate(word, "")).toList();
  }

  static Optional<String> oneOf(String word, Collection<String> known) {
    return known.contains(word)
        ? Optional.empty()
        : Optional.of("\"" + word + "\" is not known here. " + Names.advice(word, known));
  }

  static Question minutes(String key, String ask) {
    return Question.of(key, ask, number(0, 240));
  }

  static Function<String, Optional<String>> number(double least, double most) {
    return answer -> {
      try {
        double number = Double.parseDouble(answer);
        if (number >= least && number <= most) {
          return Optional.empty();
        }
      } catch (NumberFormatException e) {
        // Reported below.
      }
      String range = "write a number from " + figure(least) + " to " + figure(most) + ".";
      return Optional.of(
          answer.isBlank()
              ? Wording.capital(range)
              : "\"" + answer + "\" cannot be used: " + range);
    };
  }

  private static String figure(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }

  static Question source() {
    return Question.words("source", "Where do you know it from").usual("considered judgement");
  }

  RuleBase base() {
    return base;
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }
}
