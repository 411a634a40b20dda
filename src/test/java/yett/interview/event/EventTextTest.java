package yett.interview.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.json.JsonMapper;
import yett.knowledge.Role;

class EventTextTest {
  static List<Event> events() {
    return List.of(
        new Event.Opened("East gate", Role.TECHNICIAN, "abc"),
        new Event.Opened(
            "East", Role.CALLER, "abc", Optional.empty(), List.of(), List.of("Quay 1.2")),
        new Event.SiteAnswered("opening", "7' 6\""),
        new Event.SiteTaken(),
        new Event.Complained(List.of("slow", "noisy-chain")),
        new Event.Happened(List.of()),
        new Event.Answered("chain-sag", new Answer.Read("190 mm", 190)),
        new Event.Answered("chain-looks", new Answer.Chosen("hangs")),
        new Event.Answered("noise-kind", new Answer.Chosen("bang", List.of("scrape", "slap"))),
        new Event.Answered("chain-looks", new Answer.CannotTell()),
        new Event.Answered("chain-looks", new Answer.NotNow()),
        new Event.SetUpEntered("locked-off", "chain-length"),
        new Event.SetUpEntered("locked-off", "", List.of("mains-off-batteries-on")),
        new Event.SetUpLeft("locked-off", ""),
        new Event.Repaired("tighten-chain", true),
        new Event.Retested(false),
        new Event.Retested(false, Optional.of(false)),
        new Event.Reopened("limits-hold"),
        new Event.Kept(3, 7),
        new Event.Noted("Müller rang: \"es klappert\"\n"),
        new Event.Retracted(7),
        new Event.Corrected(7, new Answer.Chosen("ordinary")),
        new Event.MadeSafe("person-trapped"),
        new Event.MadeSafe("burning", Optional.of(List.of("locked-off", "isolated"))),
        new Event.DangersAgain(),
        new Event.AskedFor("chain-sag"),
        new Event.TakenUp(),
        new Event.Returned(),
        new Event.GaveUp("no part"),
        new Event.Closed(Ending.REPAIRED));
  }

  @ParameterizedTest
  @MethodSource("events")
  void an_event_is_read_back_as_it_was_written(Event event) {
    assertThat(EventText.read(EventText.write(event))).isEqualTo(event);
  }

  @ParameterizedTest
  @MethodSource("events")
  void no_key_stands_twice(Event event) {
    JsonMapper strict =
        JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    assertThat(strict.readTree(EventText.write(event)).isObject()).isTrue();
  }

  @Test
  void a_try_of_before_it_was_asked_how_the_gate_fails_is_read() {
    assertThat(EventText.read("{\"type\":\"retested\",\"cured\":false}"))
        .isEqualTo(new Event.Retested(false));
    assertThat(EventText.write(new Event.Retested(false))).doesNotContain("same");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "null",
        "{\"type\":\"noted\"}",
        "{\"type\":\"site-answered\",\"question\":\"batteries\",\"answer\":null}",
        "{\"type\":\"complained\",\"complaints\":null}",
        "{\"type\":\"complained\",\"complaints\":[null]}",
        "{\"type\":\"answered\",\"check\":\"display-lit\",\"answer\":null}",
        "{\"type\":\"answered\",\"check\":\"display-lit\",\"answer\":{\"kind\":\"outcome\"}}",
        "{\"type\":\"closed\"}"
      })
  void an_event_that_lacks_something_is_none(String text) {
    assertThatThrownBy(() -> EventText.read(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void an_unknown_event_is_told_in_words() {
    assertThatThrownBy(() -> EventText.read("{\"type\":\"sung\",\"words\":\"Ina Teal\"}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("another version")
        .message()
        .doesNotContain("Teal"); // people's words are in no message
  }
}
