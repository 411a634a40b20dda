package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@ParameterizedClass
@EnumSource(Store.class)
class CasebookTest {
  private static final Instant AT = Writer.AT;

  @TempDir Path directory;
  @Parameter Store store;
  private String address;
  private Casebook casebook;

  @BeforeEach
  void begin() {
    address = store.newCasebook(directory);
    casebook = Store.open(address);
  }

  @AfterEach
  void close() {
    casebook.close();
  }

  @Test
  void cases_are_numbered_within_their_year() {
    assertThat(casebook.newCase("q1", Instant.parse("2026-12-31T23:59:59Z")))
        .hasToString("2026-0001");
    assertThat(casebook.newCase("q1", Instant.parse("2027-01-01T00:00:00Z")))
        .hasToString("2027-0001");
    assertThat(casebook.newCase("q1", Instant.parse("2026-06-01T00:00:00Z")))
        .hasToString("2026-0002");
  }

  @Test
  void events_come_back_as_they_were_given() {
    CaseId id = casebook.newCase("q1", AT);

    var returned =
        casebook.append(
            id,
            0,
            new NewEvent(AT, "A. Moor", "answered", "{}"),
            new NewEvent(AT.plusNanos(1), "A. Moor", "noted", "{ }"));
    casebook.append(id, 2, new NewEvent(AT.minusSeconds(9), "B. Quill", "answered", "[]"));

    assertThat(casebook.events(id))
        .containsExactly(
            new StoredEvent(1, AT, "A. Moor", "answered", "{}"),
            new StoredEvent(2, AT.plusNanos(1), "A. Moor", "noted", "{ }"),
            new StoredEvent(3, AT.minusSeconds(9), "B. Quill", "answered", "[]"))
        .startsWith(returned.toArray(StoredEvent[]::new));
    assertThat(casebook.eventsAfter(id, 2)).extracting(StoredEvent::seq).containsExactly(3L);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"note\":\"Grüße, 鎖が緩い, سلسلة, 🔧👩🏽‍🔧, e\u0301\"}",
        "{\"note\":\"line\\nnext\\u0000\\u001b[2J\"}",
        "raw \u0001\u0007\u001b\u007f\u0085\u2028\r\n\t, apostrophes '' and \"?; drop table case_event; --",
        "",
      })
  void any_text_survives_in_a_body(String body) {
    CaseId id = casebook.newCase("q1", AT);
    casebook.append(id, 0, new NewEvent(AT, "Zoë", "noted", body));

    close();
    casebook = Store.open(address);

    assertThat(casebook.events(id)).containsExactly(new StoredEvent(1, AT, "Zoë", "noted", body));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\0b", "\ud83d alone", "alone \udd27"})
  void text_that_no_database_would_keep_whole_is_refused(String body) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NewEvent(AT, "A. Moor", "noted", body))
        .withMessageContaining("body holds U+0000 or half a surrogate pair");
  }

  @Test
  void a_body_of_a_megabyte_is_kept_whole() {
    CaseId id = casebook.newCase("q1", AT);
    String body = "\"" + "ß".repeat(1 << 20) + "\"";

    casebook.append(id, 0, new NewEvent(AT, "A. Moor", "noted", body));

    assertThat(casebook.events(id).get(0).body()).isEqualTo(body);
  }

  @Test
  void ten_thousand_events_come_back_in_order() {
    CaseId id = casebook.newCase("q1", AT);
    for (int batch = 0; batch < 100; batch++) {
      var events =
          IntStream.range(batch * 100, batch * 100 + 100).mapToObj(n -> Writer.event("A. Moor", n));
      casebook.append(id, batch * 100L, events.toArray(NewEvent[]::new));
    }

    assertThat(casebook.events(id))
        .extracting(StoredEvent::body)
        .containsExactlyElementsOf(
            IntStream.range(0, 10_000).mapToObj(n -> "{\"n\":" + n + "}").toList());
  }

  @Test
  void many_cases_are_read_at_once_as_one_by_one() {
    CaseId one = casebook.newCase("fish-dock", Writer.AT);
    CaseId two = casebook.newCase("ferry", Writer.AT);
    CaseId none = casebook.newCase("tank-farm", Writer.AT);
    casebook.append(two, 0, Writer.event("caller", 1), Writer.event("caller", 2));
    casebook.append(one, 0, Writer.event("technician", 3));

    assertThat(casebook.events(List.of(two, none, one)))
        .isEqualTo(Map.of(one, casebook.events(one), two, casebook.events(two), none, List.of()));
    assertThat(casebook.events(List.of())).isEmpty();
  }

  @Test
  void the_summary_is_changed_after_the_events_that_change_it() {
    CaseId first = casebook.newCase("q1", AT);
    CaseId second = casebook.newCase("q2", AT.plusSeconds(60));

    casebook.append(first, 0, new NewEvent(AT.plusSeconds(90), "A. Moor", "closed", "{}"));
    casebook.summarise(first, 1, new Summary(CaseStatus.CLOSED, "Chain slack; tensioned"));

    var line =
        new CaseSummary(
            first,
            "q1",
            AT,
            AT.plusSeconds(90),
            1,
            new Summary(CaseStatus.CLOSED, "Chain slack; tensioned"));
    assertThat(casebook.summary(first)).isEqualTo(line);
    assertThat(casebook.cases()).extracting(CaseSummary::id).containsExactly(first, second);
    assertThat(casebook.cases(CaseStatus.CLOSED)).containsExactly(line);
    assertThat(casebook.cases(CaseStatus.OPEN)).extracting(CaseSummary::id).containsExactly(second);
  }

  @Test
  void a_site_keeps_its_earlier_revisions() {
    var taught = new SiteRecord("q3", "Slipway gate", "{\"span\":\"9 m\"}", AT);
    var corrected =
        new SiteRecord("q3", "Slipway gate, north", "{\"span\":\"11 m\"}", AT.plusSeconds(5));
    var other = new SiteRecord("q1", "Chandlery", "{}", AT);
    casebook.saveSite(taught);
    casebook.saveSite(other);
    casebook.saveSite(corrected);

    assertThat(casebook.site("q3")).contains(corrected);
    assertThat(casebook.siteHistory("q3")).containsExactly(corrected, taught);
    assertThat(casebook.sites()).containsExactly(other, corrected);
    assertThat(casebook.site("q9")).isEmpty();
  }

  @Test
  void an_unknown_case_is_answered_with_the_nearest() {
    casebook.newCase("q1", AT);
    casebook.newCase("q1", AT);

    assertThatThrownBy(() -> casebook.events(new CaseId(2026, 9)))
        .isInstanceOf(CaseNotFound.class)
        .hasMessage("There is no case \"2026-0009\". The nearest: 2026-0002, 2026-0001.");
    assertThatThrownBy(() -> casebook.append(new CaseId(2026, 9), 0, Writer.event("A. Moor", 1)))
        .isInstanceOf(CaseNotFound.class);
  }

  @Test
  void an_append_after_events_that_are_gone_says_so() {
    CaseId id = casebook.newCase("q1", AT);
    casebook.append(id, 0, Writer.event("A. Moor", 1));

    assertThatThrownBy(() -> casebook.append(id, 5, Writer.event("A. Moor", 6)))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("ends at event 1, but event 5 was there before");
  }

  /** The restored copy is from before the case was begun. */
  @Test
  void an_append_to_a_case_that_is_gone_says_so() {
    casebook.newCase("q1", AT);

    assertThatThrownBy(() -> casebook.append(new CaseId(2026, 9), 5, Writer.event("A. Moor", 6)))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("2026-0009 is no longer in the casebook")
        .hasMessageContainingAll("older copy", "What was typed last is not stored");
  }
}
