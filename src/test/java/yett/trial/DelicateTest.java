package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DelicateTest {
  @TempDir private Path folder;

  private List<Delicate> numbers(SmallFolder small) {
    return Delicate.among(small.expertise(), small.cases("").cases(), () -> {}).numbers();
  }

  @Test
  void the_rows_of_answered_checks_matter_and_no_others() {
    List<Delicate> numbers = numbers(new SmallFolder(folder));
    assertThat(numbers).isNotEmpty();
    assertThat(numbers)
        .isSortedAccordingTo((a, b) -> Double.compare(b.sum(), a.sum()))
        .anyMatch(n -> n.check().equals("noise-kind") && n.cause().equals("chain-slack"))
        .noneMatch(n -> n.check().equals("limits-hold")); // asked after the repair
  }

  @Test
  void a_number_that_could_turn_the_first_place_is_told() {
    SmallFolder small = new SmallFolder(folder);
    assertThat(numbers(small).stream().flatMap(n -> n.turns().stream())).isEmpty();
    // The gate is meant to stand open: now as much speaks for that, so little would put it first.
    small.change("harbour.case.yaml", "held-open: not-meant", "held-open: meant");
    assertThat(numbers(small).stream().flatMap(n -> n.turns().stream())).contains("dark-display");
  }
}
