package yett.practice.course;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.files.BoundedFile;
import yett.knowledge.CardFile;
import yett.knowledge.Fields;
import yett.knowledge.Names;
import yett.knowledge.PlainText;
import yett.knowledge.Problem;
import yett.knowledge.Role;
import yett.practice.Level;

/**
 * A course as read from its trainer's file.
 *
 * @param course empty if there is any problem
 */
public record CourseFile(Optional<Course> course, List<Problem> problems) {
  private static final int LARGEST = 1 << 20;

  /**
   * @param areas that have causes
   */
  public static CourseFile read(Path path, List<String> areas) {
    String name = path.toString();
    try {
      return read(name, BoundedFile.text(path, LARGEST), areas);
    } catch (IOException e) {
      return new CourseFile(
          Optional.empty(),
          List.of(
              new Problem(
                  "cannot-read",
                  name,
                  0,
                  0,
                  "this cannot be read",
                  "See that there is such a file, of text in UTF-8.")));
    }
  }

  static CourseFile read(String file, String text, List<String> areas) {
    List<Problem> problems = new ArrayList<>();
    List<Course> courses = new ArrayList<>();
    for (CardFile.Document document : CardFile.read(file, text, problems)) {
      PlainText.check(document, problems);
      courses.add(course(file, new Fields(document, "", document.root(), problems), areas));
    }
    if (problems.isEmpty() && courses.size() != 1) {
      problems.add(
          new Problem(
              "one-course",
              file,
              0,
              0,
              "there is not one course in this file",
              "A course begins with a line \"course: a-name\", and has a file of its own."));
    }
    return problems.isEmpty()
        ? new CourseFile(Optional.of(courses.get(0)), List.of())
        : new CourseFile(Optional.empty(), List.copyOf(problems));
  }

  private static Course course(String file, Fields fields, List<String> areas) {
    String id = fields.text("course");
    String title = fields.text("title", id);
    Role role = Role.named(fields.oneOf("as", Role.TECHNICIAN.word(), workers()));
    List<String> trainees = fields.texts("trainees");
    twice(fields, trainees);
    List<Course.Task> tasks = new ArrayList<>();
    for (Fields task : fields.innerList("exercises")) {
      tasks.add(task(file, task, areas));
    }
    if (tasks.isEmpty()) {
      fields.problem(
          "exercises",
          "no-exercise",
          "a course needs exercises",
          "Such as: exercises: [{area: chain, level: easy, seed: 11}].");
    }
    fields.finish();
    return new Course(id, title, role, trainees, List.copyOf(tasks));
  }

  private static List<String> workers() {
    return Role.words().stream().filter(w -> !w.equals(Role.CALLER.word())).toList();
  }

  private static void twice(Fields fields, List<String> trainees) {
    Set<String> seen = new HashSet<>();
    if (trainees.isEmpty()) {
      fields.problem(
          "trainees", "no-trainee", "a course needs trainees", "Name them: trainees: [Ada, Tom].");
    }
    for (String trainee : trainees) {
      if (!seen.add(trainee.toLowerCase(java.util.Locale.ROOT))) {
        fields.problem(
            "trainees",
            "trainee-twice",
            "\"" + trainee + "\" is named twice",
            "Give each a name of their own; their results are told apart by it.");
      }
    }
  }

  private static Course.Task task(String file, Fields fields, List<String> areas) {
    if (fields.has("file")) {
      Path beside = Path.of(file).toAbsolutePath().resolveSibling(fields.text("file")).normalize();
      Course.Task task =
          new Course.Task("", "", seed(fields), beside.toString(), fields.text("case"));
      fields.finish();
      return task;
    }
    String area = fields.text("area", "");
    if (!area.isEmpty() && !areas.contains(area)) {
      fields.problem(
          "area", "no-area", "there is no area \"" + area + "\"", Names.advice(area, areas));
    }
    String level = fields.has("level") ? fields.oneOf("level", "", Level.words()) : "";
    if (!fields.has("seed")) {
      fields.text("seed");
    }
    Course.Task task = new Course.Task(area, level, seed(fields), "", "");
    fields.finish();
    return task;
  }

  /** The seed of an exercise; the same number gives the same gate. */
  private static long seed(Fields fields) {
    if (!fields.has("seed")) {
      return 1;
    }
    if (!fields.get("seed").isIntegralNumber()) {
      fields.problem(
          "seed",
          "no-seed",
          Fields.shown(fields.get("seed")) + " is no seed",
          "A whole number, such as 4711.");
      return 1;
    }
    return fields.get("seed").asLong();
  }
}
