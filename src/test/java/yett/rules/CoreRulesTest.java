package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static yett.rules.Rules.complained;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Role;
import yett.knowledge.SiteQuestion;
import yett.rules.Conclusion.Finding;
import yett.rules.Conclusion.FollowUp;
import yett.rules.Rules.Example;
import yett.testing.Shipped;

class CoreRulesTest {
  static Stream<Example> examples() {
    return Stream.of(
        example(
            "an answer in words means the outcome that it names", said(1, "display-lit", "dark")),
        example("a reading is judged by fixed limits", read(1, "battery-block-difference", "2 V")),
        example(
            "a reading is judged by what is usual on this gate", read(1, "chain-sag", "150 mm")),
        example(
            "a reading without a usual range says nothing",
            site("marker", "none"),
            read(1, "marker-gap", "5 mm")),
        example("a complaint that was made", complained("slow")),
        example("a complaint that was not made", new Fact.ComplaintsTaken(), complained("slow")),
        example(
            "what has no sense at the gate as it stands is not asked",
            said(1, "marker-look", "gone")),
        example("what happened lately moves the odds", happened("thunderstorm")),
        example("a person is asked only what they may do", new Fact.Person(Role.CALLER)),
        example("a person repairs only what they may repair", new Fact.Person(Role.CALLER)),
        example("a check that does not apply to this site", site("batteries", "none")),
        example("a repair that does not apply to this site", site("batteries", "none")),
        example("a cause that cannot be on this site", site("batteries", "none")),
        example("a repair entails other work", done("replace-chain", 1)),
        example(
            "a danger forbids what its safe state excludes", said(1, "danger-burning", "burning")),
        example(
            "a gate that is not run while somebody watches is not run by anybody",
            said(1, "danger-burning", "burning")),
        example(
            "nothing is asked that needs a forbidden state", said(1, "danger-burning", "burning")),
        example("nothing is repaired in a forbidden state", said(1, "danger-burning", "burning")),
        example(
            "a caller does not make a gate move that must not run",
            new Fact.Person(Role.CALLER),
            said(1, "danger-burning", "burning")));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void a_rule_speaks_where_it_should(Example example) {
    assertThat(Rules.speaking(Rules.judge(example.facts()))).contains(example.rule());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void what_was_taken_back_leaves_nothing_behind(Example example) {
    assertThat(Rules.afterTakingBack(example)).isEqualTo(Rules.judgeAfresh());
    assertThat(Rules.afterTakingBackEverything(example).conclusions()).isEmpty();
  }

  @Test
  void who_cannot_say_which_complaint_it_is_denies_none() {
    assertThat(Rules.judge(List.of(new Fact.ComplaintsTaken())).findings()).isEmpty();
  }

  @Test
  void each_answer_is_found_to_mean_one_thing_whatever_else_is_known() {
    List<Fact> facts = everything(c -> c.outcomes().size() - 1, Measures::most);
    List<Finding> findings = Rules.judge(facts).findings();
    assertThat(findings).extracting(Finding::event).doesNotHaveDuplicates();
    assertThat(findings).hasSizeGreaterThan(80);
    findings.forEach(
        f ->
            assertThat(f.weights().stream().mapToDouble(w -> w).sum())
                .as(f.toString())
                .isCloseTo(1, within(1e-9)));
  }

  /** Sites at the ends of what a question allows, and at nothing at all. */
  static Stream<List<Fact>> oddSites() {
    return Stream.of(-1e-9, 0.0, 0.5, 1.0)
        .map(
            share ->
                Rules.BASE.siteQuestions().values().stream()
                    .map(q -> share < 0 ? zero(q) : atShare(q, share))
                    .toList());
  }

  @ParameterizedTest
  @MethodSource("oddSites")
  void no_site_and_no_reading_is_too_odd_for_the_rules(List<Fact> site) {
    for (double share : new double[] {0, 0.02, 0.3, 1}) {
      List<Fact> facts =
          everything(
              c -> (int) (share * (c.outcomes().size() - 1)),
              m -> m.least() + share * (m.most() - m.least()));
      facts.addAll(site);
      Rules.BASE.repairs().keySet().forEach(r -> facts.add(done(r, 1)));
      Rules.BASE.histories().keySet().forEach(h -> facts.add(happened(h)));
      Rules.BASE.complaints().forEach(c -> facts.add(complained(c.id())));
      assertThat(Rules.judge(facts).findings())
          .hasSizeGreaterThan(80)
          .allSatisfy(
              f ->
                  assertThat(f.weights().stream().mapToDouble(w -> w).sum())
                      .isCloseTo(1, within(1e-9)));
    }
  }

  @Test
  void a_caller_who_may_be_mistaken_is_believed_so_far() {
    // chain-looks: a caller reports it right 8 times in 10; the rest is shared by the other three
    Finding finding = Rules.judge(said(1, 0, Role.CALLER, "chain-looks", "hangs")).finding(1).get();
    assertThat(finding.weights().get(2)).isEqualTo(0.8);
    assertThat(finding.weights().get(0)).isCloseTo(0.2 / 3, within(1e-12));
  }

  @Test
  void a_reading_on_a_limit_speaks_for_both_sides() {
    Finding finding = Rules.judge(read(1, "chain-hand-lift", "208 mm")).finding(1).get();
    Check lift = Shipped.BASE.checks().get("chain-hand-lift");
    for (String side : List.of("ordinary", "slack")) {
      assertThat(finding.weights().get(lift.indexOf(side))).isCloseTo(0.5, within(1e-6));
    }
  }

  @Test
  void work_that_was_done_after_a_repair_is_no_longer_owed() {
    assertThat(Rules.judge(done("replace-chain", 1)).followUps())
        .extracting(FollowUp::card)
        .containsExactlyInAnyOrder("reseat-marker", "chain-sag", "teach-limits");
    assertThat(
            Rules.judge(
                    done("replace-chain", 1),
                    read(4, 1, Role.TECHNICIAN, "chain-sag", "70 mm"),
                    done("teach-limits", 2))
                .followUps())
        .filteredOn(f -> f.repair().equals("replace-chain"))
        .extracting(FollowUp::card)
        .containsExactly("reseat-marker");
  }

  private static List<Fact> everything(
      ToIntFunction<Check> outcome, ToDoubleFunction<Measures> value) {
    List<Fact> facts = new ArrayList<>();
    long event = 1;
    for (Check check : Rules.BASE.checks().values()) {
      if (check.kind() == Check.Kind.COMPLAINT) {
        continue;
      }
      boolean measured = check.measured();
      facts.add(
          new Fact.Given(
              check.id(),
              measured ? "" : check.outcomes().get(outcome.applyAsInt(check)).id(),
              measured ? value.applyAsDouble(check.measures().get()) : Double.NaN,
              measured,
              Role.TECHNICIAN,
              event++,
              0));
    }
    return facts;
  }

  private static Fact zero(SiteQuestion question) {
    return question.measures().isPresent()
        ? Fact.Site.measured(question.id(), 0)
        : atShare(question, 0);
  }

  private static Fact atShare(SiteQuestion question, double share) {
    return question
        .measures()
        .map(m -> Fact.Site.measured(question.id(), m.least() + share * (m.most() - m.least())))
        .orElseGet(
            () -> {
              List<String> choices = List.copyOf(question.choices().keySet());
              return Fact.Site.chosen(
                  question.id(), choices.get((int) (share * (choices.size() - 1))));
            });
  }
}
