package yett.interview.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import yett.interview.course.Advised;
import yett.interview.course.AnyAdviser;
import yett.interview.course.Interview;
import yett.interview.course.RandomCase;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.watch.SafetyWatch;
import yett.interview.watch.Watches;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Two people go on with one random case without knowing of each other; then what both entered is
 * merged and the case is played to its end under the eyes of {@link SafetyWatch}. A failure names
 * its seed; {@code -Dyett.seed=…} repeats that case alone.
 */
class MergedCasesTest {
  private static final int CASES = Size.of(60, 2_000);
  private static final long FIRST = 3_000_001;
  private static final List<Role> ALL = List.of(Role.values());
  private static final Instant THEIRS = Instant.parse("2026-11-25T09:30:00Z");
  private static final Instant MINE = THEIRS.plusSeconds(3_600);

  private final Map<Long, String> failures = new ConcurrentSkipListMap<>();
  private final AtomicInteger dangers = new AtomicInteger();
  private final AtomicInteger bothMoved = new AtomicInteger();
  private final AtomicInteger reopened = new AtomicInteger();

  @Test
  void nothing_unsafe_comes_of_what_two_people_entered_at_once() {
    Long one = Long.getLong("yett.seed");
    (one == null ? LongStream.range(FIRST, FIRST + CASES).parallel() : LongStream.of(one))
        .forEach(this::merged);
    assertThat(failures).isEmpty();
    if (one == null) {
      assertThat(dangers).as("merges with a danger").hasValueGreaterThan(CASES / 4);
      assertThat(bothMoved)
          .as("merges in which both changed set-ups")
          .hasValueGreaterThan(CASES / 20);
      assertThat(reopened).as("closed cases that a danger opened").hasValueGreaterThan(CASES / 20);
    }
  }

  private void merged(long seed) {
    try (Interview interview = Advised.interview(Shipped.QUICK, new AnyAdviser(seed))) {
      List<Entry> all = new ArrayList<>();
      try {
        RandomCase first = new RandomCase(interview, seed, ALL);
        first.goOn(4 + (int) (seed % 30));
        List<Entry> known = first.entries();
        RandomCase other = new RandomCase(interview, seed + 1, ALL, known, THEIRS);
        List<Entry> theirs = new ArrayList<>(other.goOn(1 + (int) (seed % 17)));
        RandomCase second = new RandomCase(interview, seed + 2, ALL, known, MINE);
        List<Entry> mine = new ArrayList<>(second.goOn(1 + (int) (seed % 13)));
        if (seed % 3 == 0) {
          theirs.add(other.meetDanger());
        }
        if (seed % 2 == 0) {
          mine.add(second.meetDanger());
          mine.addAll(second.goOn(2));
        }
        if (seed % 10 == 0) {
          theirs.add(closed(other.entries()));
        }
        all.addAll(known);
        all.addAll(theirs);
        var together = Meanwhile.of(Shipped.BASE, EventText::write, all, known.size(), mine);
        all.addAll(together.added());
        count(theirs, mine, together);
        dangersCount(mine, all);
        delivered(known, all, mine);
        play(interview, seed, all);
      } catch (AssertionError | RuntimeException e) {
        failures.put(seed, e + "\n" + RandomCase.told(all));
      }
    }
  }

  private static Entry closed(List<Entry> entries) {
    Entry last = entries.get(entries.size() - 1);
    return new Entry(
        last.number() + 1,
        last.at().plusSeconds(1),
        last.by(),
        new Event.Closed(Ending.HANDED_OVER));
  }

  private void count(List<Entry> theirs, List<Entry> mine, Meanwhile.Together together) {
    dangers.addAndGet(mine.stream().anyMatch(MergedCasesTest::tellsOfDanger) ? 1 : 0);
    bothMoved.addAndGet(
        theirs.stream().anyMatch(MergedCasesTest::moves)
                && mine.stream().anyMatch(MergedCasesTest::moves)
            ? 1
            : 0);
    reopened.addAndGet(
        together.added().stream().anyMatch(e -> e.event() instanceof Event.TakenUp) ? 1 : 0);
  }

  /** Whatever danger the second person reported and did not take back is in the case. */
  private static void dangersCount(List<Entry> mine, List<Entry> all) {
    List<Event> valid = Entry.valid(all).stream().map(Entry::event).toList();
    for (Entry entry : Entry.valid(mine)) {
      boolean corrected =
          mine.stream()
              .anyMatch(e -> e.event() instanceof Event.Corrected c && c.event() == entry.number());
      if (tellsOfDanger(entry) && !corrected) {
        assertThat(valid).contains(entry.event());
      }
    }
  }

  /** What is delivered a second time changes nothing. */
  private static void delivered(List<Entry> known, List<Entry> all, List<Entry> mine) {
    assertThat(Meanwhile.of(Shipped.BASE, EventText::write, all, known.size(), mine).added())
        .as("delivered again")
        .isEmpty();
  }

  private static void play(Interview interview, long seed, List<Entry> merged) {
    SafetyWatch watch = Watches.after(Shipped.BASE, merged.size());
    RandomCase rest = new RandomCase(interview, seed + 3, ALL, merged, MINE.plusSeconds(3_600));
    rest.play(watch);
  }

  private static boolean tellsOfDanger(Entry entry) {
    return entry.event() instanceof Event.Answered a
        && Shipped.BASE.checks().get(a.check()).danger()
        && a.answer().choice().isPresent()
        && !isFirst(Shipped.BASE.checks().get(a.check()), a.answer());
  }

  private static boolean isFirst(Check check, Answer answer) {
    return answer.is(check.outcomes().get(0).id());
  }

  private static boolean moves(Entry entry) {
    return entry.event() instanceof Event.SetUpEntered
        || entry.event() instanceof Event.SetUpLeft
        || entry.event() instanceof Event.MadeSafe m && m.setUps().isPresent();
  }
}
