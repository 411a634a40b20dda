package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.state.CaseState;

/** A case that a van took along for two days, while the desk went on with its call. */
class CarriedByVanTest {
  private static final Instant SATURDAY = Instant.parse("2026-11-28T09:30:00Z");

  @TempDir private Path folder;
  private int files;

  @BeforeEach
  void takeAlong() {
    at(
        "desk",
        "it does not open\n0\nIna Teal, quay 4, 555 0107\n1\n0\n0\nx\n",
        "call",
        "Fish dock");
    carry("desk", "van");
  }

  private Pipe.Result at(String place, String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", folder.resolve(place).toString()), stdin, words);
  }

  /** Exports all open cases in one place and imports them in another. */
  private Pipe.Result carry(String from, String to) {
    String file = folder.resolve(++files + ".jsonl").toString();
    assertThat(at(from, "", "cases", "export", "--open", "--to", file).exitCode()).isZero();
    return at(to, "", "cases", "import", file);
  }

  /** Events of a technician at the gate, without the dialogue. */
  private long atGate(String place, Instant when, Event... events) {
    try (Casebook casebook = open(place)) {
      CaseId id = casebook.cases().get(0).id();
      long last = casebook.events(id).size();
      NewEvent[] fresh =
          List.of(events).stream()
              .map(e -> new NewEvent(when, "technician", OpenCase.type(e), EventText.write(e)))
              .toArray(NewEvent[]::new);
      casebook.append(id, last, fresh);
      return last + 1;
    }
  }

  private Casebook open(String place) {
    return Casebook.open(folder.resolve(place).resolve("casebook.db"));
  }

  private List<Entry> entries(String place) {
    try (Casebook casebook = open(place)) {
      return OpenCase.entries(casebook.events(casebook.cases().get(0).id()));
    }
  }

  private static Event lit(String outcome) {
    return new Event.Answered("display-lit", new Answer.Chosen(outcome));
  }

  private String litAtDesk() {
    return CaseState.of(entries("desk")).latest("display-lit").orElseThrow().answer().toString();
  }

  @Test
  void the_work_of_the_van_follows_what_the_desk_noted() {
    at("desk", "", "calls", "note", "1", "Ina rang: is anybody coming?");
    at("desk", "", "calls", "sent", "1", "Tom, 14:30");
    long answer = atGate("van", SATURDAY, lit("dark"));
    atGate(
        "van", SATURDAY.plusSeconds(60), new Event.Corrected(answer, new Answer.Chosen("steady")));

    Pipe.Result back = carry("van", "desk");

    assertThat(back.exitCode()).as(back.stdout() + back.stderr()).isZero();
    assertThat(back.stdout()).contains("2 entries of the file were added", "1 continued");
    assertThat(litAtDesk())
        .as("the correction names the answer by its number here")
        .contains("steady");
    assertThat(at("desk", "", "calls").stdout()).contains("Tom, 14:30");
    assertThat(at("desk", "", "cases", "verify").exitCode()).isZero();

    int before = entries("desk").size();
    assertThat(carry("van", "desk").stdout()).contains("0 continued");
    assertThat(entries("desk")).hasSize(before);

    atGate("van", SATURDAY.plusSeconds(120), lit("flickers"));
    assertThat(carry("van", "desk").stdout()).contains("1 entry of the file was added");
    assertThat(litAtDesk()).contains("flickers");

    assertThat(carry("desk", "van").exitCode()).isZero();
    assertThat(entries("van")).hasSameSizeAs(entries("desk"));
  }

  @Test
  void where_both_worked_at_the_gate_somebody_has_to_settle_it() {
    atGate("desk", SATURDAY, lit("steady"));
    atGate("van", SATURDAY.plusSeconds(60), lit("dark"));
    List<Entry> before = entries("desk");

    Pipe.Result back = carry("van", "desk");

    assertThat(back.exitCode()).isEqualTo(65);
    assertThat(back.stdout()).contains("Conflict: case 2026-0001");
    assertThat(entries("desk")).isEqualTo(before);
  }
}
