package yett.command.diagnose.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.screen.FindingsViews;
import yett.console.Layout;
import yett.console.Renderer;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.inspection.Inspection;
import yett.interview.moment.Moment;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.wording.InspectionWords;

/** The end of an inspection in which a stop was found loose, so that nothing was run. */
class InspectionViewsTest {
  private static final Instant DAY = Instant.parse("2026-03-02T09:00:00Z");

  private static String findings() {
    Moment moment =
        moment(
            InspectionKind.COMMISSIONING,
            Role.TECHNICIAN,
            new Event.Answered("end-stop-look", new Answer.Chosen("missing")));
    return Renderer.render(new FindingsViews(Shipped.BASE).of(moment), new Layout(80, false, true));
  }

  private static Moment moment(InspectionKind kind, Role role, Event... found) {
    List<Event> events = new ArrayList<>();
    events.add(Event.Opened.with("Net loft", role, Shipped.BASE, Optional.of(kind), List.of()));
    events.add(new Event.SiteTaken());
    events.addAll(List.of(found));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, DAY, role, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.at(entries);
    }
  }

  private static String whatToDo(String check, Answer answer) {
    Moment moment =
        moment(InspectionKind.SERVICE, Role.TECHNICIAN, new Event.Answered(check, answer));
    return new InspectionWords(Shipped.BASE, moment, ZoneOffset.UTC)
        .whatToDo(Inspection.of(Shipped.BASE, moment).orElseThrow().result(check).orElseThrow())
        .orElse("");
  }

  @Test
  void what_an_electrician_owes_a_new_gate_goes_into_the_case_that_follows() {
    assertThat(findings().replaceAll("\\s+", " "))
        .contains("A new gate is not complete without them.");
    Moment fresh = moment(InspectionKind.COMMISSIONING, Role.TECHNICIAN);
    assertThat(AfterInspection.owed(Shipped.BASE, fresh).toString())
        .contains("for the customer: An electrician still has to measure")
        .contains("resistance of the earth electrode");
    assertThat(AfterInspection.owed(Shipped.BASE, moment(InspectionKind.SERVICE, Role.TECHNICIAN)))
        .isEmpty();
  }

  @Test
  void the_sheet_says_what_is_for_an_electrician_and_only_to_others() {
    assertThat(notInspected(Role.TECHNICIAN))
        .anyMatch(l -> l.startsWith("For an electrician: ") && l.contains("earth electrode"));
    assertThat(notInspected(Role.ELECTRICIAN))
        .noneMatch(l -> l.startsWith("For "))
        .anyMatch(l -> l.contains("earth electrode"));
  }

  private static List<String> notInspected(Role role) {
    Moment moment = moment(InspectionKind.COMMISSIONING, role);
    return new InspectionWords(Shipped.BASE, moment, ZoneOffset.UTC)
        .notInspected(Inspection.of(Shipped.BASE, moment).orElseThrow());
  }

  /** A stiff leaf has many causes; a chain that has grown has one. */
  @Test
  void work_is_named_only_where_one_cause_is_likelier_than_all_others() {
    assertThat(whatToDo("push-force", new Answer.Read("200 N", 200)))
        .startsWith("may come from: ")
        .contains(", or ")
        .doesNotContain("work:");
    assertThat(whatToDo("chain-length", new Answer.Read("315 mm", 315)))
        .isEqualTo(
            "points to: chain or sprocket worn; work: replace the chain, and the sprocket with it");
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
