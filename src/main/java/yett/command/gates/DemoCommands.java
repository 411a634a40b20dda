package yett.command.gates;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Demo;
import yett.desk.Desk;

/** {@code gates demo}: makes a casebook with invented gates and visits to look at. */
public record DemoCommands(Desk desk, Console console) {
  private static final String DEMO =
      "Usage: gates demo FOLDER. FOLDER is new or empty; a casebook is made in it with the gates of"
          + " Harrow Quay, an invented harbour estate, and two years of visits that nobody made."
          + " Look at it with YETT_CASEBOOK= YETT_HOME=FOLDER yett gates.";

  @Command(
      name = {"gates", "demo"},
      description = "fill a new folder with made-up gates and visits to look at",
      help = DEMO)
  public void demo(@Arguments List<String> words) {
    UsageException.when(words.size() != 1 || words.get(0).isBlank(), DEMO);
    Path folder = fresh(words.get(0));
    try (Progress progress = console.start("visits", Demo.visits())) {
      new Demo(desk.trial(), desk.clock().instant()).fill(folder, progress::step);
    }
    console.say(
        "Made up: "
            + Demo.visits()
            + " visits at Harrow Quay. Look at them with: YETT_CASEBOOK= YETT_HOME="
            + folder
            + " yett gates.");
  }

  private static Path fresh(String name) {
    try {
      Path folder = Path.of(name).toAbsolutePath();
      if (Files.exists(folder) && !isEmptyFolder(folder)) {
        throw new UsageException(
            name + " exists already and is not an empty folder. Name another one.");
      }
      return folder;
    } catch (InvalidPathException e) {
      throw new UsageException(name + " cannot be the name of a folder. Name another one.");
    }
  }

  private static boolean isEmptyFolder(Path folder) {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findAny().isEmpty();
    } catch (IOException e) {
      throw new UncheckedIOException(folder + ": it cannot be read. Name another folder.", e);
    }
  }
}
