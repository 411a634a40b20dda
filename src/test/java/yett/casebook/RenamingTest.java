package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** A gate gets another name, here or elsewhere: it stays one gate, with all that belongs to it. */
@ParameterizedClass
@EnumSource(Store.class)
class RenamingTest {
  private static final Instant SPRING = Writer.AT;
  private static final Instant SUMMER = SPRING.plusSeconds(9_000_000);
  private static final Instant AUTUMN = SPRING.plusSeconds(18_000_000);

  @TempDir Path directory;
  @Parameter Store store;
  private Casebook van;
  private Casebook desk;

  @BeforeEach
  void begin() {
    van = Casebook.open(directory.resolve("van").resolve("casebook.db"));
    desk = Store.open(store.newCasebook(directory));
    desk.saveSite(new SiteRecord("Fish dock", "Fish dock", "{\"opening\":\"9 m\"}", SPRING));
  }

  @AfterEach
  void close() {
    van.close();
    desk.close();
  }

  private static CaseId aCase(Casebook casebook, String gate, Instant at) {
    CaseId id = casebook.newCase(gate, at);
    casebook.append(id, 0, Writer.event("technician", 0));
    return id;
  }

  private static boolean bring(Casebook from, Casebook to, CaseId... ids) {
    boolean taken = true;
    for (CaseId id : ids) {
      String gate = from.summary(id).siteId();
      taken &= from.carry(gate).map(to::take).orElse(true);
      to.take(from.carry(id, false));
    }
    return taken;
  }

  private static List<String> gates(Casebook casebook) {
    return casebook.cases().stream().map(CaseSummary::siteId).distinct().sorted().toList();
  }

  @Test
  void cases_and_what_is_known_go_with_the_gate_and_no_event_is_touched() {
    CaseId first = aCase(desk, "Fish dock", SPRING);
    CaseId other = aCase(desk, "Ferry", SPRING);
    List<StoredEvent> events = desk.events(first);

    desk.rename("Fish dock", "Fish dock, north", SUMMER);

    assertThat(desk.summary(first).siteId()).isEqualTo("Fish dock, north");
    assertThat(desk.summary(other).siteId()).isEqualTo("Ferry");
    assertThat(desk.site("Fish dock")).isEmpty();
    assertThat(desk.siteHistory("Fish dock, north"))
        .extracting(SiteRecord::name)
        .containsExactly("Fish dock, north", "Fish dock");
    assertThat(desk.site("Fish dock, north").orElseThrow().body()).contains("9 m");
    assertThat(desk.formerly("Fish dock")).containsExactly("Fish dock, north");
    assertThat(desk.events(first)).isEqualTo(events);
    assertThat(desk.verify()).isEmpty();
  }

  @Test
  void a_name_that_is_taken_and_a_gate_that_is_not_there_are_refused_and_nothing_changes() {
    CaseId undescribed = aCase(desk, "Ferry", SPRING);

    assertThatThrownBy(() -> desk.rename("Fish dock", "Ferry", SUMMER))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("There is a gate \"Ferry\" already");
    assertThatThrownBy(() -> desk.rename("Ferry", "Fish dock", SUMMER))
        .hasMessageContaining("already");
    assertThatThrownBy(() -> desk.rename("Chandler", "Chandler's", SUMMER))
        .hasMessageContaining("There is no gate \"Chandler\"");

    assertThat(desk.summary(undescribed).siteId()).isEqualTo("Ferry");
    assertThat(desk.siteHistory("Fish dock")).hasSize(1);
  }

  @Test
  void the_name_reaches_a_van_that_knows_the_gate_by_its_old_one() {
    CaseId id = aCase(desk, "Fish dock", SPRING);
    bring(desk, van, id);
    desk.rename("Fish dock", "Fish dock, north", SUMMER);

    assertThat(bring(desk, van, id)).isTrue();
    assertThat(bring(desk, van, id)).isTrue();

    assertThat(gates(van)).containsExactly("Fish dock, north");
    assertThat(van.siteHistory("Fish dock, north")).isEqualTo(desk.siteHistory("Fish dock, north"));
    assertThat(van.site("Fish dock")).isEmpty();
  }

  @Test
  void a_case_from_a_van_that_does_not_know_the_new_name_goes_to_the_gate() {
    CaseId id = aCase(desk, "Fish dock", SPRING);
    bring(desk, van, id);
    desk.rename("Fish dock", "Fish dock, north", SUMMER);
    CaseId away = aCase(van, "Fish dock", AUTUMN);

    assertThat(bring(van, desk, id, away)).isTrue();

    assertThat(gates(desk)).containsExactly("Fish dock, north");
    assertThat(desk.siteHistory("Fish dock, north")).hasSize(2);
  }

  @Test
  void a_case_begun_under_the_old_name_is_one_of_the_gate_until_another_has_that_name() {
    desk.rename("Fish dock", "Fish dock, north", SUMMER);
    CaseId habit = aCase(desk, "Fish dock", AUTUMN);
    desk.saveSite(new SiteRecord("Fish dock", "Fish dock", "{}", AUTUMN));
    CaseId another = aCase(desk, "Fish dock", AUTUMN);

    assertThat(desk.summary(habit).siteId()).isEqualTo("Fish dock, north");
    assertThat(desk.summary(another).siteId()).isEqualTo("Fish dock");
    assertThat(desk.nameNow("Fish dock")).isEqualTo("Fish dock");
    assertThat(desk.nameNow("Ferry")).isEqualTo("Ferry");
  }

  @Test
  void a_gate_that_nobody_described_is_renamed_elsewhere_too() {
    CaseId id = aCase(desk, "Ferry", SPRING);
    bring(desk, van, id);
    desk.rename("Ferry", "Ferry slip", SUMMER);

    assertThat(bring(desk, van, id)).isTrue();

    assertThat(gates(van)).containsExactly("Ferry slip");
  }

  @Test
  void two_new_names_for_one_gate_are_told_and_neither_is_lost() {
    CaseId id = aCase(desk, "Fish dock", SPRING);
    bring(desk, van, id);
    desk.rename("Fish dock", "Fish dock, north", SUMMER);
    van.rename("Fish dock", "Cold store", AUTUMN);

    assertThat(bring(van, desk, id)).isFalse();

    assertThat(gates(desk)).containsExactly("Fish dock, north");
    assertThat(gates(van)).containsExactly("Cold store");
  }

  @Test
  void a_name_that_was_given_up_can_come_back() {
    CaseId id = aCase(desk, "Fish dock", SPRING);
    desk.rename("Fish dock", "Cold store", SUMMER);
    bring(desk, van, id);
    desk.rename("Cold store", "Fish dock", AUTUMN);

    assertThat(bring(desk, van, id)).isTrue();

    assertThat(gates(van)).containsExactly("Fish dock");
    assertThat(gates(desk)).containsExactly("Fish dock");
    assertThat(desk.formerly("Cold store")).containsExactly("Fish dock");
  }

  @Test
  void another_gate_that_got_the_old_name_keeps_its_cases() {
    CaseId id = aCase(desk, "Fish dock", SPRING);
    desk.rename("Fish dock", "Fish dock, north", SUMMER);
    CaseId another = aCase(van, "Fish dock", AUTUMN);

    bring(desk, van, id);

    assertThat(van.summary(another).siteId()).isEqualTo("Fish dock");
  }
}
