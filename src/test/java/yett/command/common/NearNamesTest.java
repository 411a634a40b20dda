package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same gate under nearly the same name. */
class NearNamesTest {
  @ParameterizedTest
  @CsvSource({
    "North mole, North Mole gate",
    "nort mole, North mole",
    "the gate at the fish dock, Fish dock",
    "Fishdock, Fish dock",
    "Fish docks, Fish dock",
    "mole north, North mole",
    "Bakery, Bakery yard",
    "Slipawy, Slipway",
    "Ropewalk 12, Ropewalk gate 12",
    "gate 7, 7",
    "rope walk, Ropewalk 3",
    "B, b"
  })
  void is_asked_about(String one, String other) {
    assertThat(NearNames.isNear(one, other)).isTrue();
    assertThat(NearNames.isNear(other, one)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "North mole, South mole",
    "East yard, West yard",
    "Ropewalk 12, Ropewalk 13",
    "Gate 2, Gate 3",
    "Gate A, Gate B",
    "Fish dock, Coal dock",
    "Quay gate, Key house",
    "gate, the gate",
    "7, Ropewalk 7"
  })
  void is_another(String one, String other) {
    assertThat(NearNames.isNear(one, other)).isFalse();
    assertThat(NearNames.isNear(other, one)).isFalse();
  }
}
