package yett.command.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.command.diagnose.screen.CautionViews;
import yett.command.diagnose.screen.StepViews;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.SiteQuestion;
import yett.practice.Exercise;
import yett.practice.Workbench;
import yett.replay.RecordedCase;
import yett.wording.Figures;
import yett.wording.UsualRangeWords;
import yett.wording.Wording;

/** The screens of an exercise. */
public final class PracticeViews {
  private final RuleBase base;
  private final CautionViews cautions;
  private final StepViews steps;

  public PracticeViews(RuleBase base) {
    this.base = base;
    this.cautions = new CautionViews(base);
    this.steps = new StepViews(base, cautions);
  }

  public CautionViews cautions() {
    return cautions;
  }

  public StepViews steps() {
    return steps;
  }

  /** What is known when the trainee arrives. */
  public List<Block> outset(Workbench bench, LabelledCards labels) {
    RecordedCase told = bench.exercise().told();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Practice" + title(bench.exercise())));
    if (!told.story().isEmpty()) {
      blocks.add(Block.paragraph(told.story()));
    }
    List<Block.Row> rows = new ArrayList<>();
    rows.add(
        Block.row(
            "Reported",
            told.complaints().stream()
                .map(id -> base.checks().get(id).ask())
                .collect(Collectors.joining("; "))));
    if (!told.history().isEmpty()) {
      rows.add(
          Block.row(
              "Lately",
              told.history().stream()
                  .map(id -> base.histories().get(id))
                  .map(History::name)
                  .collect(Collectors.joining("; "))));
    }
    rows.add(Block.row("You", Wording.aPerson(told.person())));
    blocks.add(new Block.Rows(rows));
    blocks.add(
        Block.paragraph(
            "Type the number or the words of a check. Words: dangers, checks, repairs, set-ups,"
                + " try"
                + running(labels)
                + ", proofs, finish, hand over; gate, usual, so far, hint; save, help."));
    return blocks;
  }

  /** The set-up in which the gate is tried, to put after the word for it. */
  String running(LabelledCards labels) {
    return base.setUps().containsKey(SetUp.GATE_RUNNING)
        ? " (in set-up " + labels.setUps(List.of(SetUp.GATE_RUNNING), base) + ")"
        : "";
  }

  /** The name of an exercise that was drawn. That of a test case mostly names its fault. */
  private static String title(Exercise exercise) {
    return exercise.drawn() ? " · " + Wording.capital(exercise.told().name()) : "";
  }

  public List<Block> gate(Workbench bench) {
    List<Block.Row> rows = new ArrayList<>();
    var sites = new SiteFacts(base);
    var given = bench.exercise().told().site();
    var answers = sites.answers(given);
    for (SiteQuestion question : sites.questions(given)) {
      String answer = answers.get(question.id());
      rows.add(Block.row(question.name(), question.said(answer)));
    }
    return List.of(Block.heading("The gate as installed"), new Block.Rows(rows));
  }

  public static String money(double amount) {
    return String.format(Locale.ROOT, "%.0f", amount);
  }

  /** What a check showed: the reading of the instrument, without its meaning. */
  public List<Block> shown(Check check, Answer answer) {
    String words = answer(check, answer);
    String by = Wording.instrument(check).map(i -> " (" + i + ")").orElse("");
    return List.of(
        Block.paragraph(Text.of(check.ask() + " ").and(Text.strong(words)).and(by + ".")));
  }

  public static String answer(Check check, Answer answer) {
    return answer.map(
        chosen -> Wording.meaning(check, chosen),
        Answer.Read::typed,
        () -> "it cannot be told",
        () -> "it cannot be told");
  }

  public List<Block> usual(Moment moment, Optional<Check> last) {
    Optional<String> range =
        last.flatMap(
            c ->
                moment
                    .judgement()
                    .expectation(c.id())
                    .map(e -> c.ask() + " Usual: " + UsualRangeWords.reasoned(c, e) + "."));
    return List.of(
        Block.paragraph(range.orElse("The rules give no usual range for what was measured last.")));
  }

  /** What was found so far, which set-ups are in force, and how long it took. */
  public List<Block> soFar(Workbench bench) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("So far · " + Figures.minutes(bench.minutes())));
    Moment moment = bench.moment();
    List<Block.Row> rows = new ArrayList<>();
    Set<String> inForce = moment.state().work().setUps();
    rows.add(Block.row("In force", inForce.isEmpty() ? "nothing" : setUps(inForce)));
    moment.state().answers().stream()
        .map(a -> Block.row(title(a.check()), answer(base.checks().get(a.check()), a.answer())))
        .forEach(rows::add);
    blocks.add(new Block.Rows(rows));
    return blocks;
  }

  private static String title(String id) {
    return Wording.capital(id.replace('-', ' '));
  }

  public String setUps(Set<String> inForce) {
    return inForce.stream()
        .map(id -> base.setUps().get(id).name())
        .collect(Collectors.joining("; "));
  }
}
