package yett.command.practice;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.RoleOption;
import yett.command.common.UsageException;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Role;
import yett.practice.Notebook;
import yett.practice.Result;

/** {@code practice}: exercises on an invented gate. */
public record PracticeCommands(Desk desk, Console console, StandardStreams output) {
  static final String PRACTICE =
      "Usage: practice [FILE...] [--case NAME] [--area AREA] [--level easy|fair|hard]"
          + " [--seed NUMBER] [--as trainee|technician|electrician] [--new], or practice"
          + " --course FILE --trainee NAME [--new]. Without a FILE of test cases the fault is"
          + " drawn from the cards. The same seed is the same gate. An unfinished exercise"
          + " goes on unless you give --new. A course has its own exercises: the next one"
          + " that this trainee has not done on this computer begins.";

  private static final String PROGRESS =
      "Usage: practice progress. Your progress is kept in a file of your own beside the"
          + " casebook.";

  @Command(
      name = "practice",
      description = "find a fault on a gate that is made up",
      help = PRACTICE,
      completionProvider = Completions.FILES)
  public void practice(
      @Arguments List<String> words,
      @Option(
              longName = "case",
              description = "which test case of the files; drawn at random unless given")
          String name,
      @Option(longName = "area", description = "where the fault is to lie") String area,
      @Option(longName = "level", description = "easy, fair or hard") String level,
      @Option(
              longName = "seed",
              description = "a whole number; the same number is the same exercise")
          String seed,
      @Option(longName = "as", description = "whose work is practised; a technician's unless given")
          String who,
      @Option(longName = "course", description = "the file of a course") String course,
      @Option(longName = "trainee", description = "whose turn at the course it is") String trainee,
      @Option(longName = "new", description = "drop an exercise that was left") boolean fresh) {
    ExerciseChoice choice = new ExerciseChoice(desk, console, output);
    Notebook notebook = new Notebook(desk.data());
    ExerciseRun run = new ExerciseRun(desk, console, notebook, choice);
    Optional<Notebook.Left> left = fresh ? Optional.empty() : notebook.left();
    if (!(typed(course) + typed(trainee)).isEmpty()) {
      if (!words.isEmpty()
          || !(typed(name) + typed(area) + typed(level) + typed(seed) + typed(who)).isEmpty()) {
        throw new UsageException(
            "A course says itself which exercises, and whose work it is. " + PRACTICE);
      }
      inCourse(typed(course), typed(trainee), left, run);
      return;
    }
    if (!words.isEmpty() && who != null) {
      throw new UsageException(
          "A test case says itself who works on its gate: leave out --as, or the files.");
    }
    Role role = who == null ? Role.TECHNICIAN : RoleOption.of(who);
    ExerciseOptions.Wanted wanted =
        new ExerciseOptions(desk)
            .wanted(words, typed(name), typed(area), typed(level), role, typed(seed));
    try {
      if (!run.wentOn(left)) {
        run.begin(choice.begun(wanted, notebook.progress()), "");
      }
    } catch (CaseLeftException e) {
      // Nothing has begun.
    }
  }

  private void inCourse(String file, String name, Optional<Notebook.Left> left, ExerciseRun run) {
    Notebook notebook = run.notebook();
    CourseTurn turn = new CourseTurn(desk, output, file, name);
    Optional<Result.Sitting> whose = left.flatMap(l -> l.begun().course());
    if (left.isPresent() && !whose.equals(turn.next(notebook.progress().results()))) {
      throw new UsageException(
          "Another exercise was left here"
              + whose.map(s -> ", that of " + s.trainee()).orElse("")
              + ". It goes on with practice"
              + whose.map(s -> " --course FILE --trainee \"" + s.trainee() + "\"").orElse("")
              + "; with --new it is dropped.");
    }
    try {
      if (run.wentOn(left)) {
        return;
      }
      Optional<Result.Sitting> next = turn.next(notebook.progress().results());
      if (next.isEmpty()) {
        console.say("All exercises of this course are done. Hand in: " + notebook.results());
        return;
      }
      run.begin(
          turn.begun(next.get()),
          "Exercise " + next.get().number() + " of " + turn.size() + ", for " + name + ".");
    } catch (CaseLeftException e) {
      // Nothing has begun.
    }
  }

  @Command(
      name = {"practice", "progress"},
      description = "show how practice has gone so far, weakest area first",
      help = PROGRESS)
  public void progress() {
    console.show(ProgressViews.of(new Notebook(desk.data()).progress()));
  }

  private static String typed(String option) {
    return Objects.requireNonNullElse(option, "");
  }
}
