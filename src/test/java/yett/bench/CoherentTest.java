package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** A case that is written for an author holds only what can be together at one gate. */
class CoherentTest {
  private static final String STANDS =
      """
      case: stands
      person: technician
      complaints: [does-nothing]
      answers:
        what-turns: motor-still
        speed-seen: slower
        sprocket-key: sheared
        sprocket-play: 1 mm
      others: usual
      truth: [motor-worn]
      """;

  private static String cleared(String text, String... named) {
    return Coherent.of(Shipped.EXPERTISE, text, Map.of("stands", Set.of(named)));
  }

  @Test
  void a_gate_that_stands_has_no_speed() {
    assertThat(cleared(STANDS)).contains("what-turns").doesNotContain("speed-seen");
  }

  @Test
  void what_the_author_named_stays_and_the_other_goes() {
    assertThat(cleared(STANDS, "speed-seen")).contains("speed-seen").doesNotContain("what-turns");
    assertThat(cleared(STANDS, "what-turns", "speed-seen"))
        .as("both named")
        .contains("speed-seen", "what-turns");
  }

  @Test
  void of_two_answers_that_contradict_each_other_one_stays() {
    assertThat(cleared(STANDS, "sprocket-play"))
        .contains("sprocket-play")
        .doesNotContain("sprocket-key");
    assertThat(cleared(STANDS, "sprocket-key"))
        .contains("sprocket-key")
        .doesNotContain("sprocket-play");
  }

  @Test
  void each_case_of_a_file_stands_by_itself() {
    String sound =
        """
        case: sound
        person: technician
        answers:
          speed-seen: slower
        others: usual
        """;
    assertThat(cleared(STANDS + "---\n" + sound)).endsWith("---\n" + sound);
  }
}
