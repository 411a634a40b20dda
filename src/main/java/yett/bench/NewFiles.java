package yett.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.files.WholeFile;
import yett.interview.course.Expertise;
import yett.knowledge.Check;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/** Writes new cards into the folder of a rule base. An existing file is never overwritten. */
public final class NewFiles {
  /** The kind of problem of an effect to which nothing leads. */
  private static final String NO_CAUSE = "no-cause";

  private static final String TO_BE_LED_TO =
      "Nothing leads to %s yet, and until something does, the rule base counts as unsound. Name it"
          + " under leads-to of the causes that make it, or write one: knowledge new cause.";

  private final Path folder;
  private final WorkFolder laid;
  private final SortedMap<String, String> own;
  private final Checker checker = new Checker();
  private final RuleBase base;
  private final List<String> remarks;

  /**
   * @param all files of the rule base in use
   * @param own files of the folder, which may be an add-on to it
   */
  public NewFiles(Path folder, SortedMap<String, String> all, SortedMap<String, String> own) {
    this.folder = folder;
    this.laid = WorkFolder.of(folder, all, own);
    this.own = own;
    Checked checked = checker.check(all);
    this.base = checked.base();
    this.remarks = checked.remarks();
  }

  public static List<String> kinds() {
    return List.of("cause", "effect", "check", "repair", "case");
  }

  /** The form for this kind of card; empty for any other word. */
  public Optional<NewCard> card(String kind) {
    return card(kind, new CardQuestions(base, own.keySet()));
  }

  /** The same if the card is only shown and not written. */
  public static Optional<NewCard> card(String kind, RuleBase base) {
    return card(kind, new CardQuestions(base, List.of()));
  }

  private static Optional<NewCard> card(String kind, CardQuestions asked) {
    return switch (kind) {
      case "cause" -> Optional.of(new NewCause(asked));
      case "effect" -> Optional.of(new NewEffect(asked));
      case "check" -> Optional.of(new NewCheck(asked));
      case "repair" -> Optional.of(new NewRepair(asked));
      case "case" -> Optional.of(new NewCaseForm(asked));
      default -> Optional.empty();
    };
  }

  /**
   * The problems that these new files would have. That nothing leads to a new effect yet is no
   * mistake of its card.
   */
  public List<Problem> problems(Map<String, String> fresh) {
    SortedMap<String, String> after = new TreeMap<>(own);
    after.putAll(fresh);
    return checker.check(laid.with(after)).problems().stream()
        .filter(p -> p.file().startsWith(laid.prefix()) && !p.kind().equals(NO_CAUSE))
        .filter(p -> fresh.containsKey(p.file().substring(laid.prefix().length())))
        .toList();
  }

  /**
   * The new files with cases whose answers fit together; see {@link Coherent}.
   *
   * @param rules makes a rule base ready; empty if its rules may not run here
   */
  public SortedMap<String, String> coherent(
      SortedMap<String, String> fresh,
      Map<String, String> answers,
      Function<RuleBase, Optional<Expertise>> rules) {
    if (fresh.keySet().stream().noneMatch(f -> f.endsWith(".case.yaml"))) {
      return fresh;
    }
    SortedMap<String, String> after = new TreeMap<>(own);
    after.putAll(fresh);
    Optional<Expertise> expertise = rules.apply(checker.check(laid.with(after)).base());
    Map<String, Set<String>> named = authored(answers);
    SortedMap<String, String> coherent = new TreeMap<>(fresh);
    expertise.ifPresent(
        ready ->
            coherent.replaceAll(
                (file, text) ->
                    file.endsWith(".case.yaml") ? Coherent.of(ready, text, named) : text));
    return coherent;
  }

  /** By case, the checks whose answers its author named. */
  private Map<String, Set<String>> authored(Map<String, String> answers) {
    String id = answers.getOrDefault("id", "");
    Set<String> marks =
        base.checks().keySet().stream()
            .filter(c -> !answers.getOrDefault(c, "").isBlank())
            .collect(Collectors.toSet());
    Set<String> oddly = new HashSet<>(FurtherCases.odd(answers, base));
    oddly.addAll(marks);
    Set<String> written =
        Lists.shown(answers.getOrDefault("answers", ""), base.checks().keySet()).stream()
            .map(part -> part.split("[\\s:]+", 2)[0])
            .collect(Collectors.toSet());
    return Map.of(
        id,
        written,
        id + "-first-met",
        marks,
        id + "-oddly-met",
        oddly,
        id + "-looked-so",
        FurtherCases.notIt(answers, base));
  }

  /** Advice on new cards, in sentences. */
  public List<String> advice(Map<String, String> fresh, Map<String, String> answers) {
    SortedMap<String, String> after = new TreeMap<>(own);
    after.putAll(fresh);
    Checked checked = checker.check(laid.with(after));
    String id = answers.get("id");
    boolean cause = checked.base().causes().containsKey(id) && answers.containsKey("like");
    List<String> advice = new ArrayList<>(checked.remarks());
    advice.removeAll(remarks);
    if (checked.problems().stream()
        .anyMatch(p -> p.kind().equals(NO_CAUSE) && p.message().contains("\"" + id + "\""))) {
      advice.add(0, TO_BE_LED_TO.formatted(id));
    }
    if (cause) {
      String first =
          fresh.entrySet().stream()
              .filter(f -> f.getKey().endsWith(".case.yaml"))
              .map(Map.Entry::getValue)
              .findFirst()
              .orElse("");
      advice.addAll(0, MeasuredFirst.advice(id, first, answers, checked.base()));
      advice.addAll(0, CauseAdvice.on(id, Lists.ids(answers.get("like")), checked.base()));
    }
    if (checked.base().checks().containsKey(id) && answers.containsKey("causes")) {
      Check check = checked.base().checks().get(id);
      advice.addAll(0, CheckAdvice.on(check, Lists.ids(answers.get("causes")), base));
    }
    return advice;
  }

  /** All files of the rule base with these new ones, to look up the line of a problem. */
  public SortedMap<String, String> named(Map<String, String> fresh) {
    return laid.with(fresh);
  }

  /**
   * Writes new files.
   *
   * @return where they are
   * @throws UncheckedIOException if one of them exists or cannot be written; then none is left
   */
  public List<Path> write(Map<String, String> fresh) {
    List<Path> written = new ArrayList<>();
    try {
      for (Map.Entry<String, String> file : fresh.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        if (!path.getParent().toRealPath().startsWith(folder.toRealPath())) {
          throw new IOException(path + " behind a link that leads out of the folder");
        }
        WholeFile.create(path, headed(path, file.getValue()));
        written.add(path);
      }
      return written;
    } catch (IOException e) {
      written.forEach(NewFiles::delete);
      String why =
          e instanceof FileAlreadyExistsException
              ? "there is a file " + e.getMessage() + " already; nothing was written"
              : "cannot write " + e.getMessage() + "; nothing was written";
      throw new UncheckedIOException(why, e);
    }
  }

  /** The card with the line before it that names the schema for an editor. */
  private String headed(Path path, String text) throws IOException {
    String schema = path.toString().endsWith(".case.yaml") ? Schemas.CASE : Schemas.CARD;
    Path from = path.toAbsolutePath().normalize().getParent();
    String place = from.relativize(Schemas.near(folder).resolve(schema)).toString();
    return "# yaml-language-server: $schema=" + place.replace('\\', '/') + "\n" + text;
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot take back " + path, e);
    }
  }
}
