package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.casebook.Person;
import yett.command.diagnose.CallersCase;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;

/** What is typed where a call asks who is calling. */
class WhoCallsTest extends CallersCase {
  /** Each with the complaint that is offered then. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the gate won't close | stays-open",
        "it just beeps all day, 555 0107 | alarm-sounds",
        "Joan Pell from the bakery, it stops halfway | runs-then-stops"
      })
  void a_complaint_where_the_name_is_asked_is_no_address(String line, String complaint) {
    typed.type("hello", "0", line, "", "1", "0");
    assertThat(typed.stored().toString())
        .as(typed.screen())
        .contains("Said[", "Complained[complaints=[" + complaint)
        .doesNotContain("WHERE, words=the gate", "WHERE, words=it ");
    assertThat(typed.casebook().people(typed.id()).toString())
        .doesNotContain("beeps", "stops", "close");
  }

  @Test
  void a_danger_where_the_name_is_asked_comes_before_it() {
    typed.type("it is dead", "0", "Ina Teal, 4 Quay Road, 555 0107, it hit my daughter", "1");
    assertThat(typed.screen()).contains("That may mean danger", "You at the desk");
    assertThat(typed.stored()).contains(new Event.Said("it hit my daughter"));
    assertThat(typed.stored()).contains(new Event.Tended(Tending.WHERE, "4 Quay Road"));
    assertThat(typed.casebook().people(typed.id()))
        .containsExactly(new Person(Person.Part.CALLER, "Ina Teal", "555 0107"));
  }

  @Test
  void first_name_and_surname_are_a_name_whatever_they_sound_like() {
    typed.type("it is dead", "0", "Ann Fell, 4 Quay Road, 555 0150", "1");
    assertThat(typed.screen()).doesNotContain("That may mean danger");
    assertThat(typed.casebook().people(typed.id()))
        .containsExactly(new Person(Person.Part.CALLER, "Ann Fell", "555 0150"));
  }

  /** Words that can be both are asked about; the answer says what they are. */
  @ParameterizedTest
  @CsvSource({"Burns, 0, Burns, ''", "'Motor works, Canal Street', no, Motor works, Canal Street"})
  void a_name_that_sounds_like_a_fault_is_asked_about(
      String line, String answer, String name, String where) {
    typed.type("it is dead", "0", line, answer, "1");
    assertThat(typed.casebook().people(typed.id()))
        .as(typed.screen())
        .containsExactly(new Person(Person.Part.CALLER, name, ""));
    try (OpenCase open = typed.open()) {
      assertThat(CallLog.of(open.moment().entries()).where().orElse("")).isEqualTo(where);
    }
  }

  /** Who they are belongs to the name; a number is one however it is said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "Mr Osei, gatehouse, five five five, oh double two, one | Mr Osei | 5550221 | gatehouse",
        "Pavel, lorry driver, 555 0134 | Pavel, lorry driver | 555 0134 | ''",
        "the guard, no number, Boatswain lane | the guard | '' | Boatswain lane",
        "Ida Marsh, number 5 5 5 0 1 9 9, Sail loft | Ida Marsh | 5 5 5 0 1 9 9 | Sail loft",
      })
  void who_they_are_and_a_number_in_pieces_are_no_place(
      String line, String name, String phone, String where) {
    typed.type("it is dead", "0", line, "1");
    assertThat(typed.screen()).doesNotContain("said of the gate");
    assertThat(typed.casebook().people(typed.id()))
        .as(typed.screen())
        .containsExactly(new Person(Person.Part.CALLER, name, phone));
    try (OpenCase open = typed.open()) {
      assertThat(CallLog.of(open.moment().entries()).where().orElse("")).isEqualTo(where);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ina Teal, 4 Quay Road, 555 0107",
        "its Joan from the bakery, 555 0134",
        "Old Power Station, Gate 3",
        "Rosa Marsh, the north yard, 12 Beam Close",
        "Harrow Quay east gate",
        "the lady at number 12"
      })
  void a_name_is_taken_without_a_question(String line) {
    typed.type("it is dead", "0", line, "1");
    assertThat(typed.screen()).doesNotContain("said of the gate?", "That may mean danger");
    assertThat(typed.stored()).contains(new Event.Complained(List.of("does-nothing")));
  }
}
