package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.Outbox;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Two people at one gate, each with a computer, on one inspection. */
class SharedInspectionTest {
  private static final int MOST_TURNS = 400;

  @TempDir Path directory;

  private OpenCase open(String desk, Casebook casebook, CaseId id) {
    return new OpenCase(
        casebook,
        id,
        Shipped.QUICK.newInterview(),
        Optional.of(Role.TECHNICIAN),
        Clock.tickMillis(ZoneOffset.UTC),
        new Outbox(directory.resolve(desk), casebook.name()).newParcel(id));
  }

  /** Neither looks at what the other did before entering what was asked. */
  @Test
  void nothing_of_either_is_lost_and_nothing_counts_twice() {
    Path file = directory.resolve("casebook.db");
    try (Casebook one = Casebook.open(file);
        Casebook other = Casebook.open(file)) {
      CaseId id = one.newCase("Net loft", Instant.parse("2026-05-04T08:00:00Z"));
      try (OpenCase mia = open("mia", one, id)) {
        mia.record(
            new Event.Opened(
                "Net loft",
                Role.TECHNICIAN,
                Shipped.BASE.fingerprint(),
                Optional.of(InspectionKind.SERVICE),
                List.of()));
        try (OpenCase tom = open("tom", other, id)) {
          together(mia, person(1), tom, person(2));
          CaseState state = mia.moment().state();
          assertThat(state.closed()).contains(Ending.INSPECTED);
          assertThat(state.work().setUps()).isEmpty();
          assertThat(
                  state.answers().stream()
                      .collect(
                          Collectors.groupingBy(CaseState.Answered::check, Collectors.counting())))
              .as("each thing counts once")
              .allSatisfy((check, times) -> assertThat(times).isEqualTo(1));
          Inspection inspection = Inspection.of(Shipped.BASE, mia.moment()).orElseThrow();
          assertThat(inspection.results(Verdict.OPEN))
              .allMatch(r -> r.check().who() == Role.ELECTRICIAN);
          assertThat(state.notes())
              .as("what both read at the same time otherwise stands beside it")
              .anyMatch(n -> ((Event.Noted) n.event()).text().startsWith("At the same time"));
        }
      }
    }
  }

  private static DemoVisit person(long seed) {
    return new DemoVisit(new Random(seed), Map.of(), Optional.empty(), Set.of(), 1);
  }

  private static void together(OpenCase mia, DemoVisit she, OpenCase tom, DemoVisit he) {
    Function<OpenCase, Boolean> open = c -> !(c.moment().step() instanceof Step.Finished);
    for (int turn = 0; turn < MOST_TURNS && open.apply(mia); turn++) {
      OpenCase who = turn % 2 == 0 ? mia : tom;
      if (open.apply(who)) {
        who.record((turn % 2 == 0 ? she : he).answers(who.moment()).toArray(Event[]::new));
      }
    }
  }
}
