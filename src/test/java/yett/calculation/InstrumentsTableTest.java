package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.quantity.Quantity;
import yett.quantity.Unit;

class InstrumentsTableTest {
  private static List<String> lines() throws IOException {
    try (InputStream table =
        InstrumentsTableTest.class.getResourceAsStream("/shared/instruments.csv")) {
      return new String(table.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  @Test
  void every_instrument_has_numbers_a_fitting_unit_and_a_source() throws IOException {
    assertThat(lines().get(0))
        .isEqualTo("instrument,quantity,percent,counts,resolution,unit,source");
    assertThat(lines()).hasSizeGreaterThan(5);
    for (String line : lines().subList(1, lines().size())) {
      String[] cells = line.split(",", -1);
      assertThat(cells).as(line).hasSize(7);
      Quantity quantity = Quantity.named(cells[1]);
      double percent = Double.parseDouble(cells[2]);
      double counts = Double.parseDouble(cells[3]);
      double resolution = Double.parseDouble(cells[4]);

      if (quantity == Quantity.COUNT) {
        assertThat(cells[5]).as(line).isEmpty();
      } else {
        assertThat(Unit.parse(cells[5]).quantity()).as(line).isEqualTo(quantity);
      }
      assertThat(InstrumentUncertainty.standard(1, percent, counts, resolution))
          .as(line)
          .isPositive();
      assertThat(cells[6]).as(line).isNotBlank();
    }
  }

  @Test
  void every_instrument_that_cards_name_is_there() throws IOException {
    assertThat(lines().stream().skip(1).map(line -> line.split(",")[0]))
        .contains(
            "meter-dc-volts",
            "meter-ac-volts",
            "meter-ohms",
            "clamp-dc",
            "tape",
            "rule",
            "stopwatch",
            "spring-scale",
            "force-meter",
            "thermometer",
            "level",
            "eye",
            "feelers",
            "tally")
        .doesNotHaveDuplicates();
  }
}
