package yett.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.RuleBase;

/** The page docs/cases.md: how the cases beside the cards come out, and what none of them tries. */
record CasesPage(RuleBase base, List<RecordedCase> recorded, List<Replayed> cases) {
  static final String HEAD =
      """
      # Results on the shipped cases

      The cases beside the cards tell what would be seen and measured at a gate, what was really wrong, and which repair is
      right. Replaying them shows what the rule base knows. Whoever wrote the cases kept aside had only the list of
      questions and saw no likelihood. The cards are never tuned to them. `mvn test -Dtest=ShippedCasesTest
      -Dyett.write=true` writes this page. Calls are tested separately.

      Aims: the right cause first in over 90 %, among the first three in over 97 %, a median of at most six checks, and no
      unsafe proposal. *Right* is the true cause or, where people are in danger, exactly the right stop. *Checks to find*
      are those asked for what they would tell. A repair makes further checks necessary, such as the sag after the chain
      was taken up; *all checks* includes these. Proofs count in neither.

      """;

  String text() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append(
        "| cases | | first | among the first three | median checks to find | all checks | median minutes |");
    text.append(" unsafe |\n|---|---|---|---|---|---|---|---|\n");
    groups().forEach((name, group) -> text.append(row(name, replayed(group))));
    text.append(longest());
    text.append("\n## Not right first, of those to tune by\n\n");
    cases.stream().filter(CasesPage::isMissed).forEach(c -> text.append(missed(c)));
    Coverage coverage = Coverage.of(base, cases);
    text.append("\n## What no case tries\n\n");
    list(text, "Causes that come first in no case", coverage.causes());
    list(text, "Checks that no case is asked", coverage.checks());
    list(text, "Repairs that no case leads to", coverage.repairs());
    list(text, "Proofs that no case is asked", coverage.proofs());
    text.append(
        """

        `SafetyPropertiesTest` asks every check in some random interview. Every rule fires in a test of its own.
        """);
    return text.toString();
  }

  /**
   * What a page says otherwise than these cases, though they are not all that are recorded: how
   * many there are of each kind, how the kinds come out of which all were replayed, which of these
   * are not right first, what they try.
   */
  List<String> missingFrom(String page) {
    List<String> missing = new ArrayList<>();
    groups()
        .forEach(
            (name, group) -> {
              List<Replayed> replayed = replayed(group);
              missing.add(
                  replayed.size() == group.size()
                      ? row(name, replayed)
                      : String.format(Locale.ROOT, "%n| %s | %d | ", name, group.size()));
            });
    cases.stream().filter(CasesPage::isMissed).forEach(c -> missing.add(missed(c)));
    missing.removeIf(page::contains);
    return missing;
  }

  /** What a page says is missed or untried, though these cases are right first, or try it. */
  List<String> refuted(String page) {
    List<String> refuted = new ArrayList<>();
    cases.stream()
        .filter(c -> !isMissed(c) && page.contains("\n- `" + c.name() + "` ("))
        .forEach(c -> refuted.add(c.name()));
    Coverage coverage = Coverage.of(base, cases);
    Set<String> untried = new HashSet<>();
    List.of(coverage.causes(), coverage.checks(), coverage.repairs(), coverage.proofs())
        .forEach(untried::addAll);
    page.lines()
        .filter(line -> line.matches("- \\w+ that .*no case.*: .*"))
        .flatMap(line -> Stream.of(line.replaceAll("^[^:]*: |\\.$", "").split(", ")))
        .filter(id -> !id.equals("none") && !untried.contains(id))
        .forEach(refuted::add);
    return refuted;
  }

  private Map<String, List<RecordedCase>> groups() {
    Map<String, List<RecordedCase>> groups = new LinkedHashMap<>();
    groups.put("all", recorded);
    groups.put("to tune by", recorded.stream().filter(c -> !c.keptAside()).toList());
    groups.put("kept aside", recorded.stream().filter(RecordedCase::keptAside).toList());
    for (CaseKind kind : CaseKind.values()) {
      groups.put(
          kind.words(),
          recorded.stream().filter(c -> CaseKind.of(c, base).contains(kind)).toList());
    }
    return groups;
  }

  private List<Replayed> replayed(List<RecordedCase> group) {
    Set<String> names =
        group.stream().map(c -> c.file() + " " + c.name()).collect(Collectors.toSet());
    return cases.stream().filter(c -> names.contains(c.file() + " " + c.name())).toList();
  }

  private static boolean isMissed(Replayed replayed) {
    return !replayed.keptAside() && !Score.right(replayed).orElse(true);
  }

  private static String row(String name, List<Replayed> group) {
    Score score = Score.of(group);
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %s | %.0f | %.0f | %.0f | %s |%n",
        name,
        score.cases(),
        share(score.first(), score.judged()),
        share(score.inFirstThree(), score.judged()),
        score.toFind(),
        score.checks(),
        score.minutes(),
        score.unsafe() == 0 ? "none" : Integer.toString(score.unsafe()));
  }

  private static String share(int right, int of) {
    return of == 0
        ? ""
        : String.format(Locale.ROOT, "%d of %d, %.0f %%", right, of, 100.0 * right / of);
  }

  private String longest() {
    List<Replayed> byChecks =
        cases.stream().sorted(Comparator.comparingLong(Score::checks)).toList();
    Replayed most = byChecks.get(byChecks.size() - 1);
    return String.format(
        Locale.ROOT,
        "%nNine in ten cases are asked at most %d checks; most of all, %d, `%s`.%n",
        Score.checks(byChecks.get(9 * byChecks.size() / 10)),
        Score.checks(most),
        most.name());
  }

  private static String missed(Replayed replayed) {
    String believed =
        replayed.ranking().stream()
            .limit(3)
            .map(r -> String.format(Locale.ROOT, "%s %.0f %%", r.cause(), 100 * r.chance()))
            .collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "- `%s` (%d checks, %s): %s%n",
        replayed.name(),
        Score.checks(replayed),
        replayed.ended(),
        believed);
  }

  private static void list(StringBuilder text, String what, List<String> ids) {
    text.append("- ").append(what).append(": ");
    text.append(ids.isEmpty() ? "none" : String.join(", ", ids)).append(".\n");
  }
}
