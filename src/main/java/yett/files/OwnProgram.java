package yett.files;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/** Identifies the running program by its content, so that every version can be told from others. */
public final class OwnProgram {
  private OwnProgram() {}

  /** The fingerprint; empty if the program does not run from a single file. */
  public static Optional<String> fingerprint() {
    CodeSource source = OwnProgram.class.getProtectionDomain().getCodeSource();
    try {
      Path file = source == null ? null : Path.of(source.getLocation().toURI());
      return file != null && Files.isRegularFile(file)
          ? Optional.of(Sha256.hex(Files.readAllBytes(file), 16))
          : Optional.empty();
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return Optional.empty(); // for example packed into another file
    }
  }
}
