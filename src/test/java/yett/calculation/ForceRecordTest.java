package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ForceRecordTest {
  private static ForceCurve read(String text) {
    return ForceRecord.read("ferry.csv", text.lines().toList());
  }

  /** One record as different meters and spreadsheets write it: 0 N at 0 s, 300.5 N at 50 ms. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0,0\n0.05,300.5\n",
        "time,force\n0,0\n0.05,300.5\n",
        "time (s), force (N)\n0, 0\n0.05, 300.5\n",
        "\uFEFFTime [ms];Force [N]\n0;0\n50;300,5\n",
        "\"t/ms\"\t\"F/N\"\n\"0\"\t\"0\"\n\"50\"\t\"300,5\"\n",
        "force_kN,time_ms\n0,0\n0.3005,50\n",
        "# Ferry gate, closing\n\nTime in ms, Force in N, remark\n0,0,\n\n50,300.5,contact\n",
        "time s;force N\r\n0;0\r\n5e-2;3.005E2\r\n",
        "no,time (ms),force (N),note\n1,0,0,\n2,50,300.5,\n",
      })
  void meters_write_it_in_many_ways(String text) {
    ForceCurve curve = read(text);

    assertThat(curve.samples()).hasSize(2);
    assertThat(curve.samples().get(1).time()).isCloseTo(0.05, within(1e-12));
    assertThat(curve.samples().get(1).force()).isCloseTo(300.5, within(1e-9));
  }

  @Test
  void pounds_are_understood() {
    // NIST SP 811: 1 lbf is 4.448 222 N.
    assertThat(read("time (s),force (lbf)\n0,0\n1,100\n").peak().force())
        .isCloseTo(444.8222, within(1e-4));
  }

  private static void assertRefused(String text, String message) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(ForceRecordException.class)
        .hasMessage(message);
  }

  @Test
  void a_wrong_cell_is_named_with_line_and_column() {
    assertRefused(
        "time,force\n0,0\n0.1,12x\n",
        "ferry.csv, line 3, column 2 (force): \"12x\" is no number. "
            + "Write numbers only; the unit belongs into the heading.");
    assertRefused(
        "0,0\n,5\n",
        "ferry.csv, line 2, column 1 (time): there is nothing. "
            + "Write numbers only; the unit belongs into the heading.");
    assertRefused(
        "0,0\n0.1,NaN\n",
        "ferry.csv, line 2, column 2 (force): \"NaN\" is no number. "
            + "Write numbers only; the unit belongs into the heading.");
    assertRefused(
        "0;1.234,5\n1;2\n",
        "ferry.csv, line 1, column 2 (force): \"1.234,5\" is no number. "
            + "Write numbers only; the unit belongs into the heading.");
  }

  @Test
  void time_that_stands_still_is_refused() {
    assertRefused(
        "0,0\n0.1,5\n0.1,6\n",
        "ferry.csv, line 3, column 1 (time): 0.1 does not come after the time before it. "
            + "Keep one record in a file, in the order of time.");
  }

  @Test
  void missing_columns_and_headings_are_named() {
    assertRefused(
        "0,0\n0.1\n",
        "ferry.csv, line 2, there is no column 2. "
            + "Separate time and force by a comma, a semicolon or a tab.");
    assertRefused(
        "time,pressure\n0,0\n",
        "ferry.csv, line 1, no column is called force. Write a heading like time (s), force (N).");
    assertRefused(
        "temperature,force\n0,0\n",
        "ferry.csv, line 1, no column is called time. Write a heading like time (s), force (N).");
    assertRefused(
        "time,force,force\n0,0,0\n",
        "ferry.csv, line 1, columns 2 and 3 are both force. "
            + "Write a heading like time (s), force (N).");
    assertRefused(
        "time (s),force (V)\n0,0\n",
        "ferry.csv, line 1, column 2: V is not a unit of force. "
            + "Write a heading like time (s), force (N).");
    assertThatThrownBy(() -> read("time (sx),force (N)\n0,0\n"))
        .hasMessageStartingWith("ferry.csv, line 1, column 1: \"sx\" is not a known unit");
  }

  @Test
  void decimal_commas_between_commas_are_noticed() {
    assertRefused(
        "0,00,0,0\n0,05,300,5\n",
        "ferry.csv, line 1, there are 4 columns. "
            + "If these are decimal commas, separate the columns by semicolons.");
  }

  @Test
  void what_holds_no_record_is_refused() {
    assertRefused(
        "",
        "ferry.csv: there are no samples. Put a time and a force on each line, like 0.05, 120.");
    assertRefused(
        "time,force\n0,0\n",
        "ferry.csv: there are fewer than two samples. "
            + "Put a time and a force on each line, like 0.05, 120.");
    assertThatThrownBy(
            () -> ForceRecord.read("ferry.csv", Collections.nCopies(100_001, "# nothing")))
        .hasMessageStartingWith("ferry.csv, line 100001, there are more than 100000 lines");
    assertThatThrownBy(() -> ForceRecord.read("gate.jpg", List.of("\u0000\u0001\u0002")))
        .isInstanceOf(ForceRecordException.class);
  }
}
