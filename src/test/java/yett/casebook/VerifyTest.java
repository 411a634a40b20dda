package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What another program did to a casebook is found, and put right as far as it can be. */
@ParameterizedClass
@EnumSource(Store.class)
class VerifyTest {
  private static final NewEvent LOST = new NewEvent(Writer.AT, "caller", "noted", "\"gone\"");

  @TempDir Path directory;
  @Parameter Store store;
  private String address;
  private Casebook casebook;
  private CaseId id;

  @BeforeEach
  void begin() {
    address = store.newCasebook(directory);
    casebook = Store.open(address);
    id = casebook.newCase("Fish dock", Writer.AT);
    for (int n = 0; n < 5; n++) {
      casebook.append(id, n, Writer.event("technician", n));
    }
    CaseId other = casebook.newCase("Ferry", Writer.AT);
    casebook.append(other, 0, Writer.event("caller", 1), Writer.event("caller", 2));
  }

  @AfterEach
  void close() {
    casebook.close();
  }

  private List<String> found() {
    return casebook.verify().stream()
        .map(f -> f.caseId() + " " + f.event() + " " + f.kind() + ": " + f.words())
        .toList();
  }

  @Test
  void what_this_program_wrote_is_as_it_was_written() {
    casebook.forgetWords(id, Map.of(2L, "{}", 5L, "{}"));
    casebook.append(id, 5, Writer.event("technician", 6));
    Casebook elsewhere = Casebook.open(directory.resolve("elsewhere").resolve("casebook.db"));
    try (elsewhere) {
      elsewhere.take(casebook.carry(id, false));
      assertThat(elsewhere.verify()).isEmpty();
    }

    assertThat(found()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "update case_event set body = '{}' where case_id = '2026-0001' and seq = 3"
            + "|2026-0001 3 CHANGE: is not what was written, or not in its place",
        "update case_event set at = '2026-11-25T09:31:00.000000000Z' where case_id = '2026-0001'"
            + " and seq = 5|2026-0001 5 CHANGE: is not what was written, or not in its place",
        "update case_event set written_by = 'electrician' where case_id = '2026-0001' and seq = 1"
            + "|2026-0001 1 CHANGE: is not what was written, or not in its place",
        "delete from case_event where case_id = '2026-0001' and seq = 2"
            + "|2026-0001 2 DAMAGE: is gone",
        "delete from case_event where case_id = '2026-0001' and seq > 3"
            + "|2026-0001 4 DAMAGE: and those up to 5 are gone",
        "delete from case_event where case_id = '2026-0001'"
            + "|2026-0001 1 DAMAGE: and those up to 5 are gone",
        "insert into case_event (case_id, seq, at, written_by, type, body) values"
            + " ('2026-0002', 3, '2026-11-25T09:31:00.000000000Z', 'caller', 'noted', '{}')"
            + "|2026-0002 3 CHANGE: was written by another program",
        "update case_file set last_seq = 4 where id = '2026-0001'"
            + "|2026-0001 0 CHANGE: has more events than were written: 5",
        "update case_file set state = 'SHUT' where id = '2026-0002'"
            + "|2026-0002 0 DAMAGE: cannot be read: its state is \"SHUT\"",
        "update case_event set at = 'noon' where case_id = '2026-0002' and seq = 1"
            + "|2026-0002 1 DAMAGE: cannot be read: it happened at \"noon\"",
      })
  void what_was_changed_or_taken_away_is_found_in_its_place_and_repaired(String sql, String found)
      throws SQLException {
    Store.execute(address, sql);

    assertThat(found()).contains(found).allMatch(f -> f.startsWith(found.substring(0, 9)));

    String damaged = found.substring(0, 9);
    String stood = casebook.asItStands(damaged);
    Repaired repaired = casebook.repair(damaged, LOST, Writer.AT);
    assertThat(repaired.done()).isNotEmpty();
    assertThat(casebook.verify()).noneMatch(Finding::isDefect);
    CaseSummary line = casebook.summary(repaired.id());
    assertThat(casebook.events(repaired.id())).hasSize((int) line.lastSeq()).isNotEmpty();
    casebook.append(repaired.id(), line.lastSeq(), Writer.event("technician", 9));
    assertThat(casebook.verify()).noneMatch(Finding::isDefect);
    assertThat(stood).contains("case-as-it-stands", damaged);
  }

  @Test
  void the_last_event_cannot_be_taken_away_with_the_count_of_them() throws SQLException {
    Store.execute(
        address,
        "delete from case_event where case_id = '2026-0001' and seq = 5",
        "update case_file set last_seq = 4 where id = '2026-0001'");

    assertThat(found()).containsExactly("2026-0001 4 CHANGE: is not the one that was written last");
  }

  @Test
  void forgetting_words_hides_no_change_that_was_made_before() throws SQLException {
    Store.execute(
        address, "update case_event set body = '[]' where case_id = '2026-0001' and seq in (2, 4)");

    casebook.forgetWords(id, Map.of(1L, "{}", 3L, "{}"));

    assertThat(casebook.verify()).extracting(Finding::event).containsExactly(2L, 4L);
  }

  @Test
  void a_clock_that_ran_backwards_is_told_and_changes_no_order() {
    casebook.append(id, 5, new NewEvent(Writer.AT.minusSeconds(3600), "technician", "noted", "{}"));

    assertThat(casebook.verify())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.kind()).isEqualTo(Finding.Kind.CLOCK);
              assertThat(f.event()).isEqualTo(6);
              assertThat(f.isDefect()).isFalse();
            });
    assertThat(casebook.cases()).extracting(CaseSummary::id).startsWith(id); // written to last
    assertThat(casebook.latest()).contains(Writer.AT);
  }

  @Test
  void a_number_beyond_all_bounds_stops_nobody_and_is_put_right() throws SQLException {
    CaseId big = new CaseId(2026, 999_999_999);
    Store.execute(
        address,
        "update case_number set last_number = 999999999",
        line("2026-999999999"),
        line("2026-1000000000"),
        "insert into case_event (case_id, seq, at, written_by, type, body, seal) select"
            + " '2026-1000000000', seq, at, written_by, type, body, seal from case_event"
            + " where case_id = '2026-0001'");

    assertThat(casebook.newCase("Ferry", Writer.AT)).hasToString("2026-0003");
    assertThat(casebook.cases()).extracting(CaseSummary::id).contains(id, big);
    assertThat(casebook.unreadable())
        .containsExactly(new Unreadable("2026-1000000000", "its number is \"2026-1000000000\""));
    assertThat(casebook.find("3")).hasToString("2026-0003");

    Repaired repaired = casebook.repair("2026-1000000000", LOST, Writer.AT);

    assertThat(repaired.id()).hasToString("2026-0004");
    assertThat(casebook.events(repaired.id())).isEqualTo(casebook.events(id));
    assertThat(casebook.unreadable()).isEmpty();
    assertThat(casebook.newCase("Ferry", Writer.AT)).hasToString("2026-0005");
  }

  private static String line(String id) {
    return "insert into case_file (id, uid, site_id, opened_at, last_event_at, last_seq, state,"
        + " title, cause, seal) select '"
        + id
        + "', 'u"
        + id
        + "', site_id, opened_at, last_event_at, last_seq, state, title, cause, seal from"
        + " case_file where id = '2026-0001'";
  }

  @Test
  void events_whose_case_is_gone_become_a_case_again() throws SQLException {
    org.junit.jupiter.api.Assumptions.assumeTrue(
        store == Store.EMBEDDED, "a server does not allow it");
    Store.execute(address, "delete from case_file where id = '2026-0001'");

    assertThat(found()).anyMatch(f -> f.startsWith("2026-0001 0 DAMAGE: cannot be read"));
    assertThat(casebook.repair("2026-0001", LOST, Writer.AT).id()).isEqualTo(id);
    assertThat(casebook.events(id)).hasSize(5);
  }

  @ParameterizedTest
  @CsvSource({"2026-0001", "2026-1000000000"})
  void what_is_forgotten_is_not_kept_with_how_the_case_stood_before_its_repair(String number)
      throws SQLException {
    if (!number.equals("2026-0001")) {
      Store.execute(
          address,
          line(number),
          "insert into case_event (case_id, seq, at, written_by, type, body, seal) select '"
              + number
              + "', seq, at, written_by, type, body, seal from case_event"
              + " where case_id = '2026-0001'");
    }
    Store.execute(
        address, "update case_event set body = '\"I am Tom\"' where case_id = '" + number + "'");
    CaseId now = casebook.repair(number, LOST, Writer.AT).id();
    assertThat(Store.count(address, "set_apart where content like '%Tom%'")).isEqualTo(1);

    casebook.forgetWords(now, Map.of(1L, "{}", 2L, "{}", 3L, "{}", 4L, "{}", 5L, "{}"));

    assertThat(Store.count(address, "set_apart")).isZero();
  }

  private void takeAway(String id) throws SQLException {
    Store.execute(
        address,
        "delete from case_person where case_id = '" + id + "'",
        "delete from case_event where case_id = '" + id + "'",
        "delete from case_file where id = '" + id + "'");
  }

  @Test
  void a_case_that_was_taken_away_whole_is_told_and_a_note_stands_for_it() throws SQLException {
    casebook.rename("Fish dock", "Fish market", Writer.AT);
    takeAway("2026-0001");

    assertThat(found())
        .containsExactly(
            "2026-0001 0 DAMAGE: is gone whole: it was begun on 2026-11-25 for the gate"
                + " \"Fish market\"");
    assertThat(casebook.asItStands("2026-0001")).contains("case-as-it-stands", "2026-0001");

    assertThat(casebook.repair("2026-0001", LOST, Writer.AT))
        .isEqualTo(
            new Repaired(
                id, List.of("it is gone with all its entries; a note stands in their place")));
    assertThat(casebook.verify()).noneMatch(Finding::isDefect);
    assertThat(casebook.summary(id).siteId()).isEqualTo("Fish market");
    assertThat(casebook.events(id))
        .extracting(StoredEvent::type, StoredEvent::body)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(LOST.type(), LOST.body()));
    casebook.append(id, 1, Writer.event("technician", 9));
    assertThat(casebook.verify()).noneMatch(Finding::isDefect);
  }

  @Test
  void the_number_of_a_case_that_was_taken_away_is_given_to_no_other() throws SQLException {
    takeAway("2026-0002");
    Store.execute(address, "update case_number set last_number = 1");
    CarriedCase other;
    try (var elsewhere = Casebook.open(directory.resolve("elsewhere").resolve("casebook.db"))) {
      elsewhere.newCase("Gaol", Writer.AT);
      other = elsewhere.carry(elsewhere.newCase("Gaol", Writer.AT), false);
    }
    assertThat(other.id()).hasToString("2026-0002");

    assertThat(casebook.newCase("Ice house", Writer.AT)).hasToString("2026-0003");
    assertThat(casebook.take(other).id()).hasToString("2026-0004");
  }

  @Test
  void a_case_that_was_taken_away_comes_back_from_a_file_as_it_was() throws SQLException {
    var kept = casebook.carry(id, true);
    takeAway("2026-0001");

    assertThat(casebook.take(kept).id()).isEqualTo(id);

    assertThat(found()).isEmpty();
    assertThat(casebook.events(id)).hasSize(5);
  }

  @Test
  void a_case_that_comes_back_after_its_repair_does_not_meet_its_own_note() throws SQLException {
    var kept = casebook.carry(id, true);
    takeAway("2026-0001");
    casebook.repair("2026-0001", LOST, Writer.AT);

    assertThat(casebook.take(kept))
        .satisfies(t -> assertThat(t.outcome()).isEqualTo(ImportedCase.Outcome.NEW))
        .satisfies(t -> assertThat(t.id()).hasToString("2026-0003"));
  }

  @Test
  void a_case_that_was_put_in_is_told() throws SQLException {
    Store.execute(address, line("2026-0009"));

    assertThat(found()).contains("2026-0009 0 CHANGE: was put in by another program");
    casebook.repair("2026-0009", LOST, Writer.AT);
    assertThat(casebook.verify()).noneMatch(Finding::isDefect);
  }

  @Test
  void a_gate_is_not_lost_with_the_time_at_which_it_was_described() throws SQLException {
    casebook.saveSite(new SiteRecord("Ferry", "Ferry", "{}", Writer.AT));
    Store.execute(address, "update site_revision set saved_at = 'noon'");

    assertThat(casebook.sites()).extracting(SiteRecord::name).containsExactly("Ferry");
  }

  @Test
  void one_case_that_cannot_be_read_keeps_none_of_the_others_from_being_found()
      throws SQLException {
    Store.execute(
        address, "update case_event set at = 'noon' where case_id = '2026-0001' and seq = 2");

    assertThatThrownBy(() -> casebook.events(id))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("Case 2026-0001, event 2: its time was changed");
    var search =
        new CaseSearch(
            java.util.Optional.empty(),
            java.util.Set.of(),
            java.util.Optional.of("\"n\":1"),
            java.util.Optional.empty(),
            java.util.Optional.empty(),
            java.util.Optional.empty());
    assertThat(casebook.search(search)).extracting(CaseSummary::siteId).containsExactly("Ferry");
  }
}
