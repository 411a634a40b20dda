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
 * as if it were the whole. Cases that only refer to what an add-on has switched off are left out by
 * themselves: nobody made a mistake, and the other cases stay what they were.
 *
 * @param problems all of them, in the order of the file
 * @param off names of the cases that refer to what is switched off
 */
public record CaseFile(
    String name, List<RecordedCase> cases, List<Problem> problems, List<String> off) {
  /** Largest file (bytes); enough for many cases exported from elsewhere. */
  private static final int LARGEST = 16 << 20;

  private static final Pattern QUOTED = Pattern.compile("\"([a-z0-9-]+)\"");

  /** Whether the only problems are references to cards that an add-on has switched off. */
  public boolean speaksOfWhatIsOff(RuleBase base) {
    return !problems.isEmpty() && allOff(problems, base);
  }

  private static boolean allOff(List<Problem> problems, RuleBase base) {
    return problems.stream()
        .allMatch(
            p -> QUOTED.matcher(p.message()).results().anyMatch(m -> base.switchedOff(m.group(1))));
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
    return new CaseFile(
        name, List.of(), List.of(new Problem(kind, name, 0, 0, message, advice)), List.of());
  }

  /**
   * Reads the text of a file.
   *
   * @param name decides between YAML and JSON, and is shown with every problem
   */
  public static CaseFile read(String name, String text, RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    List<RecordedCase> cases = new ArrayList<>();
    List<RecordedCase> off = new ArrayList<>();
    CaseReader reader = new CaseReader(base);
    for (Document document : CardFile.read(name, text, problems)) {
      PlainText.check(document, problems);
      for (int i = 0; i < count(document); i++) {
        List<Problem> own = new ArrayList<>();
        RecordedCase one = reader.read(name, fields(document, i, own), cases);
        (own.isEmpty() || !allOff(own, base) ? cases : off).add(one);
        problems.addAll(own);
      }
    }
    if (cases.isEmpty() && off.isEmpty() && problems.isEmpty()) {
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
    boolean sound = allOff(problems, base);
    return new CaseFile(
        name,
        sound ? List.copyOf(cases) : List.of(),
        List.copyOf(problems),
        sound ? off.stream().map(RecordedCase::name).toList() : List.of());
  }

  /** How many cases a document has, which is one case or a list of cases. */
  private static int count(Document document) {
    return document.root().isArray() ? document.root().size() : 1;
  }

  private static Fields fields(Document document, int number, List<Problem> problems) {
    JsonNode root = document.root();
    return root.isArray()
        ? new Fields(document, "/" + number, root.get(number), problems)
        : new Fields(document, "", root, problems);
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
