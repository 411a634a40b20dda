package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.belief.CausalModel;
import yett.interview.event.Entry;
import yett.interview.moment.Moment;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.step.Step;
import yett.knowledge.RuleBase;
import yett.replay.SmallRuleBase;
import yett.testing.Size;

/** A cause that cannot be at a gate changes nothing there. */
class ElsewhereTest {
  private static final Offset<Double> EXACTLY = Offset.offset(1e-12);
  private static final List<String> THERE =
      List.of("chain-slack", "mains-missing", "nothing-wrong", "batteries-low");
  private static final List<String> CHECKS =
      List.of(
          "display-lit: {dark: always}",
          "noise-kind: {slap: usually}",
          "held-open: {meant: sometimes}",
          "chain-sag: {tight: often}",
          "noisy-chain: usually",
          "does-nothing: nearly always");

  static LongStream seeds() {
    return Size.seeds(8, 80);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_same_is_believed_and_asked_with_and_without_it(long seed) {
    Expertise without = SmallRuleBase.expertise();
    Expertise with = SmallRuleBase.changed(files -> addCauses(files, new Random(seed)));
    int compared = 0;
    try (Interview here = without.newInterview();
        Interview there = with.newInterview()) {
      RandomCase random = new RandomCase(here, seed);
      random.play((moment, role) -> {});
      List<Entry> entries = random.entries();
      for (int n = 1; n <= entries.size(); n++) {
        Moment moment = here.at(entries.subList(0, n));
        if (isElsewhere(with.base(), moment)) {
          assertSame(there.at(entries.subList(0, n)), moment, "seed " + seed + ", event " + n);
          compared++;
        }
      }
    }
    assertThat(compared).as("moments compared").isPositive();
  }

  private static void assertSame(Moment with, Moment without, String where) {
    CausalModel model = without.belief().model();
    for (String cause : model.causes()) {
      assertThat(with.belief().atCallOut(cause))
          .as("%s, %s", where, cause)
          .isCloseTo(without.belief().atCallOut(cause), EXACTLY);
      assertThat(with.belief().remaining()[with.belief().model().indexOf(cause)])
          .as("%s, %s", where, cause)
          .isCloseTo(without.belief().remaining()[model.indexOf(cause)], EXACTLY);
    }
    assertThat(with.belief().logEvidence())
        .as(where)
        .isCloseTo(without.belief().logEvidence(), EXACTLY);
    assertThat(said(with.step())).as(where).isEqualTo(said(without.step()));
  }

  /** The step itself; what it is expected to bring may differ in the last figure. */
  private static String said(Step step) {
    return step instanceof Step.Ask ask
        ? "ask " + ask.check().id()
        : step instanceof Step.Mend repair
            ? "repair " + repair.repair().id()
            : step.getClass().getName();
  }

  private static boolean isElsewhere(RuleBase base, Moment moment) {
    Site site = new SiteFacts(base).site(moment.state().told().site());
    return base.causes().values().stream()
        .filter(c -> c.id().startsWith("elsewhere"))
        .noneMatch(site::allows);
  }

  private static void addCauses(SortedMap<String, String> files, Random random) {
    StringBuilder cards = new StringBuilder();
    IntStream.rangeClosed(1, 3).forEach(i -> cards.append(cause(i, random)).append("---\n"));
    cards.append(
        """
        repair: mend-elsewhere
        name: Put right what is elsewhere
        steps: [Do it.]
        removes: {elsewhere-1: 0.9, elsewhere-2: 0.9, elsewhere-3: 0.9}
        minutes: 1
        who: caller
        proofs: [limits-hold]
        source: considered judgement
        """);
    files.put("elsewhere.yaml", cards.toString());
    files.computeIfPresent(
        "causes.yaml",
        (name, text) ->
            text.replace(
                "consequences: {batteries-low: 0.9}",
                "consequences: {batteries-low: 0.9, elsewhere-1: 0.5}"));
  }

  private static String cause(int number, Random random) {
    double prior = 0.001 + 0.3 * random.nextDouble();
    String brought = THERE.get(random.nextInt(THERE.size()));
    return """
        cause: elsewhere-%d
        name: Something that other gates have
        area: supply
        prior: %.4f
        consequences: {%s: %.2f}
        only-if: {batteries: [none]}
        shows:
          %s
        source: considered judgement
        """
        .formatted(
            number, prior, brought, random.nextDouble(), CHECKS.get(random.nextInt(CHECKS.size())));
  }
}
