package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.knowledge.Stop;

/** A rule that names a card or an outcome that does not exist would silently never fire. */
class RuleTextTest {
  private static final RuleBase BASE = Rules.BASE;

  /** What is no rule: comments, annotations and names of rules, in which anything may stand. */
  private static final Pattern WORDS = Pattern.compile("(?m)//.*$|^\\s*(?:@|rule |import ).*$");

  /** A text that is written like an id; what is said to people has blanks, capitals or signs. */
  private static final Pattern ID = Pattern.compile("\"([a-z][a-z0-9]*(?:-[a-z0-9]+)*)\"");

  private static final String ONE_OR_LIST = "(\\([^()]*\\)|\"[^\"]*\")";
  private static final Pattern PART =
      Pattern.compile("\\b(\\w+)\\s*(?:==|!=|\\bnot in\\b|\\bin\\b)\\s*" + ONE_OR_LIST);
  private static final Pattern FACT = Pattern.compile("\\b(?:Given|Finding|Site)\\(");

  private static final Set<String> CHECKS = BASE.checks().keySet();
  private static final Set<String> REPAIRS = BASE.repairs().keySet();
  private static final Set<String> CARDS = union(Stream.of(CHECKS, REPAIRS));
  private static final Set<String> OUTCOMES =
      union(CHECKS.stream().map(RuleTextTest::outcomes).map(Set::copyOf));
  private static final Set<String> CHOICES =
      union(BASE.siteQuestions().keySet().stream().map(RuleTextTest::choices).map(Set::copyOf));

  /** What the parts of facts may be compared with. */
  private static final Map<String, Set<String>> PARTS =
      Map.of(
          "check", CHECKS,
          "complaint", CHECKS,
          "repair", REPAIRS,
          "history", BASE.histories().keySet(),
          "question", BASE.siteQuestions().keySet(),
          "id", CARDS,
          "setUp", BASE.setUps().keySet(),
          "stop", BASE.stops().keySet(),
          "outcome", OUTCOMES,
          "choice", CHOICES);

  /** What is concluded about. */
  private static final Map<String, Set<String>> CONCLUSIONS =
      Map.of(
          "new Odds\\(",
          BASE.causes().keySet(),
          "new StopNow\\(",
          BASE.stops().keySet(),
          "new Forbidden\\(",
          BASE.setUps().keySet(),
          "new Withheld\\(",
          Set.copyOf(Stop.WITHHELD),
          "new Expectation\\(",
          CHECKS,
          "new Unavailable\\(",
          CARDS,
          "new FollowUp\\(",
          union(Stream.of(REPAIRS, BASE.histories().keySet())),
          "new FollowUp\\([^,]+, ",
          CARDS);

  private static final Set<String> ANY =
      union(
          Stream.of(
              CARDS,
              OUTCOMES,
              CHOICES,
              BASE.causes().keySet(),
              BASE.histories().keySet(),
              BASE.stops().keySet(),
              BASE.setUps().keySet(),
              BASE.siteQuestions().keySet(),
              hazards(),
              Set.copyOf(Stop.WITHHELD),
              Set.of("unsaid", "sealed"))); // of a complaint, and of batteries in words

  @Test
  void rules_name_only_what_exists() {
    assertThat(BASE.rules()).hasSizeGreaterThan(10);
    BASE.rules().forEach((file, text) -> assertThat(wrong(text)).as(file).isEmpty());
  }

  /** Wherever an id stands, another in its place would be noticed. */
  @Test
  void no_id_is_overlooked() {
    int ids = 0;
    for (String text : BASE.rules().values()) {
      String code = WORDS.matcher(text).replaceAll("");
      for (MatchResult id : ID.matcher(code).results().toList()) {
        String slip = code.substring(0, id.start(1)) + "no-such" + code.substring(id.end(1));
        int around = Math.max(0, id.start() - 300);
        String near = slip.substring(around, Math.min(slip.length(), id.end() + 300));
        assertThat(wrong(near)).as(near).anyMatch(w -> w.contains("no-such"));
        ids++;
      }
    }
    assertThat(ids).isGreaterThan(500);
  }

  /** An id of the wrong kind, and one of another check, each in its own place. */
  @Test
  void an_id_of_another_kind_or_check_is_noticed() {
    assertThat(wrong("Given(check == \"chain-slack\")")).containsExactly("check chain-slack");
    assertThat(wrong("Given(check in (\"chain-sag\", \"chain-slack\"))"))
        .containsExactly("check chain-slack");
    assertThat(wrong("Done(repair not in (\"chain-sag\"))")).containsExactly("repair chain-sag");
    assertThat(wrong("new Odds(\"chain-sag\", 2, r)")).containsExactly("new Odds\\( chain-sag");
    assertThat(wrong("new FollowUp($r, \"chain-slack\", r)"))
        .containsExactly("new FollowUp\\([^,]+,  chain-slack");
    assertThat(wrong("Given(check == \"chain-looks\", outcome == \"runs\")"))
        .containsExactly("chain-looks has no runs");
    assertThat(wrong("Site(question == \"batteries\", choice == \"class-i\")"))
        .containsExactly("batteries has no class-i");
  }

  /** What is wrong in a text of rules, as far as it is no word to people. */
  private static List<String> wrong(String text) {
    String code = WORDS.matcher(text).replaceAll("");
    List<String> wrong = new ArrayList<>();
    unknown(ids(code), ANY, "nothing is called", wrong);
    for (MatchResult part : PART.matcher(code).results().toList()) {
      List<String> ids = ids(part.group(2));
      if (!ids.isEmpty()) {
        unknown(ids, PARTS.getOrDefault(part.group(1), Set.of()), part.group(1), wrong);
      }
    }
    CONCLUSIONS.forEach(
        (before, known) ->
            Pattern.compile(before + "(\"[^\"]*\")")
                .matcher(code)
                .results()
                .forEach(m -> unknown(ids(m.group(1)), known, before, wrong)));
    for (Matcher m = FACT.matcher(code); m.find(); ) {
      String fact = code.substring(m.end(), end(code, m.end()));
      fit(fact, "check", "outcome", wrong);
      fit(fact, "question", "choice", wrong);
    }
    return wrong.stream().distinct().toList();
  }

  /** What is compared with a card must be known to that card, or to one of several. */
  private static void fit(String fact, String card, String known, List<String> wrong) {
    List<String> cards = of(card, fact);
    for (String id : of(known, fact)) {
      if (!cards.isEmpty()
          && cards.stream().noneMatch(c -> outcomes(c).contains(id) || choices(c).contains(id))) {
        wrong.add(String.join(", ", cards) + " has no " + id);
      }
    }
  }

  private static List<String> of(String part, String fact) {
    return PART.matcher(fact)
        .results()
        .filter(m -> m.group(1).equals(part))
        .flatMap(m -> ids(m.group(2)).stream())
        .toList();
  }

  private static int end(String code, int start) {
    int open = 1;
    int at = start;
    while (at < code.length() && open > 0) {
      char sign = code.charAt(at++);
      open += sign == '(' ? 1 : sign == ')' ? -1 : 0;
    }
    return at;
  }

  private static void unknown(
      List<String> ids, Set<String> known, String where, List<String> wrong) {
    ids.stream().filter(id -> !known.contains(id)).forEach(id -> wrong.add(where + " " + id));
  }

  private static List<String> ids(String text) {
    return ID.matcher(text).results().map(m -> m.group(1)).toList();
  }

  private static List<String> outcomes(String check) {
    Check card = BASE.checks().get(check);
    return card == null ? List.of() : card.outcomes().stream().map(Check.Outcome::id).toList();
  }

  private static Collection<String> choices(String question) {
    SiteQuestion card = BASE.siteQuestions().get(question);
    return card == null ? List.of() : card.choices().keySet();
  }

  private static Set<String> hazards() {
    return BASE.checks().values().stream()
        .flatMap(c -> c.hazards().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> union(Stream<Set<String>> sets) {
    return sets.flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
  }
}
