package yett.command.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.figures.GateHistory;
import yett.testing.Shipped;

/** What goes out of a casebook in a sheet comes in again as it was. */
class GateImportTest {
  @TempDir private Path folder;

  private GateImport reader(String csv) throws IOException {
    Path file = Files.writeString(folder.resolve("gates.csv"), csv);
    return new GateImport(Shipped.BASE, SheetFile.read(file.toString()), List.of("Slip road"));
  }

  private Map<String, String> imported(Optional<Map<String, String>> before, String csv)
      throws IOException {
    GateImport reader = reader(csv);
    return reader.with(before, reader.gates().get("Slip road"));
  }

  @Test
  void what_was_entered_stays_entered_even_where_it_is_the_usual() throws IOException {
    Map<String, String> told =
        Map.of("opening", "5 m", "supply-volts", "230", "leaf-mass", "420 kg");
    Gates.Gate gate =
        new Gates.Gate(
            "Slip road", Optional.of(told), new GateHistory(List.of()), 0, Optional.empty());
    String sheet = GateSheet.toCarry(Shipped.BASE).csv(List.of(gate));
    assertThat(sheet).contains("5 m", "230 V", "420 kg").doesNotContain("temperate", "15 degC");
    assertThat(imported(Optional.of(told), sheet)).isEqualTo(told);
    assertThat(imported(Optional.empty(), sheet)).as("in another casebook").isEqualTo(told);
  }

  @Test
  void what_nobody_entered_stays_so_when_a_full_sheet_comes_in_again() throws IOException {
    Map<String, String> told = Map.of("leaf-mass", "420 kg");
    assertThat(imported(Optional.of(told), "Gate,opening,leaf-mass\nSlip road,5 m,420 kg\n"))
        .isEqualTo(told);
    assertThat(imported(Optional.of(told), "Gate,opening,leaf-mass\nSlip road,6 m,350 kg\n"))
        .as("350 kg is usual, but somebody wrote it in place of 420 kg")
        .containsEntry("opening", "6 m")
        .containsEntry("leaf-mass", "350 kg");
  }
}
