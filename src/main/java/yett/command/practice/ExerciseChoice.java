package yett.command.practice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import yett.command.common.AddOnBeside;
import yett.command.common.Prompt;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.practice.Exercise;
import yett.practice.Exercises;
import yett.practice.Level;
import yett.practice.Notebook;
import yett.practice.TraineeProgress;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;

/** Chooses an exercise: the one asked for, the one left unfinished, or a random one. */
record ExerciseChoice(Desk desk, Console console, StandardStreams output) {
  private <T> T until(String prompt, Function<String, Prompt.Reading<T>> reader) {
    return Prompt.forWords(console)
        .until(prompt + "> ", reader)
        .orElseThrow(CaseLeftException::new);
  }

  boolean goesOn(Notebook.Left left) {
    Notebook.Begun begun = left.begun();
    if (!begun.ruleBase().equals(desk.trial().base().fingerprint())) {
      console.say(
          "An exercise was left unfinished, but the cards have changed since, and its gate"
              + " with them. Seed "
              + begun.seed()
              + " begins a similar one.");
      return false;
    }
    console.say(
        "An exercise was left unfinished with "
            + left.entries().size()
            + " things done in it (seed "
            + begun.seed()
            + ").");
    return until(
        "Enter to go on with it, new for another",
        line ->
            Prompt.word(line, List.of("", "new"))
                .map(i -> Prompt.Reading.of(i == 0))
                .orElse(Prompt.Reading.again("Press Enter, or type new.")));
  }

  Notebook.Begun begun(ExerciseOptions.Wanted wanted, TraineeProgress progress) {
    String fingerprint = desk.trial().base().fingerprint();
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
              : "No case "
                  + Words.quoted(wanted.name())
                  + " to practise on. "
                  + Names.advice(wanted.name(), cases.stream().map(RecordedCase::name).toList()));
    }
    RecordedCase one = fit.get((int) Math.floorMod(wanted.seed(), (long) fit.size()));
    String file = Path.of(one.file()).toAbsolutePath().normalize().toString();
    return new Notebook.Begun(
        fingerprint, file, one.name(), "", "", one.person().word(), wanted.seed());
  }

  /**
   * The cases of a file. If the file has problems, they are reported and none of its cases is used.
   */
  private List<RecordedCase> cases(Path path) {
    return read(path).cases();
  }

  private CaseFile read(Path path) {
    CaseFile file = CaseFile.read(path, desk.trial().base());
    file.problems().forEach(p -> output.tell(p.toString()));
    if (!file.problems().isEmpty()) {
      AddOnBeside.advice(path, desk.trial().base()).ifPresent(output::tell);
    }
    return file;
  }

  /** Asks for the area to practise; the trainee's weakest one is offered first. */
  private String area(TraineeProgress progress) {
    List<String> areas = new Exercises(desk.trial()).areas();
    List<String> weak =
        progress.weak().stream().map(TraineeProgress.Area::name).filter(areas::contains).toList();
    console.say(
        (weak.isEmpty() ? "" : "Weak so far: " + String.join(", ", weak) + ". ")
            + "Areas: "
            + String.join(", ", areas)
            + ".");
    String usual = weak.isEmpty() ? "any" : weak.get(0);
    return until(
        "Enter for " + usual + ", an area, or any",
        line -> {
          String area = line.isEmpty() ? usual : line.toLowerCase(Locale.ROOT);
          if (area.equals("any")) {
            return Prompt.Reading.of("");
          }
          return areas.contains(area)
              ? Prompt.Reading.of(area)
              : Prompt.Reading.again(
                  "No area " + Words.quoted(area) + ". " + Names.advice(area, areas));
        });
  }

  Exercise exercise(Notebook.Begun begun) {
    Exercises exercises = new Exercises(desk.trial());
    if (!begun.file().isEmpty()) {
      Path path = Path.of(begun.file());
      CaseFile file = read(path);
      if (!file.problems().isEmpty()) {
        throw new UsageException(begun.file() + " cannot be read with the cards in use.");
      }
      return file.cases().stream()
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
}
