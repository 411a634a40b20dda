package yett.record.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.quantity.Units;
import yett.record.CaseRecord;
import yett.record.handout.HandOut.Part;
import yett.testing.HarrowQuay;
import yett.testing.Shipped;

/** A paper for somebody who works in US customary units. */
class OtherUnitsTest {
  private static final RuleBase BASE = Shipped.BASE.in(Units.US);
  private static final Expertise EXPERTISE =
      new Expertise(BASE, Shipped.QUICK.rules(), Shipped.QUICK.model(), Shipped.QUICK.planner());

  /** A number with a unit that nobody typed; what was typed keeps together with its unit. */
  private static final String SI = "(?s).*[0-9] (mm|m|kg|m/s|degC)[^\\w/].*";

  private static Moment chandler() {
    try (Interview interview = EXPERTISE.newInterview()) {
      return interview.at(HandOutTest.CHANDLER.entries());
    }
  }

  @Test
  void what_the_cards_say_is_in_the_units_of_the_person() {
    String html =
        new HandOut(EXPERTISE, HandOutTest.FIRM, Optional.empty(), ZoneOffset.UTC)
            .html(
                chandler(),
                "2026-0001",
                HarrowQuay.CHANDLER,
                Optional.empty(),
                EnumSet.of(Part.CUSTOMER, Part.TECHNICIAN));
    String body =
        html.substring(html.indexOf("<body>"))
            .replaceAll("<[^>]*>", "\n")
            .replace('\u00a0', ' ')
            .replace("6 m (19.7 ft)", "");
    assertThat(body).contains("below 1.2 in", "opening 19.7 ft").doesNotMatch(SI);
  }

  @Test
  void so_is_the_record_but_for_what_was_typed() {
    String record = new CaseRecord(BASE).markdown(chandler(), "2026-0001", HarrowQuay.CHANDLER);
    assertThat(record).contains("Answer: 7.48 in (typed: 190 mm)");
    assertThat(record.replaceAll("\\(typed: [^)]*\\)", "").replaceAll("-? ?6 m \\(19.7 ft\\)", ""))
        .doesNotMatch(SI);
  }

  @Test
  void cards_of_all_kinds_are_put_into_other_units_and_back_in_si_nothing_is_changed() {
    assertThat(BASE.checks().get("marker-distance").outcomes().get(0).text())
        .isEqualTo("below 1.2 in");
    assertThat(Shipped.BASE.in(Units.SI).checks()).isEqualTo(Shipped.BASE.checks());
    assertThat(Shipped.BASE.in(Units.SI).repairs()).isEqualTo(Shipped.BASE.repairs());
    assertThat(Shipped.BASE.in(Units.SI).cautions()).isEqualTo(Shipped.BASE.cautions());
    assertThat(Shipped.BASE.in(Units.SI).stops()).isEqualTo(Shipped.BASE.stops());
    assertThat(Shipped.BASE.in(Units.SI).setUps()).isEqualTo(Shipped.BASE.setUps());
    assertThat(BASE.proofs().toString()).doesNotContainPattern("[0-9] mm\\b");
  }
}
