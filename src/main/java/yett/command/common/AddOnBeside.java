package yett.command.common;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import yett.knowledge.AddOn;
import yett.knowledge.RuleBase;

/** Finds the add-on in whose folder a file lies, if it is not in use. */
public final class AddOnBeside {
  private AddOnBeside() {}

  /** What to add to a command so that the file can be read; empty if that is not the matter. */
  public static Optional<String> advice(Path file, RuleBase base) {
    for (Path folder = file.toAbsolutePath().normalize().getParent();
        folder != null;
        folder = folder.getParent()) {
      if (Files.exists(folder.resolve(AddOn.FILE))) {
        Path found = folder;
        boolean used =
            base.addOns().stream()
                .anyMatch(a -> Path.of(a.folder()).toAbsolutePath().normalize().equals(found));
        return used
            ? Optional.empty()
            : Optional.of("It lies in an add-on that is not in use: --add-on " + shown(folder));
      }
    }
    return Optional.empty();
  }

  private static Path shown(Path folder) {
    Path here = Path.of("").toAbsolutePath();
    return folder.startsWith(here) && !folder.equals(here) ? here.relativize(folder) : folder;
  }
}
