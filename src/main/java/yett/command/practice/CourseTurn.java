package yett.command.practice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Names;
import yett.practice.Exercises;
import yett.practice.Notebook;
import yett.practice.Result;
import yett.practice.course.Course;
import yett.practice.course.CourseFile;

/** Finds which exercise of a course a trainee does next. */
final class CourseTurn {
  private final Desk desk;
  private final Course course;
  private final String trainee;

  /**
   * @throws UsageException if the course has no such trainee
   */
  CourseTurn(Desk desk, StandardStreams output, String file, String trainee) {
    if (file.isEmpty()) {
      throw new UsageException("Which course? Name its file: --course FILE.");
    }
    this.desk = desk;
    this.course = course(desk, output, Path.of(file));
    this.trainee = trainee;
    if (!course.trainees().contains(trainee)) {
      throw new UsageException(
          (trainee.isEmpty()
                  ? "Whose turn is it? --trainee NAME. "
                  : Words.quoted(trainee) + " is not in this course. ")
              + Names.advice(trainee, course.trainees()));
    }
  }

  /** Reads a course. If it has problems, they are reported and the command ends. */
  static Course course(Desk desk, StandardStreams output, Path path) {
    CourseFile file = CourseFile.read(path, new Exercises(desk.trial()).areas());
    file.problems().forEach(p -> output.tell(p.toString()));
    return file.course().orElseThrow(() -> new ExitException(Sysexits.DATA));
  }

  int size() {
    return course.tasks().size();
  }

  /** The first exercise that the trainee has not finished with these cards. */
  Optional<Result.Sitting> next(List<Result> results) {
    String ruleBase = desk.trial().base().fingerprint();
    Set<Result.Sitting> done =
        results.stream().flatMap(r -> r.course().stream()).collect(Collectors.toSet());
    return IntStream.rangeClosed(1, size())
        .mapToObj(n -> new Result.Sitting(course.id(), trainee, n, ruleBase))
        .filter(s -> !done.contains(s))
        .findFirst();
  }

  Notebook.Begun begun(Result.Sitting sitting) {
    return begun(desk, course, sitting.number()).of(sitting);
  }

  static Notebook.Begun begun(Desk desk, Course course, int number) {
    Course.Task task = course.tasks().get(number - 1);
    return new Notebook.Begun(
        desk.trial().base().fingerprint(),
        task.file(),
        task.name(),
        task.area(),
        task.level(),
        course.role().word(),
        task.seed());
  }
}
