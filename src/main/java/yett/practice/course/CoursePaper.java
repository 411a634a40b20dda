package yett.practice.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.course.Expertise;
import yett.interview.site.SiteFacts;
import yett.knowledge.RuleBase;
import yett.practice.Exercise;
import yett.practice.StepTold;
import yett.record.Outline;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.wording.Figures;
import yett.wording.Wording;

/** Writes the papers of a course: a sheet for the trainees and a solution for the trainer. */
public final class CoursePaper {
  private static final String DANGER = "danger";

  /** Kinds of steps that somebody at the gate takes; all others only record the case. */
  private static final Set<String> WORK =
      Set.of(
          "danger",
          "check",
          "look-round",
          "proof",
          "enter",
          "leave",
          "repair",
          "retest",
          "make-safe");

  private final Expertise expertise;
  private final RuleBase base;
  private final Course course;

  public CoursePaper(Expertise expertise, Course course) {
    this.expertise = expertise;
    this.base = expertise.base();
    this.course = course;
  }

  /** Writes what is known of each gate, with room for notes, and nothing of what is wrong. */
  public void sheet(Outline paper, List<Exercise> exercises) {
    paper.title(course.title());
    paper.paragraph("Name", "______________________________");
    paper.paragraph(
        "Nobody touches a gate that they have not looked over: dangers come first, then the state"
            + " of the work, then the check. Confirm the fault before you mend it.");
    for (int i = 0; i < exercises.size(); i++) {
      told(paper, i + 1, exercises.get(i));
      for (String line :
          List.of(
              "Dangers looked for, and what was done about them",
              "Checked or measured, in this state of the work, and what it showed",
              "What it is, and what confirmed it",
              "What puts it right, and what must be set up for it",
              "Proofs before the gate returns to service")) {
        paper.paragraph(line, "______________________________");
      }
    }
  }

  private void told(Outline paper, int number, Exercise exercise) {
    RecordedCase told = exercise.told();
    paper.heading("Exercise " + number);
    if (!told.story().isBlank()) {
      paper.paragraph(told.story());
    }
    paper.paragraph(
        "Reported",
        told.complaints().stream()
            .map(id -> base.checks().get(id).ask())
            .collect(Collectors.joining("; ")));
    if (!told.history().isEmpty()) {
      paper.paragraph(
          "Lately",
          told.history().stream()
              .map(id -> base.histories().get(id).name())
              .collect(Collectors.joining("; ")));
    }
    paper.paragraph("The gate", gate(told));
    paper.paragraph("You", "a " + told.person().word());
  }

  /** The details in which this gate differs from most. */
  private String gate(RecordedCase told) {
    List<String> words = new ArrayList<>();
    Map<String, String> answers = new SiteFacts(base).answers(told.site());
    told.site()
        .forEach(
            (question, answer) -> {
              if (answer.equals(answers.get(question))) {
                var card = base.siteQuestions().get(question);
                words.add(card.name() + ": " + Wording.site(card, answer));
              }
            });
    return words.isEmpty() ? "as most are" : String.join("; ", words);
  }

  /**
   * Writes what was wrong, and the plan's way on the same gate with every change of set-up.
   *
   * @param averages in the order of the exercises
   */
  public void solution(Outline paper, List<Exercise> exercises, List<PlanAverage> averages) {
    paper.title(course.title() + ": model solution");
    paper.paragraph(
        "The plan worked on the same gates and knew no more than the trainees. Another way is as"
            + " good if it is as safe, confirms the fault before it is mended, and takes about as"
            + " long.");
    for (int i = 0; i < exercises.size(); i++) {
      Exercise exercise = exercises.get(i);
      told(paper, i + 1, exercise);
      paper.paragraph(
          "What it is",
          exercise.truth().stream()
              .sorted()
              .map(id -> base.causes().get(id).name())
              .collect(Collectors.joining("; ")));
      PlanAverage average = averages.get(i);
      paper.paragraph(
          "On average",
          Figures.minutes(average.minutes())
              + (Math.round(average.parts()) == 0
                  ? ", no parts"
                  : " and parts for " + Math.round(average.parts()))
              + ", over "
              + average.draws()
              + " gates with this fault that are reported alike");
      way(paper, new Replayer(expertise).run(exercise.told(), exercise.gate(base)));
    }
  }

  private void way(Outline paper, Replayed run) {
    List<Replayed.Taken> steps = run.steps().stream().filter(s -> WORK.contains(s.kind())).toList();
    List<String> hazards = steps.stream().flatMap(s -> hazards(s.id())).distinct().toList();
    base.cautionsFor(hazards).forEach(c -> paper.paragraph(c.word().name(), c.text()));
    StepTold told = new StepTold(base);
    int number = 0;
    String before = "";
    for (Replayed.Taken step : steps) {
      if (!step.kind().equals(DANGER)) {
        paper.item(++number, told.words(step));
        if (!step.why().words().isBlank()) {
          paper.inner("because: " + told.reason(step.why()));
        }
      } else {
        if (!before.equals(DANGER)) {
          paper.item(++number, "Look for dangers, from two metres away");
        }
        paper.inner(step.asked() + " " + told.answer(step.id(), step.answer()));
      }
      before = step.kind();
    }
    paper.paragraph("In all", Figures.minutes(run.spentMinutes()));
  }

  private Stream<String> hazards(String card) {
    return Stream.of(
            Optional.ofNullable(base.checks().get(card)).map(c -> work(c.hazards(), c.needs())),
            Optional.ofNullable(base.repairs().get(card)).map(r -> work(r.hazards(), r.needs())),
            Optional.ofNullable(base.setUps().get(card)).map(s -> s.hazards()))
        .flatMap(Optional::stream)
        .flatMap(List::stream);
  }

  private List<String> work(List<String> hazards, List<String> needs) {
    List<String> all = new ArrayList<>(hazards);
    base.withOuter(needs).forEach(s -> all.addAll(base.setUps().get(s).hazards()));
    return all;
  }
}
