package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.casebook.CarriedCase;
import yett.casebook.CarriedSite;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.NewEvent;
import yett.casebook.Person;
import yett.casebook.SiteRecord;
import yett.casebook.Summary;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;

/** What an import leaves out. */
class ImportCheckTest {
  private static final Instant AT = Instant.parse("2026-11-25T09:30:00Z");

  private static NewEvent opened() {
    Event opened =
        new Event.Opened("Fish dock", Role.TECHNICIAN, SmallRuleBase.base().fingerprint());
    return new NewEvent(AT, "technician", "opened", EventText.write(opened));
  }

  private static CarriedCase carried(CaseStatus state, String title, NewEvent... more) {
    List<NewEvent> events = new ArrayList<>(List.of(opened()));
    events.addAll(List.of(more));
    return new CarriedCase(
        "u",
        new CaseId(2026, 7),
        "Fish dock",
        AT,
        new Summary(state, title, "chain-slack"),
        events,
        List.of());
  }

  private static String against(CarriedCase carried) {
    return new ImportCheck(SmallRuleBase.base()).against(carried).orElse("");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "technician | noted | {'type':'noted','text':'gull on the beam'} | ''",
        "caller | said-forgotten | {'type':'said','words':''} | ''",
        "\u001b[2Jcaller | noted | {'type':'noted','text':'x'} | event 2 is by an unknown role",
        "Caller | noted | {'type':'noted','text':'x'} | event 2 is by an unknown role",
        "caller | sung | {'type':'sung'} | event 2 is nothing that this version of the program"
            + " knows",
        "caller | noted | null | event 2 is nothing that this version of the program knows",
        "caller | noted | {'type':'noted'} | event 2 is nothing that this version of the program"
            + " knows",
        "caller | \u001b[2J | {'type':'noted','text':'x'} | event 2 is not of the kind that it"
            + " says",
        "technician | answered | {'type':'answered','check':'chain-sag','answer':{'kind':'reading',"
            + "'typed':'1e999 mm','value':1e999}} | event 2: it is not a reading that chain-sag"
            + " can have",
        "technician | answered | {'type':'answered','check':'chain-sag','answer':{'kind':'reading',"
            + "'typed':'190 mm','value':'NaN'}} | event 2: it is not a reading that chain-sag"
            + " can have",
        "technician | site-answered | {'type':'site-answered','question':'opening','answer':'wide'}"
            + "| event 2: opening has no such answer",
        "technician | closed | {'type':'closed','ending':'HANDED_OVER'}"
            + "| it says that it is open, and was closed",
      })
  void what_nobody_can_have_entered_is_left_out_and_not_quoted(
      String by, String type, String body, String why) {
    NewEvent event = new NewEvent(AT, by, type, body.replace('\'', '"'));

    assertThat(against(carried(CaseStatus.OPEN, "begun", event))).isEqualTo(why);
  }

  @Test
  void what_stands_in_the_list_is_held_to_what_this_program_writes() {
    assertThat(against(carried(CaseStatus.CLOSED, "begun"))).contains("closed, and was not");
    assertThat(against(carried(CaseStatus.OPEN, "\u009b2J"))).contains("title");
    assertThat(against(carried(CaseStatus.OPEN, "x".repeat(301)))).contains("title");
    CarriedCase plain = carried(CaseStatus.OPEN, "begun");
    assertThat(
            against(
                new CarriedCase(
                    plain.uid(),
                    plain.id(),
                    plain.siteId(),
                    AT,
                    plain.summary(),
                    plain.events(),
                    List.of(new Person(Person.Part.CALLER, "\u001b[2J", "")))))
        .contains("people");
    NewEvent[] many = new NewEvent[10_000];
    java.util.Arrays.fill(
        many, new NewEvent(AT, "caller", "noted", "{\"type\":\"noted\",\"text\":\"x\"}"));
    assertThat(against(carried(CaseStatus.OPEN, "begun", many))).contains("more events");
  }

  @ParameterizedTest
  @CsvSource({
    "Fish dock, opening, 9 m, ''",
    "Fish dock, moon, full, ''",
    "Fish dock, opening, wide, opening has no such answer",
    "Fish \u001b[2Jdock, opening, 9 m, it has no name that anybody could have typed",
  })
  void what_is_known_of_a_gate_is_too(String name, String question, String answer, String why) {
    String body = "{\"" + question + "\":\"" + answer + "\"}";
    var site = new CarriedSite(name, List.of(new SiteRecord(name, name, body, AT)));

    assertThat(new ImportCheck(SmallRuleBase.base()).against(site).orElse("")).isEqualTo(why);
  }
}
