package yett.interview.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.belief.CausalModel;
import yett.belief.Conflicts;
import yett.belief.Observation;
import yett.interview.course.Advised;
import yett.interview.course.AnyAdviser;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion;
import yett.testing.Shipped;
import yett.testing.Size;
import yett.wording.Wording;

/** Answers that hardly fit together are told, and none of them stops the case. */
class ConflictTest {
  private static final RuleBase BASE = Shipped.EXPERTISE.base();

  /**
   * The cards without the share of every row that is spread evenly: some answers exclude others.
   */
  private static final Expertise STRICT =
      new Expertise(BASE, Shipped.EXPERTISE.rules(), strict(), Shipped.EXPERTISE.planner());

  private static CausalModel strict() {
    CausalModel.Builder builder = CausalModel.builder();
    BASE.causes().values().forEach(c -> builder.cause(c.id(), c.prior() / 10));
    for (Cause cause : BASE.causes().values()) {
      cause.consequences().forEach((to, chance) -> builder.link(cause.id(), to, chance));
    }
    for (Check check : BASE.checks().values()) {
      double[] base = new double[check.outcomes().size()];
      base[0] = 1;
      builder.check(check.id(), base, check.likelihood());
    }
    return builder.build();
  }

  private static List<Entry> begun() {
    List<Entry> entries = new ArrayList<>();
    add(entries, new Event.Opened("Harrow Quay, gate 3", Role.TECHNICIAN, "any"));
    BASE.checks().values().stream()
        .filter(Check::danger)
        .forEach(c -> add(entries, answered(c, c.outcomes().get(0).id())));
    add(entries, new Event.SiteTaken());
    add(entries, new Event.Complained(List.of()));
    add(entries, new Event.Happened(List.of()));
    return entries;
  }

  private static void add(List<Entry> entries, Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  private static Event answered(Check check, String outcome) {
    return new Event.Answered(check.id(), new Answer.Chosen(outcome));
  }

  private static Event answered(String check, String outcome) {
    return answered(BASE.checks().get(check), outcome);
  }

  @Test
  void answers_at_random_leave_every_number_finite() {
    Size.seeds(10, 40)
        .forEach(s -> answerAtRandom(s % 4 == 0 ? Shipped.EXPERTISE : Shipped.QUICK, s));
  }

  @Test
  void answers_that_nothing_allows_are_kept_and_not_weighed() {
    assertThat(Size.seeds(10, 40).map(seed -> answerAtRandom(STRICT, seed)).sum())
        .as("answers that nothing allows")
        .isGreaterThan(Size.of(10, 40));
  }

  private static Set<String> senseless(Moment moment) {
    return moment.judgement().conclusions().stream()
        .filter(Conclusion.Senseless.class::isInstance)
        .map(Conclusion::about)
        .collect(Collectors.toSet());
  }

  /**
   * @return how many of the answers were such that nothing allows them
   */
  private static long answerAtRandom(Expertise expertise, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Check> checks = new ArrayList<>(BASE.ordinaryChecks().filter(c -> !c.danger()).toList());
    List<Entry> entries = begun();
    long impossible = 0;
    try (Interview interview = Advised.interview(expertise, new AnyAdviser(seed))) {
      Moment moment = interview.at(entries);
      for (int i = 0; i < 14; i++) {
        Check check = checks.remove(random.nextInt(checks.size()));
        int telling = 1 + random.nextInt(check.outcomes().size() - 1);
        int outcome = random.nextInt(4) == 0 ? 0 : telling;
        add(entries, answered(check, check.outcomes().get(outcome).id()));
        Moment before = moment;
        moment = interview.at(entries);
        assertFinite(moment);
        if (chance(before, moment, check) == 0) {
          impossible++;
          assertThat(moment.state().answer(check.id())).isPresent();
          if (senseless(moment).equals(senseless(before))) { // else earlier answers count no more
            assertThat(moment.belief().atCallOut()).isEqualTo(before.belief().atCallOut());
          }
        }
      }
      try (Interview again = Advised.interview(expertise, new AnyAdviser(seed))) {
        Moment anew = again.at(entries);
        assertThat(anew.conflict()).isEqualTo(moment.conflict());
        assertThat(anew.belief().atCallOut()).isEqualTo(moment.belief().atCallOut());
      }
    }
    return impossible;
  }

  /** Chance that the last answer had before it was given; one that has no sense is not weighed. */
  private static double chance(Moment before, Moment after, Check check) {
    return after
        .judgement()
        .finding(after.entries().size())
        .map(f -> before.belief().chanceOf(new Observation(check.id(), f.weights())))
        .orElse(1.0);
  }

  private static void assertFinite(Moment moment) {
    assertThat(Double.isFinite(moment.belief().logEvidence())).isTrue();
    assertThat(Arrays.stream(moment.belief().atCallOut()).allMatch(p -> p >= 0 && p <= 1)).isTrue();
    for (Trail.Move move : moment.trail().moves()) {
      assertThat(Arrays.stream(move.after()).noneMatch(Double::isNaN)).isTrue();
    }
    moment
        .conflict()
        .ifPresent(
            c -> {
              assertThat(c.bits()).isBetween(Conflicts.TOLD, Conflicts.MOST);
              assertThat(c.parts()).isNotEmpty();
              assertThat(new Wording(BASE).conflict(c))
                  .doesNotContain("NaN", "Infinity")
                  .endsWith(".");
            });
  }

  @Test
  void a_slack_chain_that_hangs_straight_is_told_until_one_answer_is_corrected() {
    List<Entry> entries = begun();
    Check sag = BASE.checks().get("chain-sag");
    Check hand = BASE.checks().get("chain-hand-lift");
    try (Interview interview = Advised.interview(Shipped.EXPERTISE, new AnyAdviser(1))) {
      add(entries, answered(sag, sag.outcomes().get(sag.outcomes().size() - 1).id()));
      long first = entries.size();
      assertThat(interview.at(entries).conflict()).isEmpty();
      add(entries, answered(hand, hand.outcomes().get(0).id()));
      Conflict conflict = interview.at(entries).conflict().orElseThrow();
      assertThat(conflict.parts())
          .extracting(Conflict.Part::check)
          .containsExactly("chain-sag", "chain-hand-lift");
      assertThat(conflict.weighed()).isTrue();
      add(entries, new Event.Corrected(first, new Answer.Chosen(sag.outcomes().get(0).id())));
      assertThat(interview.at(entries).conflict()).isEqualTo(Optional.empty());
    }
  }

  @Test
  void an_answer_that_nothing_allows_is_named_and_can_be_corrected() {
    List<Entry> entries = begun();
    try (Interview interview = Advised.interview(STRICT, new AnyAdviser(1))) {
      Moment before = interview.at(entries);
      Check check =
          BASE.ordinaryChecks()
              .filter(c -> impossible(c) >= 0 && !c.danger())
              .findFirst()
              .orElseThrow();
      add(entries, answered(check.id(), check.outcomes().get(impossible(check)).id()));
      long wrong = entries.size();
      Moment after = interview.at(entries);
      assertThat(after.belief().atCallOut()).isEqualTo(before.belief().atCallOut());
      Conflict conflict = after.conflict().orElseThrow();
      assertThat(conflict.weighed()).isFalse();
      assertThat(new Wording(BASE).conflict(conflict))
          .startsWith("This hardly fits what was known before: \"" + check.ask())
          .endsWith("kept, but does not count.");
      add(entries, new Event.Corrected(wrong, new Answer.Chosen(check.outcomes().get(0).id())));
      assertThat(interview.at(entries).conflict()).isEmpty();
    }
  }

  /** An outcome that no cause shows at all; -1 if each is shown by some. */
  private static int impossible(Check check) {
    for (int y = 1; y < check.outcomes().size(); y++) {
      int outcome = y;
      if (check.likelihood().values().stream().allMatch(row -> row[outcome] == 0)) {
        return y;
      }
    }
    return -1;
  }
}
