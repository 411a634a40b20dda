package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.testing.Size;

/** An interview is a function of its events: how one came to them leaves no trace. */
class UndoTest {
  private static final Offset<Double> EXACTLY = Offset.offset(1e-12);
  private static final Event NOTHING = new Event.Noted("nothing");

  static LongStream seeds() {
    return Size.seeds(6, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void an_interview_that_went_along_stands_where_a_fresh_one_begins(long seed) {
    List<Moment> along = along(seed);
    for (int third = 1; third <= 3; third++) {
      Moment moment = along.get(along.size() * third / 3 - 1);
      try (Interview fresh = interview(seed)) {
        assertSame(fresh.at(moment.entries(), moment.state().role()), moment, seed);
      }
    }
  }

  /** Also where one listened to answers, and the other did not. */
  @ParameterizedTest
  @MethodSource("seeds")
  void the_same_events_give_the_same_steps_again(long seed) {
    List<Moment> along = along(seed);
    try (Interview other = interview(seed)) {
      for (Moment moment : along) {
        assertThat(other.at(moment.entries(), moment.state().role()).step())
            .as("seed %d, event %d", seed, moment.entries().size())
            .isEqualTo(moment.step());
      }
    }
  }

  private static List<Moment> along(long seed) {
    List<Moment> along = new ArrayList<>();
    try (Interview interview = interview(seed)) {
      new RandomCase(interview, seed)
          .play(
              (moment, role) -> {
                listen(interview, moment);
                along.add(moment);
              });
    }
    return along;
  }

  @Test
  void an_answer_taken_back_and_given_again_is_as_if_given_straight() {
    assertThat(Size.seeds(14, 60).map(UndoTest::takenBack).sum())
        .as("moments compared")
        .isGreaterThan(20);
  }

  private static long takenBack(long seed) {
    try (Interview interview = interview(seed)) {
      RandomCase random = new RandomCase(interview, seed);
      random.play((moment, role) -> {});
      List<Entry> entries = random.entries();
      int compared = 0;
      for (int n = 8; n < entries.size(); n += 9) {
        Moment before = interview.at(entries.subList(0, n));
        if (before.step() instanceof Step.Ask ask) {
          Event first = new Event.Answered(ask.check().id(), random.answer(ask.check(), before));
          Event second = new Event.Answered(ask.check().id(), random.answer(ask.check(), before));
          List<Entry> undone = with(before, first, new Event.Retracted(n + 1L), second);
          interview.at(undone.subList(0, n + 1)); // was there, and forgets it
          interview.at(undone.subList(0, n + 2));
          Moment again = interview.at(undone);
          Moment straight = interview.at(with(before, NOTHING, NOTHING, second));
          assertSame(again, straight, seed);
          compared++;
        }
      }
      return compared;
    }
  }

  @Test
  void a_corrected_answer_counts_as_if_it_had_been_given_so() {
    assertThat(seeds().map(UndoTest::corrected).sum()).as("moments compared").isGreaterThan(20);
  }

  private static long corrected(long seed) {
    try (Interview interview = interview(seed)) {
      RandomCase random = new RandomCase(interview, seed);
      random.play((moment, role) -> {});
      List<Entry> entries = random.entries();
      int compared = 0;
      for (int n = 8; n < entries.size(); n += 7) {
        Moment moment = interview.at(entries.subList(0, n));
        if (moment.state().answers().isEmpty()) {
          continue;
        }
        List<CaseState.Answered> answers = moment.state().answers();
        CaseState.Answered wrong = answers.get(n % answers.size());
        Answer right =
            random.answer(interview.expertise().base().checks().get(wrong.check()), moment);
        boolean putAside =
            !moment.state().kept().isEmpty()
                || !moment.state().madeSafe().isEmpty()
                || isCorrected(moment.entries(), wrong.event());
        if (!putAside) {
          List<Entry> straight = with(moment, NOTHING);
          straight.set(
              (int) wrong.event() - 1,
              entry(
                  straight,
                  wrong.event(),
                  moment.state().role(), // a correction counts for what the corrector is worth
                  new Event.Answered(wrong.check(), right)));
          assertSame(
              interview.at(with(moment, new Event.Corrected(wrong.event(), right))),
              interview.at(straight),
              seed);
          compared++;
        }
      }
      return compared;
    }
  }

  /** Only listening to an answer must leave no trace either. */
  private static void listen(Interview interview, Moment moment) {
    Optional<Step.Ask> asked =
        moment.step() instanceof Step.LookRound round
            ? Optional.of(round.first())
            : Optional.of(moment.step())
                .filter(Step.Ask.class::isInstance)
                .map(Step.Ask.class::cast);
    if (asked.isPresent() && !asked.get().check().measured()) {
      Step.Ask ask = asked.get();
      String last = ask.check().outcomes().get(ask.check().outcomes().size() - 1).id();
      assertThat(interview.hear(moment, ask.check(), new Answer.Chosen(last))).isPresent();
    }
  }

  private static boolean isCorrected(List<Entry> entries, long event) {
    return entries.stream()
        .anyMatch(e -> e.event() instanceof Event.Corrected c && c.event() == event);
  }

  private static Interview interview(long seed) {
    return new Interview(Shipped.QUICK, new AnyAdviser(seed));
  }

  private static List<Entry> with(Moment before, Event... events) {
    List<Entry> entries = new ArrayList<>(before.entries());
    Role role = before.state().role();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, role, event));
    }
    return entries;
  }

  private static Entry entry(List<Entry> entries, long number, Role by, Event event) {
    return new Entry(number, entries.get((int) number - 1).at(), by, event);
  }

  private static void assertSame(Moment actual, Moment expected, long seed) {
    String where = "seed %d, after\n%s".formatted(seed, RandomCase.told(actual.entries()));
    assertThat(actual.step()).as(where).isEqualTo(expected.step());
    assertThat(actual.judgement()).as(where).isEqualTo(expected.judgement());
    assertThat(actual.belief().atCallOut())
        .as(where)
        .containsExactly(expected.belief().atCallOut(), EXACTLY);
    assertThat(actual.belief().remaining())
        .as(where)
        .containsExactly(expected.belief().remaining(), EXACTLY);
  }
}
