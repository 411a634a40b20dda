package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/**
 * What docs/safety.md shows of the states is made of cards and rules. Write it anew with {@code mvn
 * test -Dtest=StatesPageTest -Dyett.write=true}.
 */
class StatesPageTest {
  private static final Path PAGE = Path.of("docs/safety.md");
  private static final String MARK = "<!-- Below: made by StatesPageTest; do not edit. -->\n";

  @Test
  void the_page_shows_the_states_as_the_cards_have_them() throws IOException {
    String page = Files.readString(PAGE);
    String head = page.substring(0, page.indexOf(MARK) + MARK.length());
    String expected = head + new StatesPage(Shipped.QUICK).text();
    if (Boolean.getBoolean("yett.write")) {
      Files.writeString(PAGE, expected);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(expected);
  }
}
