package yett.command.practice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.command.diagnose.DiagnoseVerb;
import yett.command.diagnose.PutAside;
import yett.console.Block;
import yett.console.Reply;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.practice.Exercise;
import yett.practice.Exercises;
import yett.practice.Jotting;
import yett.practice.Level;
import yett.practice.Notebook;
import yett.practice.Reckoning;
import yett.practice.TraineeProgress;
import yett.practice.Workbench;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;

/** {@code practice}: a gate that is made up, for somebody to learn on. */
public final class PracticeVerb extends Verb {
  private final Workplace place;

  public PracticeVerb(Workplace place) {
    super(
        "practice",
        "find a fault on a gate that is made up",
        "Usage: practice [FILE...] [--case NAME] [--area AREA] [--level easy|fair|hard] [--seed"
            + " NUMBER] [--as trainee|technician|electrician] [--new]. Without a FILE of test cases"
            + " the fault is drawn from the cards. The same seed is the same gate. An exercise that"
            + " was left goes on, unless --new is said.",
        value("case", "the test case of the files; drawn if it is not said"),
        value("area", "where the fault is to lie"),
        value("level", "easy, fair or hard"),
        value("seed", "a whole number; the same number is the same exercise"),
        value("as", "whose work is practised; a technician's if it is not said"),
        flag("new", "drop an exercise that was left"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Wanted wanted = wanted(context);
    Notebook notebook = new Notebook(place.desk().data());
    Optional<Notebook.Left> left = has(context, "new") ? Optional.empty() : notebook.left();
    try {
      if (left.isPresent() && goesOn(left.get())) {
        Notebook.Begun begun = left.get().begun();
        return run(begun, exercise(begun), notebook, left.get().jottings());
      }
      Notebook.Begun begun = begun(wanted, notebook.progress());
      Exercise exercise = exercise(begun);
      notebook.begin(begun);
      return run(begun, exercise, notebook, List.of());
    } catch (PutAside e) {
      return OK;
    }
  }

  /** What was asked for on the command line. */
  private record Wanted(
      List<String> files, String name, String area, String level, Role role, long seed) {}

  private Wanted wanted(CommandContext context) {
    Role role = DiagnoseVerb.role(option(context, "as", "technician"));
    if (role == Role.CALLER) {
      throw new UsageException("A caller does not work on a gate. " + getHelp());
    }
    String level = option(context, "level", "").toLowerCase(Locale.ROOT);
    if (!level.isEmpty() && !Level.words().contains(level)) {
      throw new UsageException(
          "\"" + Words.shortened(level) + "\" is no level. " + Names.advice(level, Level.words()));
    }
    String area = option(context, "area", "").toLowerCase(Locale.ROOT);
    List<String> areas = new Exercises(place.desk().trial()).areas();
    if (!area.isEmpty() && !areas.contains(area)) {
      throw new UsageException(
          "There is no area \"" + Words.shortened(area) + "\". " + Names.advice(area, areas));
    }
    if (!words(context).isEmpty() && !(area + level).isEmpty()) {
      throw new UsageException(
          "A test case has its own area and level: leave out --area and --level, or the files.");
    }
    long seed = seed(option(context, "seed", ""));
    return new Wanted(words(context), option(context, "case", ""), area, level, role, seed);
  }

  private long seed(String typed) {
    if (typed.isEmpty()) {
      return place.desk().clock().instant().toEpochMilli() % 1_000_000;
    }
    try {
      return Long.parseLong(typed.strip());
    } catch (NumberFormatException e) {
      throw new UsageException(
          "\"" + Words.shortened(typed) + "\" is no seed: a whole number, such as 4711.");
    }
  }

  private String line(String prompt) {
    if (place.console().ask(prompt + "> ") instanceof Reply.Line line) {
      return line.text().strip();
    }
    throw new PutAside();
  }

  private void say(String sentence) {
    place.console().show(Block.paragraph(sentence));
  }

  private boolean goesOn(Notebook.Left left) {
    Notebook.Begun begun = left.begun();
    if (!begun.ruleBase().equals(place.desk().trial().base().fingerprint())) {
      say(
          "An exercise was left, but the cards have changed since, and with them its gate. Seed "
              + begun.seed()
              + " begins a like one.");
      return false;
    }
    say(
        "An exercise was left with "
            + left.jottings().size()
            + " things done in it (seed "
            + begun.seed()
            + ").");
    while (true) {
      String text = line("Enter to go on with it, new for another").toLowerCase(Locale.ROOT);
      if (text.isEmpty() || text.equals("new")) {
        return text.isEmpty();
      }
      say("Only Enter, or new.");
    }
  }

  private Notebook.Begun begun(Wanted wanted, TraineeProgress progress) {
    String fingerprint = place.desk().trial().base().fingerprint();
    String role = wanted.role().word();
    if (wanted.files().isEmpty()) {
      String area = wanted.area().isEmpty() ? area(progress) : wanted.area();
      return new Notebook.Begun(fingerprint, "", "", area, wanted.level(), role, wanted.seed());
    }
    List<RecordedCase> cases = new ArrayList<>();
    for (Path path : CaseFile.among(wanted.files().stream().map(Path::of).toList())) {
      cases.addAll(cases(path));
    }
    List<RecordedCase> fit =
        cases.stream()
            .filter(Exercises::fits)
            .filter(c -> wanted.name().isEmpty() || c.name().equals(wanted.name()))
            .toList();
    if (fit.isEmpty()) {
      throw new UsageException(
          wanted.name().isEmpty()
              ? "No case to practise on: it needs complaints, a truth, and a person who works on"
                  + " the gate."
              : "No case \""
                  + Words.shortened(wanted.name())
                  + "\" to practise on. "
                  + Names.advice(wanted.name(), cases.stream().map(RecordedCase::name).toList()));
    }
    RecordedCase one = fit.get((int) Math.floorMod(wanted.seed(), (long) fit.size()));
    String file = Path.of(one.file()).toAbsolutePath().normalize().toString();
    return new Notebook.Begun(
        fingerprint, file, one.name(), "", "", one.person().word(), wanted.seed());
  }

  /** What is wrong in a file is told; its cases are not used. */
  private List<RecordedCase> cases(Path path) {
    CaseFile file = CaseFile.read(path, place.desk().trial().base());
    file.problems().forEach(p -> place.output().tell(p.toString()));
    return file.cases();
  }

  /** The area to practise: the weakest is offered first. */
  private String area(TraineeProgress progress) {
    List<String> areas = new Exercises(place.desk().trial()).areas();
    List<String> weak =
        progress.weak().stream().map(TraineeProgress.Area::name).filter(areas::contains).toList();
    say(
        (weak.isEmpty() ? "" : "Weak so far: " + String.join(", ", weak) + ". ")
            + "Areas: "
            + String.join(", ", areas)
            + ".");
    String usual = weak.isEmpty() ? "any" : weak.get(0);
    while (true) {
      String text = line("Enter for " + usual + ", an area, or any").toLowerCase(Locale.ROOT);
      String area = text.isEmpty() ? usual : text;
      if (area.equals("any")) {
        return "";
      }
      if (areas.contains(area)) {
        return area;
      }
      say("No area \"" + Words.shortened(area) + "\". " + Names.advice(area, areas));
    }
  }

  private Exercise exercise(Notebook.Begun begun) {
    Exercises exercises = new Exercises(place.desk().trial());
    if (!begun.file().isEmpty()) {
      return cases(Path.of(begun.file())).stream()
          .filter(c -> c.name().equals(begun.name()))
          .findFirst()
          .flatMap(c -> exercises.of(c, begun.seed()))
          .orElseThrow(
              () ->
                  new UsageException(
                      "\""
                          + begun.name()
                          + "\" is not in "
                          + begun.file()
                          + " any more. Begin another: practice --new"));
    }
    Optional<String> area = Optional.of(begun.area()).filter(a -> !a.isEmpty());
    Optional<Level> level = Optional.of(begun.level()).filter(l -> !l.isEmpty()).map(Level::named);
    try {
      return exercises.drawn(area, level, Role.named(begun.role()), begun.seed());
    } catch (IllegalArgumentException e) {
      throw new UsageException(
          "There is nothing that a "
              + begun.role()
              + " may put right in \""
              + begun.area()
              + "\". Take another area, or --as technician.");
    }
  }

  private ExitStatus run(
      Notebook.Begun begun, Exercise exercise, Notebook notebook, List<Jotting> before) {
    try (Workbench bench = new Workbench(place.desk().trial(), exercise, before, notebook::keep)) {
      boolean over = new PracticeTable(place.console(), bench, place.desk().trial().base()).run();
      if (!over) {
        say("Kept. Go on with it: practice");
        return OK;
      }
      if (place.console().interactive()) {
        say("The plan works on the same gate, to compare.");
      }
      Reckoning reckoning = Reckoning.of(place.desk().trial(), bench);
      TraineeProgress progress = notebook.progress();
      notebook.finish(reckoning.result(place.desk().clock().instant(), bench));
      place
          .console()
          .show(
              new ReckoningViews(place.desk().trial().base())
                  .blocks(bench, reckoning, progress.ratio()));
      say("The same again: " + command(begun));
      notebook.progress().weak().stream()
          .findFirst()
          .ifPresent(weak -> say("Weakest so far: practice --area " + weak.name()));
      return OK;
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
