package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.rules.RuleCache;
import yett.rules.RuleEngine;
import yett.testing.Shipped;

class AnomaliesTest {
  private static final Path CARDS = Path.of("src/test/resources/every-field");

  /** Rules that read the usual range, the site questions and the stop of the small rule base. */
  private static final String SOUND_RULES =
      rule(
              "usual",
              "Site(question == \"opening\", value > 2, $v : value)",
              "Expectation(\"charging-voltage\"")
          + rule(
              "run", "Site(question == \"chain-span\", value > 9)", "Odds(\"batteries-low\", 1.5")
          + rule(
              "age", "Site(question == \"battery-age\", value >= 4)", "Odds(\"batteries-low\", 2")
          + rule(
              "stop",
              "Given(check == \"danger-person\", outcome == \"hurt\")",
              "StopNow(\"person-trapped\"");

  private static final String SECOND_RANGE =
      """

      rule "another range"
      when
        Site(question == "opening", $opening : value)
      then
        insertLogical(new Expectation("chain-sag", 0.1, 0.2, "by eye", because(drools)));
      end
      """;

  private static String rule(String name, String when, String then) {
    return "rule \"%s\"\nwhen\n  %s\nthen\n  insertLogical(new %s, because(drools)));\nend\n"
        .formatted(name, when.replace(" & ", "\n  "), then);
  }

  private static RuleBase base(String cards, String rules) {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(CARDS).files());
    files.put("more.yaml", cards.isBlank() ? "# nothing\n" : cards);
    files.put("rules.drl", SOUND_RULES + rules);
    return RuleBase.read(() -> files);
  }

  private static String found(RuleBase base) {
    StringBuilder text = new StringBuilder();
    Anomalies.proved(base)
        .forEach(a -> text.append(a.kind() + " " + a.about() + ": " + a.message() + "\n"));
    return text.toString();
  }

  @Test
  void of_a_small_sound_rule_base_one_check_has_no_row_and_two_repairs_have_no_proof() {
    String unproved =
        ": this repair names no proof: \"proofs\" says what must pass after it before the gate"
            + " returns to service, and a call ends as solved without any\n";
    assertThat(found(base("", "")))
        .isEqualTo(
            "UNREACHABLE lamp-asked: this check tells nothing of any cause\n"
                + "MISSING charge-batteries"
                + unproved
                + "MISSING explain-use"
                + unproved);
  }

  @Test
  void two_rows_of_tables_for_one_reading_at_one_gate_contradict_each_other() {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(CARDS).files());
    String heading = "rule,check,if opening,low,high,how,because,source\n";
    String row = ",charging-voltage,any,27 V,28 V,so,it is so,common practice\n";
    files.put("one.table.csv", heading + "a" + row);
    files.put("two.table.csv", heading + "b" + row.replace("28 V", "29 V"));
    String told =
        "cell B2: there are gates for which one.table.csv, cell B2 gives another usual range for"
            + " \"charging-voltage\"";
    assertThat(found(RuleBase.read(() -> files)))
        .contains("CONTRADICTORY two.table.csv: " + told + "\n");
    assertThat(new Checker().check(files).problems())
        .extracting(p -> p.file() + ":" + p.line() + " " + p.message())
        .containsExactly("two.table.csv:2 " + told);
  }

  @Test
  void a_row_that_says_what_another_says_already_is_told() {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(CARDS).files());
    files.put(
        "odds.table.csv",
        "rule,if opening,if battery-age,odds,because,source\n"
            + "a,from 8 m,,charger-dead 2,so,from memory\n"
            + "b,from 8 m,,charger-dead 2,so,from memory\n"
            + "c,from 8 m,any,charger-dead 2,so,from memory\n"
            + "d,from 8 m,any,charger-dead 3,so,from memory\n");
    assertThat(found(RuleBase.read(() -> files)))
        .contains("REDUNDANT rule \"a\": says the same as the rule \"b\"\n")
        .contains("SUBSUMED rule \"c\": whenever it holds, the rule \"a\" has concluded the same\n")
        .doesNotContain("rule \"d\"");
  }

  private static final String CAUSE =
      "cause: CAUSE\n"
          + "name: Relay sticks\n"
          + "prior: 0.01\n"
          + "source: test\n"
          + "removed-by: {charge-batteries: 0.5}\n";

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "shows: {lamp-seen: {dark: 0.5, lit: 0.5}}\\n"
            + "---\\n"
            + "cause: relay-sticks\\n"
            + "name: Relay stuck\\n"
            + "prior: 0.02\\n"
            + "source: test\\n"
            + "removed-by: {charge-batteries: 0.4}\\n"
            + "shows: {lamp-seen: {dark: 0.5, lit: 0.5}}; REDUNDANT relay-sticks: shows and is"
            + " removed as relay-stuck",
        "shows: {dead-without-mains: 0.5}; MISSING relay-stuck: no check has a row for it",
        "only-if: {supply: [solar]}\\n"
            + "consequences: {charger-dead: 0.1}\\n"
            + "shows: {lamp-seen: {dark: 1}}; CONTRADICTORY relay-stuck: brings about charger-dead,"
            + " but by their only-if",
        "only-if: {batteries: [none]}\\nshows: {battery-rest-voltage: {flat: 1}}"
            + "; CONTRADICTORY battery-rest-voltage: has a row for relay-stuck, but",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "repair: turn-relay\\n"
            + "name: Turn it\\n"
            + "removes: {relay-stuck: 0.4}\\n"
            + "minutes: 300\\n"
            + "who: caller\\n"
            + "source: test; SUBSUMED turn-relay: charge-batteries removes as much, in no more"
            + " time",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "repair: a\\n"
            + "name: A\\n"
            + "removes: {relay-stuck: 0.9}\\n"
            + "minutes: 1\\n"
            + "entails: [b]\\n"
            + "source: test\\n"
            + "---\\n"
            + "repair: b\\n"
            + "name: B\\n"
            + "minutes: 1\\n"
            + "entails: [a]\\n"
            + "source: test; CIRCULAR a: makes itself necessary again",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "set-up: up-a-pole\\n"
            + "name: Up a pole\\n"
            + "enter-minutes: 1\\n"
            + "leave-minutes: 1\\n"
            + "source: test; UNREACHABLE up-a-pole: nothing needs this set-up",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "stop: flood\\n"
            + "name: Flood\\n"
            + "now: {caller: [Go.]}\\n"
            + "source: test; UNREACHABLE flood: no rule raises this stop",
        "shows: {lamp-seen: {dark: 1}}\\n---\\nhistory: frost\\nname: Frost\\nsource: test"
            + "; UNREACHABLE frost: this history changes no odds",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "site: colour\\n"
            + "name: Colour\\n"
            + "ask: Which?\\n"
            + "choices: {red: red}\\n"
            + "default: red; UNREACHABLE colour: nothing depends on this site question",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "check: idle\\n"
            + "ask: Idle?\\n"
            + "minutes: 1\\n"
            + "outcomes: {a: a, b: b}\\n"
            + "otherwise: {a: 1}\\n"
            + "source: test; UNREACHABLE idle: this check tells nothing of any cause",
        "shows: {lamp-seen: {dark: 1}}\\n"
            + "---\\n"
            + "caution: wet\\n"
            + "hazard: water\\n"
            + "what: a\\n"
            + "harm: b\\n"
            + "avoid: c\\n"
            + "source: test; UNREACHABLE wet: nothing has the hazard water"
      })
  void a_weak_card_is_found(String card, String told) {
    String cards = CAUSE.replace("CAUSE", "relay-stuck") + card.replace("\\n", "\n");
    assertThat(found(base(cards, ""))).contains(told);
  }

  @Test
  void bands_without_a_rule_for_their_usual_range_are_missing_one() {
    RuleBase base = RuleBase.read(KnowledgeSource.folder(CARDS));
    assertThat(found(base))
        .contains("MISSING charging-voltage: no rule computes the usual range")
        .contains("UNREACHABLE person-trapped: no rule raises this stop");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Site(question == \"battery-age\", value >= 4); Odds(\"batteries-low\", 2; REDUNDANT rule"
            + " \"age\": says the same as the rule \"new\"",
        "Site(question == \"battery-age\", value >= 4) & Happened(history == \"thunderstorm\");"
            + " Odds(\"batteries-low\", 2; SUBSUMED rule \"new\": whenever it holds, the rule"
            + " \"age\" has concluded the same",
        "Site(question == \"battery-age\", value >= 4, value < 3); Odds(\"batteries-low\", 3;"
            + " UNREACHABLE rule \"new\": no fact can meet",
        "Given(check == \"lamp-seen\", outcome == \"lit\", outcome == \"dark\");"
            + " Odds(\"batteries-low\", 3; UNREACHABLE rule \"new\": no fact can meet"
      })
  void a_weak_rule_is_found_by_its_text(String when, String then, String told) {
    assertThat(found(base("", rule("new", when, then)))).contains(told);
  }

  @Test
  void the_shipped_rule_base_has_none() {
    assertThat(found(Shipped.BASE)).isEmpty();
  }

  @Test
  void rules_are_sampled_and_what_never_came_up_is_told_so(@TempDir Path cache) {
    SortedMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/small-rule-base")).files());
    RuleBase base = RuleBase.read(() -> files);
    RuleEngine engine = RuleEngine.of(base, new RuleCache(cache));
    int[] count = {0};
    var found = SampledRules.of(base, engine, 20, 1, () -> count[0]++);
    assertThat(count[0]).isEqualTo(20);
    assertThat(found).as("every rule of the small rule base speaks somewhere").isEmpty();
    assertThat(SampledRules.of(base, engine, 0, 1, () -> {}))
        .hasSize(engine.ruleNames().size())
        .allMatch(a -> a.message().equals("concluded nothing on 0 gates"))
        .allMatch(a -> a.found() == Anomaly.Found.SAMPLED);
  }

  @Test
  void two_usual_ranges_for_one_reading_are_told(@TempDir Path cache) {
    SortedMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/small-rule-base")).files());
    files.compute("small.drl", (n, t) -> t + SECOND_RANGE);
    RuleBase base = RuleBase.read(() -> files);
    RuleEngine engine = RuleEngine.of(base, new RuleCache(cache));
    assertThat(SampledRules.of(base, engine, 5, 1, () -> {}))
        .filteredOn(a -> a.kind() == Anomaly.Kind.CONTRADICTORY)
        .extracting(Anomaly::message)
        .containsExactly("computed two usual ranges for chain-sag at the same gate");
  }
}
