package yett.command.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.command.common.ExitException;
import yett.command.common.Prompt;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.files.WholeFile;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeSource;

/**
 * Makes a folder without cards an add-on before its first card is written. Without that it would
 * count as a rule base of its own, in which nothing is known that a new card could name.
 */
final class FirstFolder {
  private final Path folder;
  private final String id;

  FirstFolder(Path folder) {
    this.folder = folder;
    String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
    String letters =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    this.id = letters.isEmpty() || letters.equals("null") ? "our-cards" : letters;
  }

  /** Asks for the name of the add-on, if the folder has no cards yet. */
  void ready(Console console) {
    if (Files.isDirectory(folder) && !KnowledgeSource.folder(folder).files().isEmpty()) {
      return;
    }
    UsageException.when(
        !console.interactive(),
        "%s has no cards yet. For cards of your own on top of the program's, begin with a file %s of two lines: \"add-on: %s\" and \"name: \" with its name in words."
            .formatted(folder, folder.resolve(AddOn.FILE), id));
    console.say(
        folder
            + " has no cards yet. It becomes an add-on: a folder of your own cards on top of the"
            + " program's.");
    Optional<String> name =
        Prompt.withLeave(console)
            .line("What is it called, in a few words (Enter: " + id + ")> ", List.of());
    if (name.isEmpty()) {
      console.say("Nothing was written.");
      throw new ExitException(Sysexits.NO_INPUT);
    }
    write(name.get().isBlank() ? id : name.get().strip());
    console.say("Written: " + folder.resolve(AddOn.FILE));
  }

  private void write(String name) {
    String quoted = "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    try {
      Files.createDirectories(folder);
      WholeFile.create(folder.resolve(AddOn.FILE), "add-on: " + id + "\nname: " + quoted + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + folder.resolve(AddOn.FILE), e);
    }
  }
}
