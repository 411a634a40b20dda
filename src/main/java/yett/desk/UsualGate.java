package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.interview.site.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * The answers to site questions that hold for most gates where this computer is used. Other regions
 * have other supplies, and other operators have no batteries or no marker. The file has one answer
 * on each line.
 */
final class UsualGate {
  private static final String NAME = "usual-gate.txt";

  /** In bytes; enough for all site questions many times over. */
  private static final int LARGEST = 1 << 14;

  private final Path file;

  /**
   * @param settings folder for the settings of this computer
   */
  UsualGate(Path settings) {
    this.file = settings.resolve(NAME);
  }

  /**
   * Question to its usual answer. Questions that no card asks any more, and answers that are not
   * valid, are ignored.
   *
   * @throws UncheckedIOException if the file cannot be read
   */
  Map<String, String> answers(RuleBase base) {
    Map<String, String> answers = new TreeMap<>();
    text()
        .lines()
        .map(line -> line.split("=", 2))
        .filter(parts -> parts.length == 2)
        .forEach(
            parts -> {
              SiteQuestion question = base.siteQuestions().get(parts[0].strip());
              String answer = parts[1].strip();
              if (question != null && SiteFacts.canBe(question, answer)) {
                answers.put(question.id(), answer);
              }
            });
    return answers;
  }

  Path file() {
    return file;
  }

  private String text() {
    try {
      return Files.exists(file) && OwnFiles.isOurs(file) ? BoundedFile.text(file, LARGEST) : "";
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read what is usual here in " + file, e);
    }
  }

  /** The answers as text of the file. */
  static String lines(Map<String, String> answers) {
    return new TreeMap<>(answers)
        .entrySet().stream()
            .map(e -> e.getKey() + "=" + e.getValue() + "\n")
            .collect(Collectors.joining());
  }
}
