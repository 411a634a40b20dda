package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.console.Layout;
import yett.console.Renderer;
import yett.interview.Answer;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** The end of an inspection in which a stop was found loose, so that nothing was run. */
class InspectionViewsTest {
  private static final Instant DAY = Instant.parse("2026-03-02T09:00:00Z");

  private static String findings() {
    List<Event> events =
        List.of(
            Event.Opened.with(
                "Net loft",
                Role.TECHNICIAN,
                Shipped.BASE,
                Optional.of(InspectionKind.COMMISSIONING),
                List.of()),
            new Event.SiteTaken(),
            new Event.Answered("end-stop-look", new Answer.Chosen("missing")));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, DAY, Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      Moment moment = interview.at(entries);
      return Renderer.render(
          new FindingsViews(Shipped.BASE).of(moment), new Layout(80, false, true));
    }
  }

  @Test
  void what_was_not_inspected_is_named_by_place_and_what_is_for_others_apart() {
    assertThat(findings())
        .contains("One run each way: ", "For an electrician:", "save, then resume")
        .doesNotContain("Do the wheels or rollers of the leaf turn true and without play?");
    assertThat(findings().lines().count()).isLessThan(48);
  }

  @Test
  void why_nothing_was_run_is_told() {
    assertThat(findings().replaceAll("\\s+", " "))
        .contains("The gate must not run as it was found");
  }
}
