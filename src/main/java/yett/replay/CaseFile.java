package yett.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import yett.files.BoundedFile;
import yett.knowledge.CardFile;
import yett.knowledge.CardFile.Document;
import yett.knowledge.Fields;
import yett.knowledge.PlainText;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * The cases of one file. A file with problems has no cases, because part of a file would be judged
 * as if it were the whole.
 *
 * @param problems all of them, in the order of the file
 */
public record CaseFile(String name, List<RecordedCase> cases, List<Problem> problems) {
  /** Largest file (bytes); enough for many cases exported from elsewhere. */
  private static final int LARGEST = 16 << 20;

  private static final Pattern QUOTED = Pattern.compile("\"([a-z0-9-]+)\"");

  /** Whether the only problems are references to cards that an add-on has switched off. */
  public boolean speaksOfWhatIsOff(RuleBase base) {
    return !problems.isEmpty()
        && problems.stream()
            .allMatch(
                p ->
                    QUOTED
                        .matcher(p.message())
                        .results()
                        .anyMatch(m -> base.switchedOff(m.group(1))));
  }

  /** Reads a file on disk; if that fails, the problem says so. */
  public static CaseFile read(Path path, RuleBase base) {
    String name = path.toString().replace('\\', '/');
    try {
      return read(name, BoundedFile.text(path, LARGEST), base);
    } catch (CharacterCodingException e) {
      return broken(name, "not-text", "this is not text in UTF-8", "Save the file as UTF-8.");
    } catch (IOException e) {
      return Files.exists(path)
          ? broken(
              name,
              "cannot-read",
              "this cannot be read",
              "See that it is a file of yours, no larger than " + (LARGEST >> 20) + " MiB.")
          : broken(name, "no-file", "there is no such file", "Look at the spelling of its name.");
    }
  }

  private static CaseFile broken(String name, String kind, String message, String advice) {
    return new CaseFile(name, List.of(), List.of(new Problem(kind, name, 0, 0, message, advice)));
  }

  /**
   * Reads the text of a file.
   *
   * @param name decides between YAML and JSON, and is shown with every problem
   */
  public static CaseFile read(String name, String text, RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    List<RecordedCase> cases = new ArrayList<>();
    CaseReader reader = new CaseReader(base);
    for (Document document : CardFile.read(name, text, problems)) {
      PlainText.check(document, problems);
      for (Fields fields : fields(document, problems)) {
        cases.add(reader.read(name, fields, cases));
      }
    }
    if (cases.isEmpty() && problems.isEmpty()) {
      problems.add(
          new Problem(
              "empty-file",
              name,
              0,
              0,
              "there is no case in this file",
              "A case begins with a line \"case: a-name\"."));
    }
    problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    return new CaseFile(
        name, problems.isEmpty() ? List.copyOf(cases) : List.of(), List.copyOf(problems));
  }

  /** The cases of a document, which is one case or a list of cases. */
  private static List<Fields> fields(Document document, List<Problem> problems) {
    JsonNode root = document.root();
    if (!root.isArray()) {
      return List.of(new Fields(document, "", root, problems));
    }
    List<Fields> all = new ArrayList<>();
    for (int i = 0; i < root.size(); i++) {
      all.add(new Fields(document, "/" + i, root.get(i), problems));
    }
    return all;
  }

  /**
   * The case files at some paths: a file itself, and of a folder all files named {@code
   * *.case.yaml}, {@code *.case.yml} or {@code *.case.json}, sorted by name.
   */
  public static List<Path> among(List<Path> paths) {
    List<Path> files = new ArrayList<>();
    for (Path path : paths) {
      if (!Files.isDirectory(path)) {
        files.add(path);
        continue;
      }
      try (Stream<Path> inside = Files.walk(path)) {
        inside.filter(CaseFile::named).sorted().forEach(files::add);
      } catch (IOException e) {
        throw new UncheckedIOException("cannot look into " + path, e);
      }
    }
    return List.copyOf(files);
  }

  private static boolean named(Path path) {
    return Files.isRegularFile(path)
        && path.getFileName().toString().matches("[^.].*\\.case\\.(yaml|yml|json)");
  }
}
