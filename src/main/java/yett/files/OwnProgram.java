package yett.files;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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
          ? Optional.of(hex(Files.readAllBytes(file)))
          : Optional.empty();
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return Optional.empty(); // packed into another file, say
    }
  }

  /** A short name for a long text. */
  public static String hash(String text) {
    return hex(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String hex(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
