package yett.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import yett.belief.CausalModel;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.replay.SmallRuleBase;

class ReviewerTest {
  private static final RuleBase BASE = SmallRuleBase.base();
  private static final CausalModel MODEL = SmallRuleBase.expertise().model();
  private static final double WEIGHT = 20;
  private static final Map<String, Double> SHARES = CaseSettler.shares(MODEL);

  /** What the simulated gates do with flat batteries, where the card says 0.05, 0.25, 0.7. */
  private static final double[] TRUE_ROW = {0.2, 0.5, 0.3};

  /** How often the chain is slack among simulated reports, where the card lets it be 0.27 or so. */
  private static final double TRUE_SHARE = 0.5;

  private static Reviewer reviewer() {
    return new Reviewer(BASE, MODEL, WEIGHT);
  }

  private static Proposal named(List<Proposal> all, String name) {
    return all.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private static int draw(double[] row, Random random) {
    double at = random.nextDouble();
    int i = 0;
    while (i < row.length - 1 && (at -= row[i]) >= 0) {
      i++;
    }
    return i;
  }

  /** A casebook of gates with flat batteries or a slack chain, made up by the test alone. */
  private static List<SettledCase> casebook(int cases, Random random) {
    Check rest = BASE.checks().get("battery-rest-voltage");
    List<SettledCase> all = new ArrayList<>();
    for (int i = 0; i < cases; i++) {
      boolean slack = random.nextDouble() < TRUE_SHARE;
      int outcome = draw(rest.otherwise(), random);
      outcome = slack ? outcome : Math.max(outcome, draw(TRUE_ROW, random));
      all.add(
          new SettledCase(
              Set.of(slack ? "chain-slack" : "batteries-low"),
              new HashMap<>(Map.of(rest.id(), outcome)),
              SHARES));
    }
    return all;
  }

  /** Root of the mean squared error of an estimate over many casebooks. */
  private static double error(int cases, ToDoubleFunction<List<SettledCase>> missedBy) {
    double sum = 0;
    int books = 100;
    for (int book = 0; book < books; book++) {
      double missed = missedBy.applyAsDouble(casebook(cases, new Random(1000L * cases + book)));
      sum += missed * missed / books;
    }
    return Math.sqrt(sum);
  }

  private static double missedShare(List<SettledCase> cases) {
    return named(reviewer().all(cases), "prior/chain-slack").posterior().mean(0) - TRUE_SHARE;
  }

  /** The binomial law: the error of a share falls as sqrt(p (1 - p) / n). */
  @Test
  void a_share_is_learnt_at_the_rate_of_theory() {
    for (int cases : new int[] {200, 800}) {
      double theory = Math.sqrt(TRUE_SHARE * (1 - TRUE_SHARE) / cases);
      assertThat(error(cases, ReviewerTest::missedShare)).isBetween(0.75 * theory, 1.3 * theory);
    }
  }

  /**
   * What is shown is the most telling of both: charged is shown with 0.2 times 0.93. Half of the
   * cases have flat batteries.
   */
  @Test
  void a_row_is_learnt_at_the_rate_of_theory() {
    double shown = TRUE_ROW[0] * 0.93;
    for (int cases : new int[] {200, 800}) {
      double theory = Math.sqrt(shown * (1 - shown) / (cases / 2.0));
      double error =
          error(
              cases,
              book ->
                  named(reviewer().all(book), "battery-rest-voltage/batteries-low")
                          .posterior()
                          .mean(0)
                      - shown);
      assertThat(error).isBetween(0.75 * theory, 1.3 * theory);
    }
  }

  @Test
  void many_cases_bring_the_row_and_the_prior_to_what_is_true() {
    List<Proposal> found = reviewer().review(casebook(20_000, new Random(8)));
    double[] row = named(found, "battery-rest-voltage/batteries-low").instead();
    for (int i = 0; i < row.length; i++) {
      assertThat(row[i]).isCloseTo(TRUE_ROW[i], within(0.02));
    }
    double p = named(found, "prior/chain-slack").instead()[0];
    double judged = SHARES.get("chain-slack");
    double card = BASE.causes().get("chain-slack").prior();
    // The card's odds move by the factor by which the odds of the share were wrong.
    assertThat(p / (1 - p)).isCloseTo(card / (1 - card) / (judged / (1 - judged)), within(0.02));
    assertThat(found)
        .extracting(Proposal::name)
        .as("what was simulated as the card says")
        .doesNotContain("battery-rest-voltage/otherwise");
  }

  @Test
  void few_cases_leave_the_judgement_of_the_card_standing() {
    List<SettledCase> few = casebook(4, new Random(2));
    assertThat(reviewer().review(few)).isEmpty();
    for (Proposal p : reviewer().all(few)) {
      for (int i = 0; i < p.outcomes().size(); i++) {
        double most = p.posterior().cases() / (WEIGHT + p.posterior().cases());
        assertThat(p.posterior().mean(i)).isCloseTo(p.posterior().judged()[i], within(most + 1e-9));
      }
    }
  }

  /** Cases that are as the cards say are seldom held against them. */
  @Test
  void cards_that_are_right_are_left_alone() {
    Random random = new Random(4);
    int against = 0;
    Check rest = BASE.checks().get("battery-rest-voltage");
    for (int book = 0; book < 100; book++) {
      List<SettledCase> cases = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        int shown =
            Math.max(
                draw(rest.otherwise(), random),
                draw(rest.likelihood().get("batteries-low"), random));
        cases.add(new SettledCase(Set.of("batteries-low"), Map.of(rest.id(), shown), Map.of()));
      }
      against += reviewer().review(cases).isEmpty() ? 0 : 1;
    }
    assertThat(against).isLessThanOrEqualTo(10);
  }

  @Test
  void a_contribution_is_what_the_base_does_not_explain() {
    double[] base = {0.93, 0.06, 0.01};
    double[] shown = {0.2 * 0.93, 0.7 * 0.99 - 0.2 * 0.93, 1 - 0.7 * 0.99};
    // The half percent of slips is taken off again.
    double[] row = Rows.contribution(shown, base);
    assertThat(row[0]).isCloseTo((0.2 - 0.005 / 3) / 0.995, within(1e-9));
    assertThat(row[1]).isCloseTo((0.5 - 0.005 / 3) / 0.995, within(1e-9));
    assertThat(Rows.figures(new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3}))
        .containsExactly(0.334, 0.333, 0.333);
  }

  @Test
  void a_closed_case_tells_what_was_wrong_and_what_it_showed() {
    SettledCase settled = settle("truth: [chain-slack]\nrepairs: [tighten-chain]\n").get(0);
    assertThat(settled.causes()).containsExactly("chain-slack");
    assertThat(settled.seen()).containsEntry("noise-kind", 1);
    assertThat(settled.seen()).as("after the repair").doesNotContainKey("chain-sag");
    assertThat(settled.seen()).containsEntry("noisy-chain", 0).containsEntry("stays-open", 0);
    assertThat(settled.share()).containsKey("mains-missing");
  }

  @Test
  void a_case_that_was_handed_over_tells_nothing() {
    assertThat(settle("truth: [mains-missing]\n")).isEmpty();
  }

  private static List<SettledCase> settle(String truth) {
    CaseFile file =
        CaseFile.read(
            "quay.case.yaml",
            """
            case: slack
            person: technician
            answers:
              display-lit: steady
              noise-kind: slap
              held-open: not-meant
              chain-sag: [190 mm, 84 mm]
              battery-rest-voltage: 25.9 V
              charging-voltage: 27.4 V
            """
                + truth,
            BASE);
    assertThat(file.problems()).isEmpty();
    Replayed run = new Replayer(SmallRuleBase.expertise()).run(file.cases().get(0));
    List<Entry> entries = run.moment().entries();
    try (Interview interview = SmallRuleBase.expertise().newInterview()) {
      return new CaseSettler(interview).settle(entries).stream().toList();
    }
  }
}
