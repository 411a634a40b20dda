package yett.files;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/** The program that is running, told from every other version of it by its content. */
public final class OwnProgram {
  private OwnProgram() {}

  /** Empty where it does not run from one file of its own. */
  public static Optional<String> fingerprint() {
    CodeSource source = OwnProgram.class.getProtectionDomain().getCodeSource();
    try {
      Path file = source == null ? null : Path.of(source.getLocation().toURI());
      return file != null && Files.isRegularFile(file)
          ? Optional.of(Sha256.hex(Files.readAllBytes(file), 16))
          : Optional.empty();
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return Optional.empty(); // packed into another file, say
    }
  }
}
