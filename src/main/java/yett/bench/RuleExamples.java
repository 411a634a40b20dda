package yett.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.knowledge.AddOn;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.replay.AsTold;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;
import yett.rules.DecisionTables;
import yett.rules.Row;

/**
 * Rules and rows of tables of add-ons that no case of the add-on makes conclude anything. A rule
 * without an example may have conditions that never hold, and nobody would notice.
 */
public final class RuleExamples {
  private static final Pattern RULE = Pattern.compile("(?ms)^rule\\s+\"([^\"]+)\"(.*?)^end\\b");
  private static final Pattern COMMENT = Pattern.compile("(?m)//.*$");

  /** Facts that no case tells by itself: they come of the work. */
  private static final Pattern OF_THE_WORK =
      Pattern.compile("\\b(Done|StillFails|Baseline|Trend|Untold|Person)\\s*\\(");

  private static final Pattern HISTORY = Pattern.compile("\\bhistory\\s*==\\s*\"([^\"]+)\"");
  private static final Pattern COMPLAINT = Pattern.compile("\\bcomplaint\\s*==\\s*\"([^\"]+)\"");
  private static final Pattern CHOICE =
      Pattern.compile("\\bquestion\\s*==\\s*\"([^\"]+)\"\\s*,\\s*choice\\s*==\\s*\"([^\"]+)\"");
  private static final Pattern OUTCOME =
      Pattern.compile("\\bcheck\\s*==\\s*\"([^\"]+)\"\\s*,\\s*outcome\\s*==\\s*\"([^\"]+)\"");
  private static final Pattern ODDS = Pattern.compile("\\bnew Odds\\(\\s*\"([^\"]+)\"");

  /** What a rule waits for, as a case would tell it. */
  private record Example(
      String rule,
      String file,
      Map<String, String> site,
      List<String> complaints,
      List<String> history,
      Map<String, String> answers,
      Optional<String> cause) {}

  private final RuleBase base;
  private final Expertise expertise;

  private RuleExamples(Expertise expertise) {
    this.base = expertise.base();
    this.expertise = expertise;
  }

  /**
   * One remark for each rule without an example, with the text of one to start from.
   *
   * @param expertise whose rules are trusted
   * @param files contents by path
   */
  public static List<String> remarks(Expertise expertise, SortedMap<String, String> files) {
    RuleExamples examples = new RuleExamples(expertise);
    return expertise.base().addOns().stream()
        .flatMap(a -> examples.lacking(a, files).stream())
        .map(examples::remark)
        .toList();
  }

  private List<Example> lacking(AddOn addOn, SortedMap<String, String> files) {
    List<Example> own = own(addOn);
    if (own.isEmpty()) {
      return own;
    }
    Set<String> concluded = concluded(addOn, files);
    return own.stream().filter(e -> !concluded.contains(e.rule())).toList();
  }

  /** The rules and rows of an add-on, except those that wait for something that is done. */
  private List<Example> own(AddOn addOn) {
    List<Example> own = new ArrayList<>();
    base.rules()
        .forEach(
            (file, text) -> {
              Matcher rule = RULE.matcher(COMMENT.matcher(text).replaceAll(""));
              while (file.startsWith(addOn.folder()) && rule.find()) {
                if (!OF_THE_WORK.matcher(rule.group(2)).find()) {
                  own.add(ofRule(rule.group(1), file, rule.group(2)));
                }
              }
            });
    base.tables()
        .forEach(
            (file, content) -> {
              if (file.startsWith(addOn.folder())) {
                DecisionTables.rowsOf(base, file).forEach(row -> own.add(ofRow(row, file)));
              }
            });
    return own;
  }

  private static Example ofRule(String name, String file, String text) {
    return new Example(
        name,
        file,
        pairs(CHOICE, text),
        all(COMPLAINT, text),
        all(HISTORY, text),
        pairs(OUTCOME, text),
        all(ODDS, text).stream().findFirst());
  }

  private static Example ofRow(Row row, String file) {
    Map<String, String> site = new LinkedHashMap<>();
    row.grounds()
        .site()
        .forEach((question, accepted) -> accepted.example().ifPresent(a -> site.put(question, a)));
    List<String> history =
        row.grounds().happened().stream().map(some -> some.iterator().next()).toList();
    Map<String, String> answers = new LinkedHashMap<>();
    if (row instanceof Row.Exclusion both) {
      for (Row.Answers side : List.of(both.one(), both.other())) {
        String check = side.checks().iterator().next();
        side.accepted().example().ifPresent(a -> answers.put(check, a));
      }
    }
    Optional<String> cause =
        row instanceof Row.MovedOdds moved
            ? moved.factors().keySet().stream().findFirst()
            : Optional.empty();
    return new Example(row.reason().rule(), file, site, List.of(), history, answers, cause);
  }

  private static List<String> all(Pattern pattern, String text) {
    Set<String> all = new LinkedHashSet<>();
    pattern.matcher(text).results().forEach(r -> all.add(r.group(1)));
    return List.copyOf(all);
  }

  private static Map<String, String> pairs(Pattern pattern, String text) {
    Map<String, String> pairs = new LinkedHashMap<>();
    pattern.matcher(text).results().forEach(r -> pairs.put(r.group(1), r.group(2)));
    return pairs;
  }

  /** The rules that conclude something from what the cases of an add-on tell. */
  private Set<String> concluded(AddOn addOn, SortedMap<String, String> files) {
    Set<String> rules = new HashSet<>();
    try (Interview interview = expertise.newInterviewWithoutConflicts()) {
      files.forEach(
          (file, text) -> {
            if (file.startsWith(addOn.folder()) && file.matches(".*\\.case\\.(yaml|yml|json)")) {
              for (RecordedCase recorded : CaseFile.read(file, text, base).cases()) {
                interview.judgement(AsTold.entries(recorded, base)).conclusions().stream()
                    .map(c -> c.reason().rule())
                    .forEach(rules::add);
              }
            }
          });
    }
    return rules;
  }

  private String remark(Example example) {
    return "Rule \""
        + example.rule()
        + "\" ("
        + example.file()
        + "): no case of the folder makes it conclude anything, so nobody knows that its"
        + " conditions ever hold. Put one into "
        + example.file().replaceFirst("\\.(drl|table\\.\\w+)$", "")
        + ".case.yaml, such as:\n"
        + text(example);
  }

  private String text(Example example) {
    List<String> complaints =
        example.complaints().isEmpty()
            ? example.cause().flatMap(this::complaint).map(List::of).orElse(List.of())
            : example.complaints();
    CardLines lines =
        new CardLines()
            .line("case", example.rule().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"))
            .line("person", "technician")
            .raw(example.site().isEmpty() ? "" : "site: " + flow(example.site()) + "\n")
            .raw(
                "complaints: ["
                    + String.join(", ", complaints)
                    + "]"
                    + (complaints.isEmpty() ? "  # what people said" : "")
                    + "\n")
            .ids("history", example.history())
            .raw(example.answers().isEmpty() ? "" : "answers: " + flow(example.answers()) + "\n")
            .line("others", "usual");
    return lines
        .raw(example.cause().map(c -> "truth: [" + c + "]\n").orElse("truth: []  # what it was\n"))
        .toString()
        .stripTrailing();
  }

  private static String flow(Map<String, String> pairs) {
    List<String> parts = new ArrayList<>();
    pairs.forEach((name, value) -> parts.add(name + ": " + value));
    return "{" + String.join(", ", parts) + "}";
  }

  /** What people report most often of a cause. */
  private Optional<String> complaint(String cause) {
    return base.checks().values().stream()
        .filter(c -> c.kind() == Check.Kind.COMPLAINT && c.likelihood().containsKey(cause))
        .max((a, b) -> Double.compare(a.likelihood().get(cause)[1], b.likelihood().get(cause)[1]))
        .map(Check::id);
  }
}
