package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseFinderTest {
  private static final List<CaseId> ALL =
      List.of(
          new CaseId(2025, 3),
          new CaseId(2026, 3),
          new CaseId(2026, 7),
          new CaseId(2026, 20),
          new CaseId(2026, 12345),
          new CaseId(2027, 1));

  @ParameterizedTest
  @CsvSource({
    "2026-0007,2026-0007",
    "2026-7,2026-0007",
    "7,2026-0007",
    "' 0007 ',2026-0007",
    "20,2026-0020",
    "2027,2027-0001",
    "202,",
    "2026-1,2026-12345",
    "2026-12345,2026-12345",
    "2025-0003,2025-0003",
    "3,",
  })
  void the_case_is_found_by_id_number_or_beginning(String typed, String found) {
    if (found == null) {
      assertThatThrownBy(() -> CaseFinder.find(typed, ALL)).isInstanceOf(CaseNotFound.class);
    } else {
      assertThat(CaseFinder.find(typed, ALL)).hasToString(found);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3         | \"3\" could be 2025-0003, 2026-0003. Write more of it.",
        "2026-0021 | There is no case \"2026-0021\". The nearest: 2026-0020, 2026-0007, 2026-0003.",
        "2028-0001 | There is no case \"2028-0001\". The nearest: 2027-0001, 2026-0003, 2026-0007.",
        "8         | There is no case \"8\". The nearest: 2026-0007, 2026-0003, 2025-0003.",
        "gate      | There is no case \"gate\". The nearest: 2027-0001, 2026-12345, 2026-0020.",
        "''        | There is no case \"\". The nearest: 2027-0001, 2026-12345, 2026-0020.",
        "99999999999 | There is no case \"99999999999\". The nearest: 2027-0001, 2026-12345, 2026-0020.",
      })
  void what_is_not_found_is_answered_with_what_may_have_been_meant(String typed, String told) {
    assertThatThrownBy(() -> CaseFinder.find(typed, ALL)).hasMessage(told);
  }

  @Test
  void an_empty_casebook_says_so() {
    assertThatThrownBy(() -> CaseFinder.find("7", List.of()))
        .hasMessage("There is no case \"7\". The casebook is empty: open a case first.");
  }
}
