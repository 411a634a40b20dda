package yett.study;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import yett.knowledge.RuleBase;

/**
 * Names what results are made with: the rule base, and the classes that reason and play. What only
 * writes the page may change without playing again.
 */
final class MadeWith {
  private static final int DIGITS = 12;
  private static final List<String> REASONS =
      List.of("quantity", "calculation", "knowledge", "rules", "belief", "plan", "interview");
  private static final List<String> ONLY_WRITES =
      List.of(
          "Calibration",
          "Charts",
          "MadeWith",
          "Missing",
          "Page",
          "Results",
          "Sample",
          "Scores",
          "Study",
          "Tasks",
          "Text");

  private MadeWith() {}

  static String ruleBase(RuleBase base) {
    return base.fingerprint().substring(0, DIGITS);
  }

  /** A hash of the classes. */
  static String program() throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String part : REASONS) {
        add(digest, classesOf(RuleBase.class).resolve("yett").resolve(part));
      }
      add(digest, classesOf(MadeWith.class).resolve("yett/study"));
      return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException | URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Path classesOf(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private static void add(MessageDigest digest, Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(MadeWith::counts).sorted().toList()) {
        digest.update(Files.readAllBytes(file));
      }
    }
  }

  private static boolean counts(Path file) {
    String name = file.getFileName().toString();
    String outer = name.split("[.$]")[0];
    return name.endsWith(".class") && !outer.endsWith("Test") && !ONLY_WRITES.contains(outer);
  }
}
