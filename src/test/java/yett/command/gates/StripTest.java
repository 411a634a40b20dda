package yett.command.gates;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StripTest {
  private static final double NONE = Double.NaN;

  @Test
  void a_reading_stands_in_or_beside_its_usual_range() {
    Strip strip = new Strip(0, 10, 2, 6);

    assertThat(strip.draw(4, 11)).isEqualTo("..[=*=]....");
    assertThat(strip.draw(10, 11)).isEqualTo("..[===]...*");
    assertThat(strip.draw(2, 11)).isEqualTo("..*===]....");
  }

  @Test
  void a_range_without_an_end_goes_on() {
    assertThat(new Strip(0, 10, Double.NEGATIVE_INFINITY, 5).draw(9, 11)).isEqualTo("=====]...*.");
    assertThat(new Strip(0, 10, 5, Double.POSITIVE_INFINITY).draw(1, 11)).isEqualTo(".*...[=====");
  }

  @Test
  void without_a_usual_range_there_is_only_the_reading() {
    assertThat(new Strip(1, 3, NONE, NONE).draw(2, 5)).isEqualTo("..*..");
    assertThat(new Strip(2, 2, NONE, NONE).draw(2, 3)).isEqualTo("*..");
  }
}
