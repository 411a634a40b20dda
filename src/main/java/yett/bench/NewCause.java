package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Asks for a new cause, with its rows next to those of the causes from which it must be told, a
 * repair if there is none for it, and a test case.
 */
final class NewCause implements NewCard {
  private static final String REPAIR = "repair";
  private static final String REPAIR_PREFIX = "repair-";
  private static final String CONSEQUENCES = "consequences";
  private static final String RETEST_FAILS = "retest-fails";
  private static final String USUAL_FAILS = "97";

  private final RuleBase base;
  private final CardQuestions asked;
  private final EffectChoice effects;

  NewCause(CardQuestions asked) {
    this.base = asked.base();
    this.effects = new EffectChoice(base);
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    CheckChoice choice = new CheckChoice(base, answers);
    NewCauseRows marks = new NewCauseRows(base, answers);
    boolean byEffects = !effects.implied(answers).isEmpty();
    List<Question> work =
        answers.containsKey(REPAIR) && isNewRepair(answers) ? work(answers) : List.of();
    return questions(
        answers,
        marks.questions(choice.offered(), "Check "),
        Stream.of(
                marks.questions(choice.also(), byEffects ? "Mark " : "Besides, "),
                marks.companions(choice.companions()))
            .flatMap(List::stream)
            .toList(),
        work);
  }

  @Override
  public List<Question> outline() {
    Question row =
        Question.of(
                "CHECK",
                "What it shows there, for each check that is asked about: those on which the causes"
                    + " of like= show most, those of also=, and what mostly goes with them",
                answer -> Optional.empty())
            .usual("");
    return questions(Map.of(), List.of(row), List.of(), work(Map.of()));
  }

  /** Asks about a new repair, and at last what settles before it that the cause is there. */
  private List<Question> work(Map<String, String> answers) {
    List<Question> work = new ArrayList<>(NewRepair.work(asked, REPAIR_PREFIX));
    work.add(MeasuredFirst.question(asked, answers).called(REPAIR_PREFIX + MeasuredFirst.KEY));
    return work;
  }

  private List<Question> questions(
      Map<String, String> answers, List<Question> rows, List<Question> also, List<Question> work) {
    SignsByEffects implied = effects.implied(answers);
    NewCauseRows marks = new NewCauseRows(base, answers);
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("cause", "chain-bracket-cracked", base.causes().keySet()));
    questions.add(
        Question.words("name", "What is wrong, in a few words, no full stop")
            .telling(name -> MeaningIndex.near(name, base)));
    questions.add(asked.area());
    questions.add(OnlyIf.question(base, "Can it occur only at some gates?"));
    questions.add(prior(answers));
    if (effects.any()) {
      String area = answers.containsKey("area") ? CardQuestions.areaOf(answers) : "";
      questions.add(effects.question("What does the machine do when this is so?", area));
    }
    questions.add(
        asked
            .causes("like", "Which causes look like it at first? Ids, with commas")
            .after(implied.told()));
    questions.add(
        asked
            .complaints(
                implied.isEmpty()
                    ? "What do people say then?"
                    : "What do people say that does not follow from that?")
            .after(marks.said())
            .telling(marks::meant));
    questions.add(
        Question.of(
                FirstMet.AFTER,
                "What happened lately makes it likelier, and how many times? Such as: heavy-rain 3",
                answer -> LikelierAfter.complaint(answer, base))
            .naming(asked.vocabulary().histories())
            .usual(""));
    questions.addAll(rows);
    questions.add(
        implied.isEmpty()
            ? asked.marks("On which other checks or proofs does it show? Ids, with commas")
            : asked
                .marks(
                    "Which checks or proofs show it alone, and which settles it? Ids, with commas")
                .after(new CheckChoice(base, answers).toldByEffects()));
    questions.addAll(also);
    questions.addAll(consequences());
    questions.add(
        asked.repair(REPAIR, "What puts it right? The id of a repair, or words for a new one"));
    questions.addAll(work);
    questions.add(Question.words("arises", "How does it come about, in a sentence").usual(""));
    questions.add(Question.words("prevent", "What keeps it from coming back").usual(""));
    questions.add(
        Question.words("story", "What was it like where you met it, in a sentence or two")
            .usual(""));
    questions.add(CardQuestions.source());
    questions.addAll(FurtherCases.questions(asked, answers));
    return questions;
  }

  /** Asks for the prior. A cause that only some gates can have is counted among those. */
  private Question prior(Map<String, String> answers) {
    String which =
        answers.getOrDefault(OnlyIf.KEY, "").isBlank()
            ? "faulty gates"
            : "faulty gates of that kind";
    return Question.of(
            "prior",
            "Of a hundred " + which + ", at how many is it there? 0.5 is written as prior 0.005",
            Priors::complaint)
        .telling(prior -> Priors.told(prior, base))
        .usual("1");
  }

  /** Asks for its consequences if nobody repairs it. */
  private List<Question> consequences() {
    return List.of(
        Question.of(
                CONSEQUENCES,
                "Which other causes does it bring about in time? Ids, each with a word if you like:"
                    + " chain-worn often",
                answer -> CardQuestions.chances(answer, "cause", base.causes().keySet()))
            .naming(Vocabulary.both(asked.vocabulary().causes(), Vocabulary.chances()))
            .usual(""),
        Question.of(
                RETEST_FAILS,
                "If a repair leaves it there, how many of a hundred gates fail when they are tried"
                    + " afterwards",
                CardQuestions.number(0, 100))
            .usual(USUAL_FAILS));
  }

  private boolean isNewRepair(Map<String, String> answers) {
    return asked.knownRepair(answers.get(REPAIR)).isEmpty();
  }

  /** All checks that were asked about. */
  private List<Check> checks(Map<String, String> answers) {
    return new CheckChoice(base, answers).all();
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    String path = CardQuestions.areaOf(answers) + "/" + answers.get("id");
    SortedMap<String, String> files = new TreeMap<>();
    files.put(path + ".yaml", card(answers));
    String repair =
        asked
            .knownRepair(answers.get(REPAIR))
            .map(Map.Entry::getKey)
            .orElseGet(() -> repairId(answers));
    String found = FirstMet.card(answers, effects.implied(answers), checks(answers), repair);
    files.put(path + ".case.yaml", found + FurtherCases.cards(answers, found, base));
    return files;
  }

  private String card(Map<String, String> answers) {
    String id = answers.get("id");
    CardLines text =
        new CardLines()
            .line("cause", id)
            .words("name", answers.get("name"))
            .line("area", CardQuestions.areaOf(answers))
            .line("prior", Priors.figure(answers.get("prior")))
            .raw(OnlyIf.yaml(answers.getOrDefault(OnlyIf.KEY, "")))
            .raw(effects.yaml(answers))
            .raw(consequences(answers))
            .raw(new NewCauseRows(base, answers).yaml(checks(answers)));
    text.raw(chances(FirstMet.AFTER, answers.get(FirstMet.AFTER)));
    asked
        .knownRepair(answers.get(REPAIR))
        .ifPresent(r -> text.raw("removed-by: {" + r.getKey() + ": " + r.getValue() + "}\n"));
    text.words("arises", answers.get("arises"))
        .words("prevent", answers.get("prevent"))
        .words("source", answers.get("source"));
    if (isNewRepair(answers)) {
      text.divider();
      NewRepair.card(text, answers, REPAIR_PREFIX, repairId(answers), answers.get(REPAIR), id);
    }
    return text.toString();
  }

  private String repairId(Map<String, String> answers) {
    String id = "mend-" + answers.get("id");
    return base.repairs().containsKey(id) ? id + "-2" : id;
  }

  private static String consequences(Map<String, String> answers) {
    String rows = chances(CONSEQUENCES, answers.getOrDefault(CONSEQUENCES, ""));
    String fails = answers.getOrDefault(RETEST_FAILS, USUAL_FAILS);
    return fails.equals(USUAL_FAILS)
        ? rows
        : rows + RETEST_FAILS + ": " + Priors.figure(fails) + "\n";
  }

  /** A line of a card with chances by name; empty if none was answered. */
  private static String chances(String key, String answer) {
    return answer.isBlank() ? "" : key + ": " + RowText.of(RowAnswer.parts(answer)) + "\n";
  }
}
