package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.Cause;
import yett.testing.Shipped;

/** What goes together at gates that are known is asked of a new cause too. */
class CompanionsTest {
  private static List<String> of(Map<String, String> told, Set<String> known) {
    return new Companions(Shipped.BASE)
        .of(told, known, Set.of()).stream().map(c -> c.check().id()).toList();
  }

  @Test
  void an_open_end_that_is_far_off_is_mostly_unlike_the_other_end() {
    assertThat(of(Map.of("limit-error-open", "far-off often"), Set.of())).contains("limit-shift");
  }

  @Test
  void what_is_known_or_was_told_is_not_asked_again() {
    Map<String, String> told = Map.of("limit-error-open", "far-off often", "limit-shift", "");
    assertThat(of(told, Set.of("limit-error-closed")))
        .doesNotContain("limit-shift", "limit-error-open", "limit-error-closed");
  }

  @Test
  void nothing_goes_with_what_is_as_on_a_sound_gate_or_was_not_told() {
    assertThat(of(Map.of("limit-error-open", "right often"), Set.of())).isEmpty();
    assertThat(of(Map.of("limit-error-open", ""), Set.of())).isEmpty();
  }

  @Test
  void nobody_is_asked_for_more_than_four() {
    assertThat(of(Map.of("running-current", "high often", "slow", "said often"), Set.of()))
        .hasSizeBetween(1, 4);
  }

  @Test
  void of_looks_that_come_by_one_effect_one_is_asked_for() {
    List<Companions.Companion> found =
        new Companions(Shipped.BASE)
            .of(
                Map.of(
                    "battery-rest-voltage", "charged often, flat sometimes",
                    "runs-on-batteries", "weak sometimes, not-at-all usually"),
                Set.of(),
                Set.of());
    assertThat(found.stream().flatMap(c -> c.effect().stream()))
        .isNotEmpty()
        .doesNotHaveDuplicates();
  }

  private static List<String> ofTheDrive(String complaint) {
    Set<String> drive =
        Shipped.BASE.causes().values().stream()
            .filter(c -> c.area().equals("drive"))
            .map(Cause::id)
            .collect(Collectors.toSet());
    return new Companions(Shipped.BASE)
        .of(Map.of(complaint, "said often"), Set.of(), drive).stream()
            .map(c -> c.check().id())
            .toList();
  }

  /** A brake that slips is no fault of the loops or of the commands, which are reported alike. */
  @Test
  void what_goes_with_quite_other_causes_is_not_asked_for() {
    assertThat(of(Map.of("stays-open", "said often"), Set.of())).contains("input-on");
    assertThat(ofTheDrive("stays-open")).doesNotContain("input-on");
    assertThat(of(Map.of("pushed-open-by-hand", "said often"), Set.of()))
        .contains("bridged-at-device");
    assertThat(ofTheDrive("pushed-open-by-hand")).doesNotContain("bridged-at-device");
  }
}
