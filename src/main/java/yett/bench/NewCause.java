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
 * A new cause, with its rows laid out against the causes from which it must be told, a repair if
 * there is none for it, and a test case beside it.
 */
final class NewCause implements NewCard {
  private static final String REPAIR = "repair";
  private static final String REPAIR_PREFIX = "repair-";

  private final RuleBase base;
  private final Asked asked;
  private final EffectChoice effects;

  NewCause(Asked asked) {
    this.base = asked.base();
    this.effects = new EffectChoice(base);
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    CheckChoice choice = new CheckChoice(base, answers);
    List<Question> work =
        answers.containsKey(REPAIR) && isNewRepair(answers)
            ? NewRepair.work(asked, REPAIR_PREFIX)
            : List.of();
    return questions(
        answers,
        rows(choice.offered(), answers, "Check "),
        rows(choice.also(), answers, effects.implied(answers).isEmpty() ? "Besides, " : "Mark "),
        work);
  }

  @Override
  public List<Question> outline() {
    Question row =
        Question.of(
                "CHECK",
                "What it shows there, for each check that is asked about: those on which the causes"
                    + " of like= show most, and those of also=",
                answer -> Optional.empty())
            .usual("");
    return questions(Map.of(), List.of(row), List.of(), NewRepair.work(asked, REPAIR_PREFIX));
  }

  private List<Question> questions(
      Map<String, String> answers, List<Question> rows, List<Question> also, List<Question> work) {
    Implied implied = effects.implied(answers);
    boolean byEffects = !implied.isEmpty();
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("cause", "chain-bracket-cracked", base.causes().keySet()));
    questions.add(Question.words("name", "What is wrong, in a few words, no full stop"));
    questions.add(asked.area());
    questions.add(
        Question.of(
                "prior",
                "Of a hundred faulty gates, at how many is it there? 0.5 is written as prior 0.005",
                Priors::complaint)
            .usual("1"));
    if (effects.any()) {
      String area = answers.containsKey("area") ? Asked.areaOf(answers) : "";
      questions.add(effects.question("What does the machine do when this is so?", area));
    }
    questions.add(
        asked
            .causes("like", "Which causes look like it at first? Ids, with commas")
            .after(implied.told()));
    questions.add(
        byEffects
            ? asked.complaints("What do people say that does not follow from that?")
            : asked.complaints("What do people say then?").after(said(neighbours(answers))));
    questions.add(
        Question.of(
                FirstMet.AFTER,
                "What happened lately makes it likelier, and how many times? Such as: heavy-rain 3",
                this::badAfter)
            .naming(asked.vocabulary().histories())
            .usual(""));
    questions.addAll(rows);
    questions.add(
        byEffects
            ? asked
                .checks(
                    "also", "Which checks show it alone, and which settles it? Ids, with commas")
                .after(new CheckChoice(base, answers).toldByEffects())
            : asked.checks("also", "On which other checks does it show? Ids, with commas"));
    questions.addAll(also);
    questions.add(
        Question.words(REPAIR, "What puts it right? The id of a repair, or words for a new one")
            .naming(asked.vocabulary().repairs()));
    questions.addAll(work);
    questions.add(Question.words("arises", "How does it come about, in a sentence").usual(""));
    questions.add(Question.words("prevent", "What keeps it from coming again").usual(""));
    questions.add(
        Question.words("story", "What was it like where you met it, in a sentence or two")
            .usual(""));
    questions.add(Asked.source());
    return questions;
  }

  private Optional<String> badAfter(String answer) {
    return RowAnswer.parts(answer).entrySet().stream()
        .map(
            part ->
                Lists.unknown(part.getKey(), "history", base.histories().keySet())
                    .or(
                        () ->
                            Asked.number(0.01, 100)
                                .apply(part.getValue())
                                .map(
                                    c ->
                                        "Write behind it how many times likelier, such as: "
                                            + part.getKey()
                                            + " 3.")))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private boolean isNewRepair(Map<String, String> answers) {
    return !base.repairs().containsKey(answers.get(REPAIR));
  }

  private Neighbours neighbours(Map<String, String> answers) {
    return new Neighbours(base, Lists.ids(answers.getOrDefault("like", "")));
  }

  /** All checks that were asked about. */
  private List<Check> checks(Map<String, String> answers) {
    CheckChoice choice = new CheckChoice(base, answers);
    return Stream.concat(choice.offered().stream(), choice.also().stream()).toList();
  }

  private static List<String> said(Neighbours like) {
    List<String> ids = like.complaints().stream().limit(6).map(Check::id).toList();
    return ids.isEmpty() ? List.of() : List.of("Of those people say: " + String.join(", ", ids));
  }

  /** A question for each check, with how far one has come for those who wonder when it ends. */
  private List<Question> rows(List<Check> checks, Map<String, String> answers, String word) {
    List<Question> rows = new ArrayList<>();
    for (Check check : checks) {
      rows.add(row(check, word + (rows.size() + 1) + " of " + checks.size() + ", ", answers));
    }
    return rows;
  }

  private Question row(Check check, String place, Map<String, String> answers) {
    List<String> before = new ArrayList<>();
    before.add(place + check.id() + ": " + check.ask());
    before.addAll(beside(check, answers));
    List<Known> outcomes = Vocabulary.outcomes(check);
    return Question.of(
            check.id(),
            "And with the new cause? OUTCOME often, OUTCOME sometimes, as you met it (? lists them);"
                + " nothing if as "
                + unsaid(check, answers),
            answer -> RowAnswer.complaint(answer, Lists.ids(outcomes)))
        .naming(Vocabulary.both(outcomes, Vocabulary.chances()))
        .after(before)
        .usual("");
  }

  /** What a new row is laid out against. */
  private List<String> beside(Check check, Map<String, String> answers) {
    List<String> lines = new ArrayList<>(neighbours(answers).rows(check));
    effects
        .implied(answers)
        .row(check)
        .ifPresent(row -> lines.add("by its effects: " + Neighbours.shown(check, row)));
    return lines;
  }

  /** What stands for a row that nothing is said of. */
  private String unsaid(Check check, Map<String, String> answers) {
    return effects.implied(answers).row(check).isPresent() ? "its effects say" : "on a sound gate";
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    String path = Asked.areaOf(answers) + "/" + answers.get("id");
    SortedMap<String, String> files = new TreeMap<>();
    files.put(path + ".yaml", card(answers));
    String repair = isNewRepair(answers) ? repairId(answers) : answers.get(REPAIR);
    String found = FirstMet.card(answers, effects.implied(answers), checks(answers), repair);
    files.put(path + ".case.yaml", found);
    return files;
  }

  private String card(Map<String, String> answers) {
    String id = answers.get("id");
    CardLines text =
        new CardLines()
            .line("cause", id)
            .words("name", answers.get("name"))
            .line("area", Asked.areaOf(answers))
            .line("prior", Priors.figure(answers.get("prior")))
            .raw(effects.yaml(answers));
    shows(text, answers);
    String after = answers.get(FirstMet.AFTER);
    text.raw(
        after.isBlank() ? "" : FirstMet.AFTER + ": " + RowAnswer.yaml(after, List.of()) + "\n");
    if (!isNewRepair(answers)) {
      text.raw("removed-by: {" + answers.get(REPAIR) + ": nearly always}\n");
    }
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

  /** The new rows, each below those that it must be told from. */
  private void shows(CardLines text, Map<String, String> answers) {
    StringBuilder rows = new StringBuilder();
    RowAnswer.parts(answers.get("complaints"))
        .forEach((id, word) -> rows.append("  ").append(id + ": " + word).append('\n'));
    StringBuilder unsaid = new StringBuilder();
    for (Check check : checks(answers)) {
      String answer = answers.getOrDefault(check.id(), "");
      if (answer.isBlank()) {
        unsaid.append("  # " + check.id() + ": nothing said, so as ");
        unsaid.append(unsaid(check, answers)).append('\n');
      } else {
        beside(check, answers).forEach(line -> rows.append("  #   ").append(line).append('\n'));
        String row = RowAnswer.yaml(answer, Lists.ids(Vocabulary.outcomes(check)));
        rows.append("  ").append(check.id()).append(": ").append(row).append('\n');
      }
    }
    text.raw(rows.isEmpty() ? "" : "shows:\n" + rows).raw(unsaid.toString());
  }
}
