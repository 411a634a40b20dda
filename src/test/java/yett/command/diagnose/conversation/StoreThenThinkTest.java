package yett.command.diagnose.conversation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.casebook.NewEvent;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.TypedCase;
import yett.desk.GateMemory;
import yett.desk.OpenCase;
import yett.dispatch.Dispatcher;
import yett.interview.course.Expertise;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.record.CaseRecord;
import yett.record.DispatchPage;
import yett.record.HandOverSheet;
import yett.replay.SmallRuleBase;
import yett.testing.Shipped;

/** An answer is on the disk before anything is made of it, and whatever comes of that. */
class StoreThenThinkTest extends TechniciansCase {
  private static final Expertise FAILING =
      SmallRuleBase.with(
          """
          package yett.rules.mistaken
          import yett.rules.Fact.Given
          rule "has a mistake"
          when
            Given(outcome == "slap")
          then
            Integer.parseInt("a mistake in a rule");
          end
          """);

  @Test
  void an_answer_that_the_reasoning_fails_on_is_stored_told_and_the_case_goes_on() {
    Event nobody = new Event.Answered("danger-person", new Answer.Chosen("nobody"));
    Event slap = new Event.Answered("noise-kind", new Answer.Chosen("slap"));
    Event lit = new Event.Answered("display-lit", new Answer.Chosen("steady"));
    try (TypedCase other = new TypedCase(folder.resolve("other"), FAILING, Role.TECHNICIAN);
        OpenCase open = other.open()) {
      open.record(nobody, slap, lit);

      assertThat(other.stored()).containsExactly(nobody, slap, lit);
      assertThat(open.moment().apart()).hasSize(1);
      assertThat(open.moment().apart().get(0).entry().event()).isEqualTo(slap);
      assertThat(open.moment().state().answers()).hasSize(2);
      assertThat(open.moment().step()).isInstanceOf(Step.AskSite.class);
      assertThat(new CaseRecord(FAILING.base()).markdown(open.moment(), "1", "Fish dock"))
          .contains("Kept, but not used in the reasoning", "slap");
      other.type("", "save");
      assertThat(other.stored()).last().isEqualTo(new Event.SiteTaken());
    }
  }

  @Test
  void who_answers_is_told_at_once_what_the_reasoning_fails_on() {
    try (TypedCase other = new TypedCase(folder.resolve("other"), FAILING, Role.TECHNICIAN);
        OpenCase open = other.open()) {
      other.sitting(open).record(new Event.Answered("noise-kind", new Answer.Chosen("slap")));

      assertThat(other.screen()).contains("cannot reason with it", "a mistake in a rule");
    }
  }

  /** Every kind of event, with what only a mistake, another version or a hand can write. */
  static Stream<Event> oddities() {
    return Stream.of(
        new Event.Opened("", Role.CALLER, ""),
        new Event.SiteAnswered("leaf-mass", "heavy"),
        new Event.SiteAnswered("no-such-question", "1"),
        new Event.SiteAnswered("duty-class", "no-such-choice"),
        new Event.SiteTaken(),
        new Event.Said("\u0000"),
        new Event.Complained(List.of("no-such-complaint")),
        new Event.Complained(List.of()),
        new Event.Pressed(List.of("no-such-pressing")),
        new Event.Happened(List.of("no-such-history")),
        new Event.Answered("no-such-check", new Answer.Chosen("yes")),
        new Event.Answered("display-lit", new Answer.Chosen("no-such-outcome")),
        new Event.Answered("display-lit", new Answer.Read("4 V", 4)),
        new Event.Answered("chain-sag", new Answer.Chosen("no-such-outcome")),
        new Event.Answered("chain-sag", new Answer.Read("much", Double.NaN)),
        new Event.Answered("chain-sag", new Answer.Read("much", Double.POSITIVE_INFINITY)),
        new Event.Answered("chain-sag", new Answer.Read("much", -1e300)),
        new Event.Answered("danger-person", new Answer.Chosen("no-such-outcome")),
        new Event.SetUpEntered("no-such-set-up", "no-such-check"),
        new Event.SetUpLeft("no-such-set-up", null),
        new Event.Repaired("no-such-repair", true),
        new Event.Repaired("no-such-repair", false),
        new Event.Retested(false, Optional.of(true)),
        new Event.Reopened("no-such-proof"),
        new Event.Kept(77, -1),
        new Event.Noted(""),
        new Event.Retracted(77),
        new Event.Retracted(-1),
        new Event.Corrected(77, new Answer.Chosen("x")),
        new Event.Corrected(1, new Answer.Chosen("x")),
        new Event.MadeSafe("no-such-stop"),
        new Event.GaveUp(""),
        new Event.Closed(Ending.REPAIRED),
        new Event.Unread("sung", "{\"type\":\"sung\",\"words\":\"la\"}"),
        new Event.Unread("answered", "no JSON at all"),
        new Event.Unread("closed", "{\"type\":\"closed\"}"),
        new Event.Unread("complained", "{\"type\":\"complained\",\"complaints\":[null]}"),
        new Event.Unread("answered", "{\"type\":\"answered\",\"check\":null,\"answer\":null}"));
  }

  @ParameterizedTest
  @MethodSource("oddities")
  void whatever_stands_in_a_case_it_opens_goes_on_and_makes_its_papers(Event odd) {
    Event gull = new Event.Noted("gull on the beam");
    Expertise small = SmallRuleBase.expertise();
    try (TypedCase other = new TypedCase(folder.resolve("other"), small, Role.TECHNICIAN)) {
      other.type("0", "", "1", "0");
      int before = other.stored().size();
      write(other, odd);

      try (OpenCase open = other.open()) {
        open.record(gull);
        var moment = open.moment();
        assertThat(moment.entries()).extracting(e -> e.event()).endsWith(gull);
        assertThat(moment.step()).isNotNull();
        assertThat(new CaseRecord(small.base()).markdown(moment, "1", "Fish dock"))
            .contains("gull");
        assertThat(new HandOverSheet(small).markdown(moment, "1", "Fish dock")).contains("gull");
        assertThat(
                DispatchPage.markdown(
                    new Dispatcher(small, ZoneOffset.UTC).sheet(moment, "1", "Fish dock"),
                    Optional.empty()))
            .contains("# Dispatch");
      }
      assertThat(other.stored()).hasSize(before + 2);
    }
  }

  private static void write(TypedCase typed, Event event) {
    long known = typed.casebook().summary(typed.id()).lastSeq();
    String text = EventText.write(event);
    typed
        .casebook()
        .append(
            typed.id(),
            known,
            new NewEvent(Instant.parse("2026-11-25T10:00:00Z"), "technician", "odd", text));
  }

  @Test
  void what_cannot_be_read_is_carried_along_as_it_is_and_told() {
    write(typed, new Event.Unread("sung", "{\"type\":\"sung\",\"words\":\"la\"}"));
    typed.type("0");

    try (OpenCase open = typed.open()) {
      assertThat(open.moment().apart()).hasSize(1);
      assertThat(new CaseRecord(Shipped.BASE).markdown(open.moment(), "1", "Fish dock"))
          .contains("Kept, but not used in the reasoning", "sung");
    }
  }

  @Test
  void a_line_of_the_gates_page_is_stored_when_it_is_typed() {
    typed.type("0", "chain-span", "9 m", "leaf-mass", "900 kg", "save");

    assertThat(typed.stored())
        .contains(
            new Event.SiteAnswered("chain-span", "9 m"),
            new Event.SiteAnswered("leaf-mass", "900 kg"))
        .doesNotContain(new Event.SiteTaken());
    typed.type("save"); // comes back
    assertThat(List.of(typed.screen().split("The gate as installed")))
        .last()
        .asString()
        .contains("900 kg");
    assertThat(known()).containsEntry("chain-span", "9 m").containsEntry("leaf-mass", "900 kg");
  }

  private Map<String, String> known() {
    return new GateMemory(typed.casebook(), java.time.Clock.systemUTC())
        .known("Fish dock", Shipped.BASE);
  }

  @Test
  void back_takes_back_the_line_typed_last_and_not_the_page() {
    typed.type("0", "chain-span", "9 m", "leaf-mass", "900 kg", "back", "");

    try (OpenCase open = typed.open()) {
      assertThat(open.moment().state().told().site())
          .containsEntry("chain-span", "9 m")
          .containsEntry("leaf-mass", "350 kg"); // the usual, which Enter kept
    }
  }

  @Test
  void what_is_known_of_the_gate_is_in_the_case_once_its_page_was_shown() {
    typed.type(Map.of("chain-span", "8 m", "leaf-mass", "700 kg"), "0", "save");
    typed.type("");

    try (OpenCase open = typed.open()) {
      assertThat(open.moment().state().told().site())
          .containsEntry("chain-span", "8 m")
          .containsEntry("leaf-mass", "700 kg");
      assertThat(open.moment().state().told().siteTaken()).isTrue();
    }
  }

  @Test
  void a_gate_of_which_nothing_unusual_was_said_is_known_too() {
    typed.type("0", "");

    assertThat(typed.casebook().site("Fish dock")).isPresent();
  }

  @Test
  void a_closing_whose_line_was_never_written_is_told_when_the_case_is_opened_again() {
    write(typed, new Event.Closed(Ending.HANDED_OVER));
    assertThat(typed.casebook().cases(yett.casebook.CaseStatus.OPEN)).hasSize(1);

    try (OpenCase open = typed.open()) {
      open.nameIt();
    }

    assertThat(typed.casebook().cases(yett.casebook.CaseStatus.OPEN)).isEmpty();
  }
}
