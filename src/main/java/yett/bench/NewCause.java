package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * A new cause, with its rows laid out against the causes from which it must be told, a repair if
 * there is none for it, and a test case beside it.
 */
final class NewCause implements NewCard {
  private static final String REPAIR = "repair";

  private final RuleBase base;
  private final Asked asked;

  NewCause(Asked asked) {
    this.base = asked.base();
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("cause", "chain-bracket-cracked", base.causes().keySet()));
    questions.add(Question.words("name", "What is wrong, in a few words, no full stop"));
    questions.add(asked.area());
    questions.add(
        Question.of("prior", "Of a hundred faulty gates, at how many is it there", Prior::complaint)
            .usual("1"));
    questions.add(asked.causes("like", "Which causes look like it at first? Ids, with commas"));
    Neighbours like = neighbours(answers);
    questions.add(asked.complaints().after(said(like)));
    List<Check> offered = like.checks();
    for (int i = 0; i < offered.size(); i++) {
      questions.add(row(offered.get(i), (i + 1) + " of " + offered.size() + ", ", like));
    }
    questions.add(asked.checks("also", "On which other checks does it show? Ids, with commas"));
    also(answers).forEach(check -> questions.add(row(check, "", like)));
    questions.add(
        Question.words(REPAIR, "What puts it right? The id of a repair, or words for a new one")
            .suggesting(List.copyOf(base.repairs().keySet())));
    if (answers.containsKey(REPAIR) && isNewRepair(answers)) {
      questions.addAll(NewRepair.work(asked, "repair-"));
    }
    questions.add(Question.words("arises", "How does it come about, in a sentence").usual(""));
    questions.add(Question.words("prevent", "What keeps it from coming again").usual(""));
    questions.add(
        Question.words("story", "What was it like where you met it, in a sentence or two")
            .usual(""));
    questions.add(Asked.source());
    return questions;
  }

  private boolean isNewRepair(Map<String, String> answers) {
    return !base.repairs().containsKey(answers.get(REPAIR));
  }

  private Neighbours neighbours(Map<String, String> answers) {
    return new Neighbours(base, Lists.ids(answers.getOrDefault("like", "")));
  }

  /** Checks that the person named besides those on which the neighbours show. */
  private List<Check> also(Map<String, String> answers) {
    List<Check> offered = neighbours(answers).checks();
    return Lists.ids(answers.getOrDefault("also", "")).stream()
        .distinct()
        .map(base.checks()::get)
        .filter(c -> c != null && !offered.contains(c))
        .toList();
  }

  /** All checks that were asked about. */
  private List<Check> checks(Map<String, String> answers) {
    List<Check> all = new ArrayList<>(neighbours(answers).checks());
    all.addAll(also(answers));
    return all;
  }

  private static List<String> said(Neighbours like) {
    List<String> ids = like.complaints().stream().limit(6).map(Check::id).toList();
    return ids.isEmpty() ? List.of() : List.of("Of those people say: " + String.join(", ", ids));
  }

  /**
   * @param place how far one has come, for those who wonder when it ends
   */
  private static Question row(Check check, String place, Neighbours like) {
    List<String> before = new ArrayList<>();
    before.add("Check " + place + check.id() + ": " + check.ask());
    before.addAll(like.rows(check));
    return Question.of(
            check.id(),
            "And with the new cause? OUTCOME often, OUTCOME sometimes, as you met it (? lists them);"
                + " nothing if as on a sound gate",
            answer -> RowAnswer.complaint(answer, check))
        .suggesting(check.outcomes().stream().map(Check.Outcome::id).toList())
        .after(before)
        .usual("");
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    String path = answers.get("area") + "/" + answers.get("id");
    SortedMap<String, String> files = new TreeMap<>();
    files.put(path + ".yaml", card(answers));
    files.put(path + ".case.yaml", testCase(answers));
    return files;
  }

  private String card(Map<String, String> answers) {
    String id = answers.get("id");
    CardText text =
        new CardText()
            .line("cause", id)
            .words("name", answers.get("name"))
            .line("area", answers.get("area"))
            .line("prior", Prior.figure(answers.get("prior")));
    shows(text, answers);
    if (!isNewRepair(answers)) {
      text.raw("removed-by: {" + answers.get(REPAIR) + ": nearly always}\n");
    }
    text.words("arises", answers.get("arises"))
        .words("prevent", answers.get("prevent"))
        .words("source", answers.get("source"));
    if (isNewRepair(answers)) {
      text.divider();
      NewRepair.card(text, answers, "repair-", repairId(answers), answers.get(REPAIR), id);
    }
    return text.toString();
  }

  private String repairId(Map<String, String> answers) {
    String id = "mend-" + answers.get("id");
    return base.repairs().containsKey(id) ? id + "-2" : id;
  }

  /** The new rows, each below those that it must be told from. */
  private void shows(CardText text, Map<String, String> answers) {
    Neighbours like = neighbours(answers);
    StringBuilder rows = new StringBuilder();
    RowAnswer.parts(answers.get("complaints"))
        .forEach((id, word) -> rows.append("  ").append(id + ": " + word).append('\n'));
    for (Check check : checks(answers)) {
      String answer = answers.getOrDefault(check.id(), "");
      if (!answer.isBlank()) {
        like.rows(check).forEach(line -> rows.append("  #   ").append(line).append('\n'));
        rows.append("  ").append(check.id() + ": " + RowAnswer.yaml(answer)).append('\n');
      }
    }
    if (!rows.isEmpty()) {
      text.raw("shows:\n" + rows);
    }
  }

  private String testCase(Map<String, String> answers) {
    CardText text =
        new CardText()
            .line("case", answers.get("id") + "-first-met")
            .words("story", answers.get("story"))
            .line("person", "technician")
            .ids("complaints", List.copyOf(RowAnswer.parts(answers.get("complaints")).keySet()));
    StringBuilder shown = new StringBuilder();
    for (Check check : checks(answers)) {
      String answer = answers.getOrDefault(check.id(), "");
      if (!answer.isBlank()) {
        shown.append("  ").append(check.id() + ": " + RowAnswer.likeliest(answer)).append('\n');
      }
    }
    String repair = isNewRepair(answers) ? repairId(answers) : answers.get(REPAIR);
    return text.raw(shown.isEmpty() ? "" : "answers:\n" + shown)
        .line("others", "usual")
        .ids("truth", List.of(answers.get("id")))
        .ids("repairs", List.of(repair))
        .toString();
  }

  /** A prior as people say it: of a hundred gates. */
  private static final class Prior {
    static Optional<String> complaint(String answer) {
      return Asked.number(0.01, 90).apply(answer);
    }

    static String figure(String ofAHundred) {
      return String.format(Locale.ROOT, "%.5f", Double.parseDouble(ofAHundred) / 100)
          .replaceFirst("0+$", "");
    }
  }
}
