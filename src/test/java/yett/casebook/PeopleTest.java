package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Store.class)
class PeopleTest {
  private static final Person CALLER = new Person(Person.Part.CALLER, "Ina Teal", "+1 555 0107");
  private static final Person TECHNICIAN = new Person(Person.Part.TECHNICIAN, "Ole Wick", "");

  @TempDir Path directory;
  @Parameter Store store;
  private Casebook casebook;
  private CaseId id;

  @BeforeEach
  void begin() {
    casebook = Store.open(store.newCasebook(directory));
    id = casebook.newCase("fish-dock", Writer.AT);
    casebook.append(id, 0, Writer.event("technician", 1));
  }

  @AfterEach
  void close() {
    casebook.close();
  }

  @Test
  void what_is_known_of_people_is_kept_with_the_case_and_can_be_changed() {
    casebook.savePerson(id, CALLER);
    casebook.savePerson(id, TECHNICIAN);
    assertThat(casebook.people(id)).containsExactly(CALLER, TECHNICIAN);

    casebook.savePerson(id, new Person(Person.Part.CALLER, "Ina Teal", "555 0108"));
    casebook.savePerson(id, new Person(Person.Part.TECHNICIAN, "", ""));
    assertThat(casebook.people(id)).extracting(Person::phone).containsExactly("555 0108");
    assertThatThrownBy(() -> casebook.savePerson(new CaseId(2026, 9), CALLER))
        .isInstanceOf(CaseNotFound.class);
  }

  @Test
  void people_are_found_by_name_or_number_and_forgotten_and_the_case_stays() {
    casebook.savePerson(id, CALLER);
    var events = casebook.events(id);

    assertThat(casebook.knowing("ina teal ")).containsExactly(id);
    assertThat(casebook.knowing("+1 (555) 01-07")).containsExactly(id);
    assertThat(casebook.knowing("Ina")).isEmpty();
    assertThat(casebook.forgetPeople(id)).isEqualTo(1);

    assertThat(casebook.people(id)).isEmpty();
    assertThat(casebook.knowing("Ina Teal")).isEmpty();
    assertThat(casebook.events(id)).isEqualTo(events);
  }

  @Test
  void own_words_are_forgotten_and_an_import_does_not_bring_them_back() {
    casebook.append(id, 1, new NewEvent(Writer.AT, "caller", "said", "{\"words\":\"Ina Teal\"}"));
    casebook.append(id, 2, Writer.event("technician", 3));
    CarriedCase before = casebook.carry(id, false);
    var events = casebook.events(id);

    casebook.forgetWords(id, Map.of(2L, "{\"words\":\"\"}"));

    var left = casebook.events(id);
    assertThat(left).hasSize(3);
    assertThat(left.get(0)).isEqualTo(events.get(0));
    assertThat(left.get(2)).isEqualTo(events.get(2));
    assertThat(left.get(1).at()).isEqualTo(events.get(1).at());
    assertThat(left.get(1).body()).isEqualTo("{\"words\":\"\"}");
    assertThat(casebook.take(before).outcome()).isEqualTo(ImportedCase.Outcome.KNOWN);
    assertThat(casebook.events(id)).isEqualTo(left);
    casebook.append(id, 3, Writer.event("technician", 4));
    assertThat(casebook.take(casebook.carry(id, false)).outcome())
        .isEqualTo(ImportedCase.Outcome.KNOWN);
  }

  @Test
  void nothing_that_is_printed_names_them() {
    assertThat(CALLER.toString()).doesNotContain("Teal", "555 01");
    casebook.savePerson(id, CALLER);
    assertThat(casebook.carry(id, true).toString()).doesNotContain("Teal", "555 01");
  }

  /** Deleting a row leaves its letters in a file, unless the database is told to wipe them. */
  @Test
  void who_is_forgotten_is_not_in_the_file_any_more() throws Exception {
    org.junit.jupiter.api.Assumptions.assumeTrue(store == Store.EMBEDDED);
    casebook.savePerson(id, CALLER);
    casebook.append(id, 1, new NewEvent(Writer.AT, "caller", "said", "{\"w\":\"Teal, 555 0107\"}"));
    casebook.forgetPeople(id);
    casebook.forgetWords(id, Map.of(2L, "{}"));
    casebook.close();

    try (Stream<Path> files = Files.walk(directory)) {
      assertThat(files.filter(Files::isRegularFile))
          .isNotEmpty()
          .allSatisfy(
              f ->
                  assertThat(new String(Files.readAllBytes(f), StandardCharsets.ISO_8859_1))
                      .doesNotContain("Teal", "555 0107"));
    }
  }
}
