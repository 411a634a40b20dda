package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits of EN 12453 as summaries of it give them; see ObstructionForceTest. */
class ForceWorksheetsTest {
  @TempDir Path folder;

  private Worked judged(String zone, String record) throws IOException {
    Path file = Files.writeString(folder.resolve("ferry gate.csv"), record);
    return Worked.out("obstruction-force", "curve=" + file, "zone=" + zone);
  }

  /** A record of 5.6 s at 1000 samples a second, straight between its corners. */
  private static String record(double peak, double later, double last) {
    StringBuilder text = new StringBuilder("time (ms),force (N)\n");
    for (int ms = 0; ms <= 5600; ms++) {
      double force =
          ms < 50
              ? peak * ms / 50
              : ms < 600 ? peak + (later - peak) * (ms - 50) / 550 : ms < 4900 ? later : last;
      text.append(ms).append(',').append(force).append('\n');
    }
    return text.toString();
  }

  @Test
  void a_record_within_the_limits() throws IOException {
    judged("closing-gap", record(380, 140, 20))
        .says("verdict", "within the limits")
        .gives("peak", 380)
        .gives("peak-limit", 400)
        .gives("rate", 1000)
        .gives("after-5-s", 20)
        .means("all points have, three times each");
  }

  @Test
  void a_record_over_the_limits() throws IOException {
    Worked worked =
        judged("closing-gap", record(900, 160, 40))
            .says("verdict", "over the limits")
            .means(
                "peak of 900 N (202 lbf) is over the 400 N (89.9 lbf) allowed in a gap",
                "reverses too late",
                "still 40 N");
    assertThat(worked.solution().meaning().notes()).hasSize(1);
    judged("wide-gap", record(900, 140, 20)).says("verdict", "within the limits");
    judged("fixed-surfaces", record(900, 140, 20)).gives("peak-limit", 1400);
  }

  @Test
  void a_record_that_does_not_tell() throws IOException {
    judged("closing-gap", "0;0\n0,1;300\n0,5;20\n2;10\n")
        .says("verdict", "open: this record cannot decide it")
        .doesNotTell("after-5-s")
        .means("Record 5 s and more", "slower than the 200 samples");
    judged("closing-gap", "0,0\n6,10\n").means("never rose above 25 N");
  }

  @Test
  void a_record_that_is_not_fit_to_tell() throws IOException {
    judged("closing-gap", record(380, 140, 20).replaceAll("(?m)^(3\\d|4\\d),.*\n", ""))
        .says("verdict", "open: this record cannot decide it")
        .gives("largest-gap", 0.021)
        .means("For 21 ms there is no sample");
    judged("closing-gap", record(380, 140, 20).replaceAll("(?m)^(\\d|1\\d),.*\n", ""))
        .says("verdict", "open: this record cannot decide it")
        .means("inside the impact");
    judged("fixed-surfaces", record(1500, 140, 20))
        .means("over the 1400 N (315 lbf) allowed between flat faces");
  }

  @Test
  void numbers_with_all_their_digits_are_read() throws IOException {
    judged("closing-gap", record(380, 140, 20).replace("\n1,7.6\n", "\n1,7.5999999999999943\n"))
        .says("verdict", "within the limits");
  }

  @Test
  void the_drawing_shows_curve_and_limits() throws IOException {
    Plot plot = judged("closing-gap", record(380, 140, 20)).solution().plot().orElseThrow();

    assertThat(plot.points()).hasSize(5601);
    assertThat(plot.levels())
        .extracting(Plot.Level::label)
        .containsExactly("limit 400", "limit 150", "0", "peak 380");
    // Time counts from contact: 25 N are reached after 50 ms x 25/380.
    assertThat(plot.points().get(0).across()).isEqualTo(-0.050 * 25 / 380, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  private static void assertRefused(String curve, String message) {
    assertThatThrownBy(() -> Worked.out("obstruction-force", "curve=" + curve, "zone=wide-gap"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(message);
  }

  @Test
  void files_that_are_no_record() throws IOException {
    assertRefused(folder.resolve("none.csv").toString(), "There is no file");
    assertRefused(folder.toString(), "is not a file. Name the CSV file");
    assertRefused(
        Files.write(folder.resolve("a.xlsx"), new byte[] {'P', 'K', (byte) 0xFF, 0}).toString(),
        "a.xlsx is not UTF-8 text");
    assertRefused(
        Files.writeString(folder.resolve("b.csv"), "time,force\n0,0\n1,x\n", StandardCharsets.UTF_8)
            .toString(),
        "b.csv, line 3, column 2 (force): \"x\" is no number");
    assertRefused(
        Files.write(folder.resolve("c.csv"), new byte[5_000_001]).toString(),
        "c.csv is too large for one record");
  }
}
