package yett.command.diagnose.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.casebook.StoredEvent;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.desk.OpenCase;
import yett.interview.course.Expertise;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.moment.Moment;
import yett.interview.moment.SetApart;
import yett.interview.site.SiteFacts;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;

/** A case goes on without what cannot be read or cannot be meant in it, and says so. */
class UnusableEventsTest {
  private static final Instant AT = Instant.parse("2026-11-25T09:30:00Z");
  private static final Event OPENED =
      new Event.Opened("Fish dock", Role.TECHNICIAN, SmallRuleBase.base().fingerprint());

  private static final List<StoredEvent> EVENTS =
      List.of(
          new StoredEvent(1, AT, "technician", "opened", EventText.write(OPENED)),
          new StoredEvent(
              2,
              AT,
              "technician",
              "site-answered",
              "{\"type\":\"site-answered\",\"question\":\"opening\",\"answer\":\"wide\"}"),
          new StoredEvent(3, AT, "\u001b[2J", "noted", "{\"type\":\"noted\",\"text\":\"x\"}"),
          new StoredEvent(4, AT, "technician", "sung", "{\"type\":\"sung\"}"),
          new StoredEvent(5, AT, "technician", "site-taken", "{\"type\":\"site-taken\"}"));

  @Test
  void each_is_told_with_its_number_and_the_case_goes_on() {
    assertThat(new UnusableEvents(SmallRuleBase.base()).of(OpenCase.entries(EVENTS)))
        .containsExactly(
            "event 3 is by an unknown role",
            "event 4 is nothing that this version of the program knows",
            "event 2: opening has no such answer");

    Expertise expertise = SmallRuleBase.expertise();
    try (var interview = expertise.newInterview()) {
      var moment = interview.asFarAsPossible(OpenCase.entries(EVENTS), Role.TECHNICIAN);
      assertThat(moment.state().told().siteTaken()).isTrue();
      assertThat(moment.apart()).extracting(a -> a.entry().number()).containsExactly(3L, 4L);
      assertThat(new SiteFacts(expertise.base()).answers(moment.state().told().site()))
          .containsEntry("opening", expertise.base().siteQuestions().get("opening").usual());
    }
  }

  @Test
  void nothing_is_told_of_a_case_as_people_enter_it() {
    assertThat(new UnusableEvents(SmallRuleBase.base()).blocks(moment(EVENTS.subList(0, 1))))
        .isEmpty();
  }

  @Test
  void what_the_reasoning_fails_on_is_told_with_it_and_nothing_twice() {
    Moment odd = moment(EVENTS);
    List<SetApart> apart = new ArrayList<>(odd.apart());
    apart.add(new SetApart(odd.entries().get(4), "a mistake in a rule"));
    Moment failing =
        new Moment(odd.entries(), apart, odd.state(), odd.judgement(), odd.believed(), odd.step());

    var screen = new ByteArrayOutputStream();
    var out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    new PlainConsole(InputStream.nullInputStream(), out, out, new Layout(200, false, true), false)
        .show(new UnusableEvents(SmallRuleBase.base()).blocks(failing));

    assertThat(screen.toString(StandardCharsets.UTF_8))
        .containsOnlyOnce("event 3 is by an unknown role")
        .containsOnlyOnce("event 4 is")
        .containsOnlyOnce("cannot reason with it")
        .contains("Entry 5", "a mistake in a rule")
        .doesNotContain("Entry 3", "Entry 4");
  }

  private static Moment moment(List<StoredEvent> events) {
    try (var interview = SmallRuleBase.expertise().newInterview()) {
      return interview.asFarAsPossible(OpenCase.entries(events), Role.TECHNICIAN);
    }
  }
}
