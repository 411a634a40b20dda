package yett.command.practice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.NewFile;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.practice.Exercise;
import yett.practice.GivenAway;
import yett.practice.course.ClassTable;
import yett.practice.course.Course;
import yett.practice.course.CoursePaper;
import yett.practice.course.PlanAverage;
import yett.practice.course.ResultFiles;

/**
 * {@code practice collect}, {@code sheet} and {@code solution}: results and papers for the trainer
 * of a class.
 */
public record CourseCommands(Desk desk, Console console, StandardStreams output) {
  private static final String COLLECT =
      "Usage: practice collect COURSE FILE... [--csv FILE] [--draws NUMBER]. The files"
          + " are practice.jsonl of the trainees' computers; they are put together in one"
          + " table, best first: by safety, then by gates put right, then by faults confirmed"
          + " before they were repaired, and only then by time and parts against the plan's"
          + " average over many gates.";

  private static final String SHEET =
      "Usage: practice sheet COURSE [--html FILE] [--markdown FILE]. What is known of each gate of"
          + " a course, with room to write.";

  private static final String SOLUTION =
      "Usage: practice solution COURSE [--html FILE] [--markdown FILE] [--draws NUMBER]. What is"
          + " wrong with each gate of a course, the plan's way on it, and what it costs on"
          + " average.";

  private static final int DRAWS = 12;
  private static final int MOST_DRAWS = 200;

  @Command(
      name = {"practice", "collect"},
      description = "make one table of what a class did on many computers",
      help = COLLECT,
      completionProvider = Completions.FILES)
  public void collect(
      @Arguments List<String> words,
      @Option(longName = "csv", description = "write the table to this new file as well")
          String csv,
      @Option(
              longName = "draws",
              description = "over how many gates the plan's average is taken, 12 unless given")
          String draws) {
    UsageException.when(words.size() < 2, COLLECT);
    int often = draws(draws);
    Optional<Path> file = Optional.ofNullable(csv).map(NewFile::named);
    Course course = CourseTurn.course(desk, output, Path.of(words.get(0)));
    ResultFiles results =
        ResultFiles.read(words.subList(1, words.size()).stream().map(Path::of).toList());
    results.problems().forEach(output::tell);
    ClassTable table =
        ClassTable.of(
            course,
            results.results(),
            averages(exercises(course), often),
            desk.trial().base().fingerprint());
    console.show(ClassViews.table(course, table, often));
    file.ifPresent(f -> NewFile.write(f, ClassViews.csv(table), output));
    ExitException.unless(results.problems().isEmpty(), Sysexits.DATA);
  }

  @Command(
      name = {"practice", "sheet"},
      description = "print the exercises of a course, with room to write",
      help = SHEET,
      completionProvider = Completions.FILES)
  public void sheet(
      @Arguments List<String> words,
      @Option(longName = "html", description = "to this new file, as a page to print") String html,
      @Option(longName = "markdown", description = "to this new file, as Markdown")
          String markdown) {
    CoursePapers papers = new CoursePapers(html, markdown);
    Course course = course(words, SHEET);
    List<Exercise> exercises = exercises(course);
    warnOfStories(exercises);
    CoursePaper paper = new CoursePaper(desk.trial(), course);
    papers.write(course.title(), outline -> paper.sheet(outline, exercises), desk, output);
  }

  @Command(
      name = {"practice", "solution"},
      description = "print the model solution of a course",
      help = SOLUTION,
      completionProvider = Completions.FILES)
  public void solution(
      @Arguments List<String> words,
      @Option(longName = "html", description = "to this new file, as a page to print") String html,
      @Option(longName = "markdown", description = "to this new file, as Markdown") String markdown,
      @Option(
              longName = "draws",
              description = "over how many gates the plan's average is taken, 12 unless given")
          String draws) {
    int often = draws(draws);
    CoursePapers papers = new CoursePapers(html, markdown);
    Course course = course(words, SOLUTION);
    List<Exercise> exercises = exercises(course);
    List<PlanAverage> averages = averages(exercises, often);
    CoursePaper paper = new CoursePaper(desk.trial(), course);
    papers.write(
        course.title(), outline -> paper.solution(outline, exercises, averages), desk, output);
  }

  /**
   * Warns of stories that name the fault; on the error stream, because the sheet may be printed.
   */
  private void warnOfStories(List<Exercise> exercises) {
    for (int i = 0; i < exercises.size(); i++) {
      Exercise exercise = exercises.get(i);
      List<String> words =
          GivenAway.in(exercise.told().story(), exercise.truth(), desk.trial().base());
      if (!words.isEmpty()) {
        output.tell(
            "The story of exercise "
                + (i + 1)
                + " may give its fault away: "
                + String.join(", ", words)
                + ".");
      }
    }
  }

  private Course course(List<String> words, String usage) {
    UsageException.when(words.size() != 1, usage);
    return CourseTurn.course(desk, output, Path.of(words.get(0)));
  }

  private static int draws(String typed) {
    if (typed == null) {
      return DRAWS;
    }
    if (!typed.matches("[1-9]\\d{0,2}") || Integer.parseInt(typed) > MOST_DRAWS) {
      throw new UsageException("--draws takes a whole number from 1 to " + MOST_DRAWS + ".");
    }
    return Integer.parseInt(typed);
  }

  private List<Exercise> exercises(Course course) {
    ExerciseChoice choice = new ExerciseChoice(desk, console, output);
    return IntStream.rangeClosed(1, course.tasks().size())
        .mapToObj(n -> choice.exercise(CourseTurn.begun(desk, course, n)))
        .toList();
  }

  private List<PlanAverage> averages(List<Exercise> exercises, int draws) {
    List<PlanAverage> averages = new ArrayList<>();
    try (Progress progress =
        console.start("The plan works on gates alike", exercises.size() * draws)) {
      exercises.forEach(e -> averages.add(PlanAverage.of(desk.trial(), e, draws, progress::step)));
    }
    return averages;
  }
}
