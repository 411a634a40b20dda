package yett.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.BandText;
import yett.knowledge.Instruments;
import yett.knowledge.RuleBase;
import yett.quantity.Quantity;
import yett.quantity.Unit;

/** Asks for a new check that is a look or a try, with a row for each cause that it tells. */
final class NewCheck implements NewCard {
  private final RuleBase base;
  private final CardQuestions asked;

  NewCheck(CardQuestions asked) {
    this.base = asked.base();
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("check", "bracket-look", base.checks().keySet()));
    questions.add(
        Question.words("ask", "The question that is asked, such as: Is the bracket cracked?"));
    questions.add(Question.words("how", "How it is done, in a sentence or two").usual(""));
    questions.add(asked.area());
    questions.add(OnlyIf.question(base, "Can it be made only at some gates?"));
    questions.add(
        Question.of(
                "measures",
                "Is it measured? Quantity, unit and instrument, such as: time s stopwatch",
                NewCheck::badMeasures)
            .naming(measuring())
            .usual(""));
    boolean measured = !answers.getOrDefault("measures", "").isBlank();
    questions.add(
        Question.of(
            "outcomes",
            measured
                ? "Bands, from what a sound gate shows to the most telling, such as: "
                    + "usual: below 6 s; long: above 6 s"
                : "Answers, from what a sound gate shows to the most telling, such as: "
                    + "sound: no crack to be seen; cracked: a crack or a bent bracket",
            text -> badOutcomes(text).or(() -> badBands(text, answers))));
    questions.add(asked.causes("causes", "Which causes does it tell? Ids, with commas"));
    for (String cause : Lists.ids(answers.getOrDefault("causes", ""))) {
      questions.add(row(cause, "What does it show with " + cause, outcomes(answers)));
    }
    questions.add(otherwise(outcomes(answers)));
    questions.add(CardQuestions.minutes("minutes", "How many minutes does it take"));
    questions.add(asked.needs());
    questions.add(CardQuestions.who());
    questions.add(asked.hazards());
    questions.add(CardQuestions.source());
    return questions;
  }

  @Override
  public List<Question> outline() {
    List<Question> all =
        new ArrayList<>(questions(Map.of("outcomes", "FIRST: as it should be; LAST: it is not")));
    int rows = Lists.keys(all).indexOf("causes") + 1;
    all.add(rows, row("CAUSE", "For each of the causes, what does it show", outcomes(Map.of())));
    return all;
  }

  private static Question row(String key, String ask, List<Candidate> outcomes) {
    String example = outcomes.isEmpty() ? "" : outcomes.get(outcomes.size() - 1).id() + " ";
    return Question.of(
            key,
            ask + "? Such as: " + example + "usually",
            answer ->
                answer.isBlank()
                    ? Optional.of("Name an outcome.")
                    : RowAnswer.complaint(answer, Lists.ids(outcomes)))
        .naming(Vocabulary.both(outcomes, Vocabulary.chances()));
  }

  /** Asks for the row of all other causes; the example in it is the ordinary outcome. */
  private static Question otherwise(List<Candidate> outcomes) {
    List<Candidate> reversed = new ArrayList<>(outcomes);
    Collections.reverse(reversed);
    return row("otherwise", "And on a gate without these causes", reversed)
        .usual(outcomes.isEmpty() ? "" : outcomes.get(0).id() + " nearly always");
  }

  private static List<Candidate> measuring() {
    List<Candidate> quantities =
        Arrays.stream(Quantity.values())
            .map(q -> new Candidate(q.label(), "a quantity, in " + q.canonical().symbol()))
            .toList();
    return Vocabulary.both(
        quantities,
        Instruments.names().stream().map(name -> new Candidate(name, "an instrument")).toList());
  }

  private static List<Candidate> outcomes(Map<String, String> answers) {
    return outcomeParts(answers.getOrDefault("outcomes", "")).stream()
        .map(p -> new Candidate(p[0], p.length > 1 ? p[1] : ""))
        .toList();
  }

  private static List<String[]> outcomeParts(String text) {
    return Lists.parts(text, ";").stream().map(p -> p.split("\\s*:\\s*", 2)).toList();
  }

  private static Optional<String> badMeasures(String text) {
    String[] words = text.split("\\s+");
    if (words.length != 3) {
      return Optional.of("Write three words, such as: time s stopwatch.");
    }
    try {
      Quantity quantity = Quantity.named(words[0]);
      if (quantity != Quantity.COUNT && Unit.parse(words[1]).quantity() != quantity) {
        return Optional.of("\"" + words[1] + "\" is not a unit of " + words[0] + ".");
      }
    } catch (IllegalArgumentException e) {
      return Optional.of(e.getMessage());
    }
    return CardQuestions.oneOf(words[2], Instruments.names());
  }

  private static Optional<String> badOutcomes(String text) {
    List<String[]> parts = outcomeParts(text);
    if (parts.size() < 2) {
      return Optional.of("A check needs at least two answers, divided by a semicolon.");
    }
    for (String[] part : parts) {
      Optional<String> bad = CardQuestions.badId(part[0], "cracked");
      if (bad.isPresent() || part.length < 2) {
        return Optional.of(
            bad.orElse("Write the words of \"" + part[0] + "\" after a colon: " + part[0] + ": …"));
      }
    }
    List<String> ids = parts.stream().map(p -> p[0]).toList();
    return ids.stream().distinct().count() < ids.size()
        ? Optional.of("Two answers have the same id.")
        : Optional.empty();
  }

  /** What is wrong with the bands of a measured check, before anything is asked that needs them. */
  private static Optional<String> badBands(String text, Map<String, String> answers) {
    String measures = answers.getOrDefault("measures", "");
    if (measures.isBlank()) {
      return Optional.empty();
    }
    String[] words = measures.split("\\s+");
    Quantity quantity = Quantity.named(words[0]);
    return BandText.complaint(
        quantity,
        quantity == Quantity.COUNT ? quantity.canonical() : Unit.parse(words[1]),
        outcomeParts(text).stream().map(p -> p[1]).toList());
  }

  private static String asking(String question) {
    return question.endsWith("?") ? question : question.replaceFirst("[.\\s]+$", "") + "?";
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    CardLines text =
        new CardLines()
            .line("check", answers.get("id"))
            .words("ask", asking(answers.get("ask")))
            .words("how", answers.get("how"))
            .line("area", CardQuestions.areaOf(answers))
            .raw(OnlyIf.yaml(answers.getOrDefault(OnlyIf.KEY, "")))
            .ids("needs", Lists.ids(answers.get("needs")))
            .line("who", answers.get("who"))
            .line("minutes", answers.get("minutes"))
            .ids("hazards", Lists.ids(answers.get("hazards")));
    String[] measures = answers.get("measures").split("\\s+");
    text.raw(
        measures.length < 3
            ? "outcomes:\n"
            : "measures: {quantity: "
                + measures[0]
                + ", unit: "
                + measures[1]
                + ", instrument: "
                + measures[2]
                + "}\nbands:\n");
    for (String[] part : outcomeParts(answers.get("outcomes"))) {
      text.raw("  " + part[0] + ": " + CardLines.quoted(part[1]) + "\n");
    }
    List<String> causes = Lists.ids(answers.get("causes"));
    text.raw(causes.isEmpty() ? "" : "likelihood:\n");
    List<String> outcomes = Lists.ids(outcomes(answers));
    double[] nothing = new double[outcomes.size()];
    double[] sound = RowAnswer.row(answers.get("otherwise"), outcomes, nothing);
    causes.forEach(
        c -> text.raw("  " + c + ": " + RowText.of(answers.get(c), outcomes, sound) + "\n"));
    text.line("otherwise", RowText.of(answers.get("otherwise"), outcomes, nothing))
        .words("source", answers.get("source"));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(CardQuestions.areaOf(answers) + "/" + answers.get("id") + ".yaml", text.toString());
    return files;
  }
}
