package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeederTest {
  // Worked by hand from 2 I L R' with NEC chapter 9 table 8 (stranded, 75 degC): supply V, A, ft
  // one
  // way, size, volts lost, percent.
  @ParameterizedTest
  @CsvSource({
    "24, 10, 50, awg-12, 1.980, 8.250",
    "24, 15, 30, awg-10, 1.116, 4.650",
    "120, 5, 200, awg-12, 3.960, 3.300",
    "24, 2, 100, awg-18, 3.180, 13.25",
    "24, 15, 50, awg-12, 2.970, 12.38",
  })
  void loss_on_american_sizes(
      double supply, double current, double feet, String size, double volts, double percent) {
    Worked.out(
            "feeder-drop",
            "supply=" + supply + " V",
            "current=" + current + " A",
            "length=" + feet + " ft",
            "size=" + size)
        .gives("drop", volts)
        .gives("share", percent)
        .gives("left", supply - volts);
  }

  @Test
  void loss_on_metric_sizes() {
    // Worked by hand with IEC 60228: 6 A, 25 m of 2.5 mm2 class 2 at 20 and 70 degC; 3 A, 40 m of
    // 1.5 mm2 class 5 at 230 V; a pair of 100 m of 1.5 mm2 class 2 has 2.420 ohm.
    Worked.out(
            "feeder-drop",
            "supply=24 V",
            "current=6 A",
            "length=25 m",
            "size=2.5 mm2",
            "wire-temperature=20 degC")
        .gives("drop", 2.223)
        .gives("share", 9.262);
    Worked.out(
            "feeder-drop",
            "supply=24 V",
            "current=6 A",
            "length=25 m",
            "size=2.5 mm2",
            "wire-temperature=70 degC")
        .gives("drop", 2.660)
        .gives("share", 11.08);
    Worked.out(
            "feeder-drop",
            "supply=230 V",
            "current=3 A",
            "length=40 m",
            "size=1.5 mm2",
            "strands=flexible",
            "wire-temperature=20 degC")
        .gives("drop", 3.192)
        .gives("share", 1.388)
        .means("Its loss is small enough: 1.39 % at this load.");
    Worked.out(
            "feeder-drop",
            "supply=24 V",
            "current=1 A",
            "length=100 m",
            "size=1.5 mm2",
            "wire-temperature=20 degC")
        .gives("resistance", 2.420);
  }

  @Test
  void solid_metric_wire() {
    // IEC 60228 class 1, from memory: 7.41 ohm/km for 2.5 mm2, as class 2.
    Worked.out(
            "feeder-drop",
            "supply=24 V",
            "current=6 A",
            "length=25 m",
            "size=2.5 mm2",
            "strands=solid",
            "wire-temperature=20 degC")
        .gives("drop", 2.223);
  }

  @Test
  void longest_run() {
    // Worked by hand at 3 %: 24 V 10 A 12 AWG 18.18 ft, 120 V 8 A 12 AWG 113.6 ft, 24 V 10 A 10 AWG
    // 29.03 ft.
    Worked.out("feeder-drop", "supply=24 V", "current=10 A", "length=50 ft", "size=awg-12")
        .gives("longest", 18.18 * 0.3048)
        .means("too thin or too long", "12 AWG keeps within 3 % up to 5.54 m (18.2 ft)");
    Worked.out("feeder-drop", "supply=120 V", "current=8 A", "length=50 ft", "size=awg-12")
        .gives("longest", 113.6 * 0.3048);
    Worked.out("feeder-drop", "supply=24 V", "current=10 A", "length=50 ft", "size=awg-10")
        .gives("longest", 29.03 * 0.3048);
  }

  @Test
  void a_load_beyond_the_wire() {
    Worked.out("feeder-drop", "supply=12 V", "current=40 A", "length=60 m", "size=awg-18")
        .doesNotTell("left")
        .means("cannot carry that current");
  }

  @Test
  void uncertainty_of_the_loss() {
    // Worked by hand: the loss is proportional to the current; limits of 0.5 A give 0.2887 A, 1.925
    // %
    // of 15 A, hence 0.05716 V of 2.97 V.
    Worked.out("feeder-drop", "supply=24 V", "current=15 A +- 0.5 A", "length=50 ft", "size=awg-12")
        .isUncertainBy("drop", 0.05716)
        .isUncertainBy("left", 0.05716);
  }

  @Test
  void smallest_size() {
    // Worked by hand: at 3 % of 24 V and 10 A, 10 AWG reaches 29.03 ft, 12 AWG 18.18 ft.
    Worked.out("feeder-size", "supply=24 V", "current=10 A", "length=29 ft").says("size", "10 AWG");
    Worked.out("feeder-size", "supply=24 V", "current=10 A", "length=29.1 ft")
        .says("size", "8 AWG");
    // 230 V, 5 A: 1.5 mm2 class 2 at 20 degC reaches 57.02 m at 3 %, worked by hand.
    Worked.out(
            "feeder-size",
            "supply=230 V",
            "current=5 A",
            "length=57 m",
            "table=mm2",
            "wire-temperature=20 degC")
        .says("size", "1.5 mm2");
    Worked.out(
            "feeder-size",
            "supply=230 V",
            "current=5 A",
            "length=57.1 m",
            "table=mm2",
            "wire-temperature=20 degC")
        .says("size", "2.5 mm2");
    Worked.out("feeder-size", "supply=24 V", "current=100 A", "length=500 m")
        .says("size", "none up to 1/0 AWG")
        .means("feed a higher voltage");
  }

  // NEC 240.4(D): 18 AWG 7 A, 16 10 A, 14 15 A, 12 20 A, 10 30 A; beyond it the 60 degC column of
  // NEC table 310.16, from memory: 8 AWG 40 A, 6 55 A. A run so short that any of them would do for
  // the voltage.
  @ParameterizedTest
  @CsvSource({
    "24, 7, 18 AWG, 7",
    "24, 7.1, 16 AWG, 10",
    "24, 15, 14 AWG, 15",
    "24, 20, 12 AWG, 20",
    "24, 30, 10 AWG, 30",
    "24, 30.1, 8 AWG, 40",
    "24, 55, 6 AWG, 55",
    "120, 30, 10 AWG, 30",
    "120, 3, 14 AWG, 15",
  })
  void a_size_carries_its_current(double supply, double current, String size, double fuse) {
    Worked.out(
            "feeder-size", "supply=" + supply + " V", "current=" + current + " A", "length=0.1 m")
        .says("size", size)
        .says("for-voltage", "18 AWG")
        .gives("carries", fuse);
  }

  // IEC 60364-5-52, two loaded wires, PVC, method B2, from memory: 1.5 mm2 16.5 A, 2.5 23 A, 4 30
  // A.
  @ParameterizedTest
  @CsvSource({"16, 1.5 mm2", "16.6, 2.5 mm2", "23.1, 4 mm2", "3, 1.5 mm2"})
  void a_metric_size_carries_its_current(double current, String size) {
    Worked.out(
            "feeder-size", "supply=230 V", "current=" + current + " A", "length=1 m", "table=mm2")
        .says("size", size);
  }

  @Test
  void a_wire_is_as_thick_as_its_breaker_asks() {
    Worked worked =
        Worked.out("feeder-size", "supply=120 V", "current=5 A", "length=3 m", "breaker=20 A")
            .says("size", "12 AWG")
            .means("For the voltage alone 18 AWG would do", "take 12 AWG at least");
    assertThat(worked.solution().sheet().notes()).isNotEmpty();
    Worked thin =
        Worked.out("feeder-drop", "supply=120 V", "current=30 A", "length=3 m", "size=18 AWG")
            .gives("carries", 7)
            .means("Too thin for 30 A", "18 AWG may be fused at 7 A at most");
    assertThat(thin.solution().meaning().notes()).hasSize(1);
    Worked.out("feeder-voltage", "supply=120 V", "motor-current=40 A", "length=3 m", "size=18 AWG")
        .means("18 AWG may be fused at 7 A at most");
    Worked.out("feeder-size", "supply=400 V", "current=200 A", "length=1 m")
        .says("size", "none up to 1/0 AWG")
        .means("carries so much");
  }

  @Test
  void mains_at_the_operator_while_it_runs() {
    // Worked by hand: (24 x 8 + 120)/(0.75 x 120) = 3.467 A; 150 ft of 14 AWG stranded, 3.14 ohm
    // per
    // 1000 ft: 3.265 V, 2.721 %; 116.7 V are left, 110 V measured leave 6.735 V unexplained, 1.943
    // ohm.
    Worked.out(
            "feeder-voltage",
            "supply=120 V",
            "motor-current=8 A",
            "length=150 ft",
            "size=14 AWG",
            "measured=110 V")
        .gives("mains-current", 3.467)
        .gives("drop", 3.265)
        .gives("share", 2.721)
        .gives("terminals", 116.7)
        .gives("unexplained", 6.735)
        .gives("joints", 1.943)
        .means("loses little", "6.73 V more is lost than wire explains");
  }

  // Ideal transformer and rectified sine, worked by hand: mains, setting, AC, smoothed, mean.
  @ParameterizedTest
  @CsvSource({
    "120, 240, 12.00, 15.57, 10.80, it cannot charge",
    "208, 240, 20.80, 28.02, 18.73, too high for this mains",
    "240, 240, 24.00, 32.54, 21.61, fits the mains",
    "240, 120, 48.00, 66.48, 43.22, too low for this mains",
  })
  void the_setting_of_a_supply(
      double mains, double tap, double ac, double smoothed, double plain, String meaning) {
    Worked.out("supply-setting", "mains=" + mains + " V", "setting=" + tap + " V")
        .gives("ac", ac)
        .gives("dc-smoothed", smoothed)
        .gives("dc-plain", plain)
        .means(meaning);
  }

  // 208 V on the 240 V tap, worked by hand: 28.02 V without a load, where 29 V to 34 V are usual.
  @Test
  void a_supply_that_is_a_little_short_does_not_charge() {
    Worked.out("supply-setting", "mains=208 V", "setting=240 V")
        .means("With 28 V at most, and less under load, it cannot charge");
    Worked.out("supply-setting", "mains=240 V", "setting=240 V").means("it can charge");
    Worked.out("supply-setting", "mains=240 V", "setting=240 V", "secondary=30 V")
        .means("is more than charging a 24 V pair asks for");
  }
}
