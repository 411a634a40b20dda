package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** A story that names the fault is no exercise. */
class GivenAwayTest {
  private static List<String> in(String story) {
    return GivenAway.in(story, List.of("insects-nest"), Shipped.BASE);
  }

  @Test
  void a_word_that_only_the_fault_has_in_its_name_gives_it_away() {
    assertThat(in("There were wasps about, and the gate stops.")).containsExactly("wasps");
    assertThat(in("The gate at the Ferry stops half way.")).isEmpty();
  }
}
