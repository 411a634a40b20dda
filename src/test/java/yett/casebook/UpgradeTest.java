package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** A casebook of the program that knew gates by the letters of their names and had no seals. */
@ParameterizedClass
@EnumSource(Store.class)
class UpgradeTest {
  @TempDir Path directory;
  @Parameter Store store;
  private String address;

  @BeforeEach
  void begin() throws SQLException {
    address = store.newAddress(directory);
    Store.layOut(address, "2");
    Store.execute(
        address,
        "insert into case_number values (2026, 3)",
        file("2026-0001", "north-south", 3),
        file("2026-0002", "north-south", 2),
        file("2026-0003", "fish-dock", 1),
        event("2026-0001", 1, "opened", "North+South"),
        event("2026-0001", 2, "noted", ""),
        event("2026-0002", 1, "opened", "North/South"),
        event("2026-0003", 1, "opened", "fish dock"),
        "insert into site values ('north-south', 3)",
        "insert into site values ('fish-dock', 2)",
        revision("north-south", 1, "North+South", "9 m"),
        revision("north-south", 2, "North/South", "7 m"),
        revision("north-south", 3, "North+South", "8 m"),
        revision("fish-dock", 1, "fish dock", "5 m"),
        revision("fish-dock", 2, "Fish dock", "6 m"));
  }

  private static String file(String id, String site, int second) {
    return "insert into case_file (id, site_id, opened_at, last_event_at, last_seq, state, title)"
        + " values ('%s', '%s', '2026-11-25T09:30:00.000000000Z',".formatted(id, site)
        + " '2026-11-25T09:30:0%d.000000000Z', %d, 'OPEN', '')"
            .formatted(second, id.endsWith("1") ? 2 : 1);
  }

  private static String event(String id, int seq, String type, String site) {
    return "insert into case_event (case_id, seq, at, written_by, type, body) values ('%s', %d,"
            .formatted(id, seq)
        + " '2026-11-25T09:30:00.000000000Z', 'technician', '%s', '{\"site\":\"%s\"}')"
            .formatted(type, site);
  }

  private static String revision(String site, int number, String name, String span) {
    return "insert into site_revision values ('%s', %d, '%s', '{\"span\":\"%s\"}',"
            .formatted(site, number, name, span)
        + " '2026-11-25T09:30:00.000000000Z')";
  }

  private Casebook upgraded() {
    return store == Store.SERVER ? Casebook.upgrade(address) : Store.open(address);
  }

  @Test
  void gates_whose_names_differ_in_signs_part_and_keep_what_is_theirs() {
    try (var casebook = upgraded()) {
      assertThat(casebook.cases())
          .extracting(line -> line.id() + " " + line.siteId())
          .containsExactly("2026-0001 North+South", "2026-0002 North/South", "2026-0003 Fish dock");
      assertThat(casebook.siteHistory("North+South"))
          .extracting(SiteRecord::body)
          .containsExactly("{\"span\":\"8 m\"}", "{\"span\":\"9 m\"}");
      assertThat(casebook.siteHistory("North/South"))
          .extracting(SiteRecord::body)
          .containsExactly("{\"span\":\"7 m\"}");
      assertThat(casebook.siteHistory("Fish dock")).hasSize(2);
      assertThat(casebook.sites()).hasSize(3);
    }
  }

  @Test
  void old_events_are_sealed_and_it_is_told_from_when_on_that_vouches() throws SQLException {
    try (var casebook = upgraded()) {
      assertThat(casebook.verify())
          .hasSize(3)
          .allMatch(f -> f.kind() == Finding.Kind.SEALED_LATER)
          .first()
          .satisfies(f -> assertThat(f.words()).startsWith("the events up to 2 were sealed at 20"));
      casebook.append(new CaseId(2026, 2), 1, Writer.event("technician", 1));
      Store.execute(
          address, "update case_event set body = '{}' where case_id = '2026-0002' and seq = 1");
      assertThat(casebook.verify()).filteredOn(Finding::isDefect).hasSize(1);
    }
  }
}
