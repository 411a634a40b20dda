package yett.command.diagnose.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.site.SiteFacts;
import yett.plan.Advice;
import yett.testing.Shipped;

/** A gate without batteries is offered nothing about them. */
class PlanViewsTest extends TechniciansCase {
  private static final Advice PLAN =
      new Advice(
          Advice.Kind.REPAIR,
          List.of(),
          List.of(new Advice.Job("correct-supply-setting", 1)),
          30,
          30,
          false);

  @ParameterizedTest
  @CsvSource({"agm, true", "none, false"})
  void afterwards_comes_only_what_this_gate_has(String batteries, boolean charging) {
    try (OpenCase open = typed.open()) {
      open.record(
          new Event.SiteAnswered("batteries", batteries),
          new Event.Complained(List.of("does-nothing")));
      Sitting sitting = typed.sitting(open);
      sitting.show(new PlanViews(Shipped.BASE).of(PLAN, open.moment()));
    }
    assertThat(typed.screen().contains("charging voltage")).isEqualTo(charging);
    assertThat(typed.screen()).contains("afterwards: ");
  }

  @Test
  void nothing_happened_to_batteries_that_are_not_there() {
    SiteFacts facts = new SiteFacts(Shipped.BASE);
    assertThat(facts.histories(java.util.Map.of("batteries", "none")))
        .noneMatch(h -> h.id().equals("batteries-changed"));
    assertThat(facts.histories(java.util.Map.of()))
        .hasSameSizeAs(Shipped.BASE.histories().values());
  }
}
