package yett.interview.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.course.RandomCase;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;
import yett.testing.Shipped;

/** What nobody can have entered is found, and what people enter is none of it. */
class SenseTest {
  private static final Event OPENED =
      new Event.Opened("Fish dock", Role.TECHNICIAN, SmallRuleBase.base().fingerprint());
  private static final Event MENDED = new Event.Repaired("tighten-chain", true);
  private static final Event RUNS = new Event.Retested(true);
  private static final Event PASSED = new Event.Answered("limits-hold", new Answer.Chosen("pass"));

  private static List<Entry> entries(Role by, Event... events) {
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry(1, Instant.EPOCH, by, OPENED));
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, by, event));
    }
    return entries;
  }

  private static List<Sense.Doubt> doubts(Event... events) {
    return new Sense(SmallRuleBase.base()).doubts(entries(Role.ELECTRICIAN, events));
  }

  private static Event read(String typed, double value) {
    return new Event.Answered("chain-sag", new Answer.Read(typed, value));
  }

  static Stream<Event> nonsense() {
    return Stream.of(
        new Event.SiteAnswered("opening", "wide"),
        new Event.SiteAnswered("batteries", "potato"),
        new Event.SiteAnswered("moon", "full"),
        new Event.Complained(List.of("sings")),
        new Event.Happened(List.of("full-moon")),
        new Event.Pressed(List.of("nothing-of-it")),
        new Event.Answered("moon", new Answer.Chosen("full")),
        new Event.Answered("display-lit", new Answer.Chosen("singing")),
        new Event.Answered("display-lit", new Answer.Read("3 V", 3)),
        read("190 mm", Double.NaN),
        read("1e999 mm", Double.POSITIVE_INFINITY),
        read("1900 mm", 1900),
        read("190 mm", 19),
        read("long", 190),
        new Event.SetUpEntered("asleep", ""),
        new Event.SetUpLeft("asleep", ""),
        new Event.Repaired("pray", true),
        new Event.Repaired("pray", false),
        new Event.Reopened("display-lit"),
        new Event.Kept(1, 2),
        new Event.Retracted(2),
        new Event.Retracted(0),
        new Event.Corrected(1, new Answer.Chosen("dark")),
        new Event.MadeSafe("moon"),
        new Event.Noted("x".repeat(10_001)),
        new Event.Noted("\u001b[2J"),
        new Event.Said("\u009b2J"),
        new Event.GaveUp("\u0007"),
        new Event.Opened("Fish dock", Role.CALLER, "f"),
        new Event.Closed(Ending.REPAIRED),
        new Event.Closed(Ending.SOLVED));
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void what_nobody_can_have_entered_is_found_in_its_place(Event event) {
    assertThat(doubts(event)).isNotEmpty().allMatch(d -> d.event() == 2);
  }

  @Test
  void nothing_of_a_file_stands_in_the_words() {
    assertThat(doubts(new Event.Repaired("\u001b[2Jpray", true)))
        .containsExactly(new Sense.Doubt(2, "there is no such repair"));
  }

  @Test
  void a_closing_needs_a_gate_that_ran_and_its_proofs_since_the_last_repair() {
    Event closed = new Event.Closed(Ending.REPAIRED);
    Event failed = new Event.Answered("limits-hold", new Answer.Chosen("fail"));

    assertThat(doubts(MENDED, RUNS, PASSED, closed)).isEmpty();
    assertThat(doubts(MENDED, RUNS, closed)).hasSize(1);
    assertThat(doubts(MENDED, RUNS, failed, closed)).hasSize(1);
    assertThat(doubts(MENDED, PASSED, closed)).hasSize(1);
    assertThat(doubts(PASSED, MENDED, RUNS, closed)).hasSize(1);
    assertThat(doubts(MENDED, closed)).hasSize(2);
    assertThat(doubts(MENDED, new Event.Closed(Ending.HANDED_OVER))).isEmpty();
    assertThat(doubts(new Event.Closed(Ending.WORKS_AGAIN))).isEmpty();
    assertThat(doubts(new Event.Closed(Ending.NOT_REACHED))).isEmpty();
    assertThat(doubts(MENDED, RUNS, PASSED, closed, new Event.Noted("after it"))).isEmpty();
    assertThat(doubts(MENDED, RUNS, PASSED, closed, MENDED)).hasSize(1);
  }

  /** It has no proofs, but somebody vouches that the gate passed them on that day. */
  @Test
  void a_visit_from_paper_has_readings_and_nothing_else() {
    Event opened =
        new Event.Opened(
            "Fish dock",
            Role.TECHNICIAN,
            SmallRuleBase.base().fingerprint(),
            Optional.of(InspectionKind.SERVICE),
            List.of());
    List<Event> paper =
        List.of(
            opened,
            new Event.SiteTaken(),
            read("60 mm", 60),
            FromPaper.note("papers.csv"),
            new Event.Closed(Ending.INSPECTED));
    assertThat(fromPaper(paper)).isEmpty();
    List<Event> without = new ArrayList<>(paper);
    without.remove(3);
    assertThat(fromPaper(without))
        .extracting(Sense.Doubt::words)
        .anyMatch(w -> w.contains("not passed"));
    List<Event> more = new ArrayList<>(paper);
    more.add(3, MENDED);
    assertThat(fromPaper(more)).as("no paper visit repairs").isNotEmpty();
  }

  private static List<Sense.Doubt> fromPaper(List<Event> events) {
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
    }
    return new Sense(SmallRuleBase.base()).doubts(entries);
  }

  @Test
  void nobody_does_what_is_reserved_for_others() {
    var sense = new Sense(SmallRuleBase.base());

    assertThat(sense.doubts(entries(Role.CALLER, read("19 mm", 19)))).hasSize(1);
    assertThat(sense.doubts(entries(Role.CALLER, MENDED))).hasSize(1);
    assertThat(sense.doubts(entries(Role.TECHNICIAN, read("19 mm", 19), MENDED))).isEmpty();
  }

  /** Cards come and go, and so do those who may do what is on them. */
  @Test
  void a_case_made_with_other_cards_may_speak_of_checks_that_are_gone() {
    List<Entry> entries =
        List.of(
            new Entry(1, Instant.EPOCH, Role.CALLER, new Event.Opened("A", Role.CALLER, "other")),
            new Entry(
                2,
                Instant.EPOCH,
                Role.CALLER,
                new Event.Answered("moon", new Answer.Chosen("full"))));

    assertThat(new Sense(SmallRuleBase.base()).doubts(entries)).isEmpty();
    assertThat(new Sense(SmallRuleBase.base()).doubts(entries.subList(1, 2)))
        .extracting(Sense.Doubt::words)
        .containsExactly("a case begins by being opened, and once");
  }

  /** Otherwise an export could not be taken in again. */
  @ParameterizedTest
  @ValueSource(longs = {1, 4, 5})
  void whatever_people_enter_makes_sense(long seed) {
    var base = Shipped.QUICK.base();
    try (var interview = Shipped.QUICK.newInterview()) {
      List<Entry> played = new RandomCase(interview, seed).play((m, r) -> {});

      assertThat(new Sense(base).doubts(played.stream().map(SenseTest::asTyped).toList()))
          .isEmpty();
    }
  }

  /** What plays at random draws a reading and types it rounded; who types is read as typed. */
  private static Entry asTyped(Entry entry) {
    Event event = entry.event();
    if (event instanceof Event.Opened e) {
      event = new Event.Opened(e.site(), e.role(), Shipped.QUICK.base().fingerprint());
    } else if (event instanceof Event.Answered e && e.answer() instanceof Answer.Read read) {
      event = new Event.Answered(e.check(), asTyped(e.check(), read));
    } else if (event instanceof Event.Corrected e && e.answer() instanceof Answer.Read read) {
      event = new Event.Corrected(e.event(), new Answer.CannotTell());
    }
    return new Entry(entry.number(), entry.at(), entry.by(), event);
  }

  private static Answer asTyped(String check, Answer.Read read) {
    var measures = Shipped.QUICK.base().checks().get(check).measures().orElseThrow();
    return new Answer.Read(read.typed(), measures.parse(read.typed()));
  }

  @Test
  void the_versions_of_a_rule_base_are_words_that_somebody_can_have_written() {
    var sense = new Sense(SmallRuleBase.base());
    for (List<String> bad : List.of(List.of("\u001b[2J"), Collections.nCopies(101, "Quay 1"))) {
      Event opened = new Event.Opened("A", Role.CALLER, "f", Optional.empty(), List.of(), bad);
      assertThat(sense.doubts(List.of(new Entry(1, Instant.EPOCH, Role.CALLER, opened))))
          .isNotEmpty();
    }
  }
}
