package yett.command.practice;

import java.util.List;
import java.util.Optional;
import yett.console.Console;
import yett.desk.Desk;
import yett.knowledge.Role;
import yett.practice.Exercise;
import yett.practice.Notebook;
import yett.practice.PracticeEntry;
import yett.practice.PracticeScore;
import yett.practice.TraineeProgress;
import yett.practice.Workbench;

/** Leads through an exercise from its beginning, or from where it was left, to the result. */
record ExerciseRun(Desk desk, Console console, Notebook notebook, ExerciseChoice choice) {

  /** Offers to continue the unfinished exercise; returns whether it was continued. */
  boolean wentOn(Optional<Notebook.Left> left) {
    if (left.isEmpty() || !choice.goesOn(left.get())) {
      return false;
    }
    Notebook.Begun begun = left.get().begun();
    run(begun, choice.exercise(begun), left.get().entries());
    return true;
  }

  /**
   * @param told text shown before it begins; empty for none
   */
  void begin(Notebook.Begun begun, String told) {
    Exercise exercise = choice.exercise(begun);
    notebook.begin(begun);
    if (!told.isEmpty()) {
      console.say(told);
    }
    run(begun, exercise, List.of());
  }

  private void run(Notebook.Begun begun, Exercise exercise, List<PracticeEntry> before) {
    try (Workbench bench = new Workbench(desk.trial(), exercise, before, notebook::keep)) {
      boolean over = new PracticeTable(console, bench, desk.trial().base()).run();
      if (!over) {
        console.say("Kept. Go on with it: practice");
        return;
      }
      if (console.interactive()) {
        console.say("For comparison, the plan works on the same gate.");
      }
      PracticeScore score = PracticeScore.of(desk.trial(), bench);
      TraineeProgress progress = notebook.progress();
      notebook.finish(score.result(desk.clock().instant(), bench, begun.course()));
      console.show(new ScoreViews(desk.trial().base()).blocks(bench, score, progress.ratio()));
      if (begun.course().isPresent()) {
        console.say("Kept in " + notebook.results() + ", to hand in at the end of the course.");
        return;
      }
      console.say("The same again: " + command(begun));
      notebook.progress().weak().stream()
          .findFirst()
          .ifPresent(weak -> console.say("Weakest so far: practice --area " + weak.name()));
    }
  }

  private static String command(Notebook.Begun begun) {
    return "practice "
        + (begun.file().isEmpty() ? "" : "\"" + begun.file() + "\" --case " + begun.name() + " ")
        + (begun.area().isEmpty() ? "" : "--area " + begun.area() + " ")
        + (begun.level().isEmpty() ? "" : "--level " + begun.level() + " ")
        + (begun.role().equals(Role.TECHNICIAN.word()) || !begun.file().isEmpty()
            ? ""
            : "--as " + begun.role() + " ")
        + "--seed "
        + begun.seed();
  }
}
