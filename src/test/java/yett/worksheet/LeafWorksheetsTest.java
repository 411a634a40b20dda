package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.Caution;

class LeafWorksheetsTest {
  // Worked by hand from m g (c cos a + sin a), to start 2.5 c: mass, resistance, grade, uphill N,
  // N to start.
  @ParameterizedTest
  @CsvSource({
    "400 kg, 2 %, 0 %, 78.45, 196.1",
    "400 kg, 2 %, 1 %, 117.7, 235.3",
    "800 kg, 1.5 %, 2 %, 274.5, 451.0",
    "300 kg, 0.5 %, 0.5 %, 29.42, 51.48",
  })
  void force_that_moves_the_leaf(
      String mass, String resistance, String grade, double newtons, double start) {
    Worked.out("leaf-force", "mass=" + mass, "resistance=" + resistance, "grade=" + grade)
        .gives("up-low", newtons)
        .gives("up-high", newtons)
        .gives("start", start);
  }

  @Test
  void usual_force_of_a_leaf_on_its_track() {
    // Worked by hand: 400 kg at 1 % 39.23 N, at 3 % 117.7 N, on cantilever rollers 196.1 N; 3 %
    // down
    // at c 2 % -39.21 N.
    Worked.out("leaf-force", "mass=400 kg")
        .gives("up-low", 39.23)
        .gives("up-high", 117.7)
        .doesNotTell("down-low")
        .means("39.2 N (8.82 lbf) to 118 N (26.5 lbf)");
    Worked.out("leaf-force", "mass=400 kg", "support=cantilever").gives("up-high", 196.1);
    Worked down =
        Worked.out("leaf-force", "mass=400 kg", "resistance=2 %", "grade=3 %", "wind=2648 N")
            .gives("down-low", -39.21)
            .gives("wind-high", 662.0)
            .means("run downhill by itself");
    assertThat(down.solution().sheet().notes()).contains(Cautions.RELEASE);
  }

  @Test
  void a_spring_scale_tells_track_and_wheels() {
    // The inverse of the worked forces: 600 kg, 2 degrees (3.492 %), 381.8 N is 3 %.
    Worked.out("scale-reading", "force=381.8 N", "mass=600 kg", "grade=3.492077 %")
        .gives("resistance", 3.000)
        .means("rolls as it should");
    Worked.out("scale-reading", "force=60 lbf", "mass=880 lb")
        .gives("resistance", 6.818)
        .means("The leaf drags", "no longer rolling");
    Worked.out("scale-reading", "force=10 N", "mass=400 kg", "grade=2 %").means("is not possible");
    Worked.out("scale-reading", "force=20 N", "mass=400 kg").means("very easily");
    Worked.out("scale-reading", "force=110 N +- 15 N", "mass=400 kg")
        .means("rolls as it should", "too near to 3 % to be sure of");
    Worked.out("scale-reading", "force=20 N", "mass=400 kg", "grade=1 %", "direction=down")
        .gives("resistance", 1.510)
        .means("rolls as it should");
  }

  @Test
  void wheels_tell_their_resistance() {
    // Worked by hand with the table's coefficients: 4 in wheel, 1/2 in axle, 13.63 lbf on 1000 lb.
    Worked.out("wheel-resistance", "wheel=4 in", "axle=0.5 in", "mass=1000 lb")
        .gives("resistance", 1.363)
        .gives("force", 13.63 * 4.44822);
    Worked.out("wheel-resistance", "wheel=4 in", "axle=0.75 in", "bearing=plain")
        .gives("resistance", 3.188);
    assertThatThrownBy(() -> Worked.out("wheel-resistance", "wheel=50 mm", "axle=60 mm"))
        .hasMessageContaining("The axle is as thick as the wheel");
  }

  @Test
  void wind_on_the_leaf() {
    // ASCE 7 worked with a gust factor of 0.85 apart: 6 m by 1.8 m, 20 m/s, solidity 0.2, 810.3 N.
    Worked.out("wind-force", "wind=20 m/s", "width=6 m", "height=1.8 m", "filled=20 %")
        .gives("across", 810.3 / 0.85)
        .gives("drive-high", 810.3 / 0.85 / 4);
    // 50 mph is 6.400 psf: on 100 ft2 of boards with 1.3, 832 lbf.
    Worked gale =
        Worked.out("wind-force", "wind=50 mph", "width=20 ft", "height=5 ft", "filled=100 %")
            .gives("across", 832 * 4.44822, 3);
    assertThat(gale.solution().meaning().notes()).hasSize(1);
  }

  // Worked by hand: 1.5 A + F v/(0.6 V) to 2.5 A + F v/(0.35 V), 200 N at 0.3 m/s on 24 V.
  @ParameterizedTest
  @CsvSource({"7 A, fits the force", "12 A, is more than", "3 A, is less than"})
  void current_of_the_motor(String measured, String meaning) {
    Worked.out("motor-current", "force=200 N", "speed=0.3 m/s", "measured=" + measured)
        .gives("low", 1.5 + 60 / 14.4)
        .gives("high", 2.5 + 60 / 8.4)
        .gives("power", 60)
        .means(meaning);
  }

  @Test
  void energy_of_the_moving_leaf() {
    // Worked by hand: 600 kg at 0.3 m/s 27 J, over 50 mm 540 N; 400 kg at 0.1 m/s on 500 N/mm 1414
    // N,
    // and 400 N from 0.02828 m/s.
    Worked.out("leaf-energy", "mass=600 kg", "speed=0.3 m/s")
        .gives("energy", 27.00)
        .gives("mean-force", 540.0)
        .means("already more than the 400 N (89.9 lbf)");
    Worked.out("leaf-energy", "mass=400 kg", "speed=0.1 m/s")
        .gives("hard-peak", 1414)
        .gives("speed-400", 0.02828)
        .means("only a measured curve shows it");
    Worked.out("leaf-energy", "mass=1000 kg", "speed=1 ft/s").gives("energy", 46.45);
  }

  @Test
  void way_to_a_stop() {
    // Worked by hand: 400 kg, 0.2 m/s on 78.45 N alone, 0.1 s before: 122.0 mm; 300 N more and 1 %,
    // 0.3 m/s, 0.05 s: 68.06 mm.
    Worked.out("stopping-distance", "mass=400 kg", "speed=0.2 m/s")
        .gives("distance", 122.0)
        .gives("time", 1.120)
        .gives("energy", 8.000);
    Worked.out(
            "stopping-distance",
            "mass=400 kg",
            "speed=0.3 m/s",
            "braking=300 N",
            "delay=50 ms",
            "resistance=1 %")
        .gives("distance", 68.06);
    Worked runs =
        Worked.out("stopping-distance", "mass=400 kg", "speed=0.2 m/s", "grade=-3 %")
            .gives("force", -39.21)
            .doesNotTell("distance")
            .means("It does not stop", "more than 39.2 N");
    assertThat(runs.solution().meaning().notes()).contains(Cautions.RELEASE);
  }

  @Test
  void a_released_leaf_runs_away() {
    // Worked by hand: 39.21 N on 400 kg, 0.09803 m/s², after 5 m 0.990 m/s in 10.10 s; 196.1 J.
    Worked runs =
        Worked.out("leaf-released", "grade=3 %", "mass=400 kg", "resistance=2 %")
            .gives("acceleration", 0.09803)
            .gives("speed", 0.9901)
            .gives("time", 10.10)
            .gives("holding", 39.21)
            .gives("energy", 196.1)
            .means("runs downhill", "nobody stops it by hand");
    assertThat(runs.solution().meaning().notes())
        .anyMatch(note -> note.word() == Caution.Word.DANGER);
  }

  @Test
  void a_leaf_that_stays_is_not_trusted() {
    Worked.out("leaf-released", "grade=0.8 %", "mass=400 kg")
        .doesNotTell("time")
        .gives("edge", 1)
        .means("stays where it is", "Chock it all the same");
    Worked.out("leaf-released", "grade=0.1 %", "mass=880 lb").means("Keep a hand on it");
  }

  // 400 kg on 5 %, worked by hand: sin a 0.04994, cos a 0.99875; 3922.66 N x (2.5 x 0.03 x 0.99875
  // +
  // 0.04994) = 489.7 N; without slope 2.5 x 117.7 N.
  @Test
  void a_slope_takes_its_share_of_the_weight_once_when_the_leaf_starts() {
    Worked.out("leaf-force", "mass=400 kg", "grade=5 %").gives("start", 489.7);
    Worked.out("leaf-force", "mass=400 kg").gives("start", 294.2);
  }

  @Test
  void a_range_that_is_one_number_is_told_once() {
    Worked.out("leaf-force", "mass=400 kg", "grade=1 %", "resistance=1 %", "wind=0 N")
        .means("should show 78.4 N (17.6 lbf) uphill", "needs 0 N (0 lbf) more");
  }

  // tan 2 deg is 3.492 %; 1/4 in on 12 in 2.083 %; 5 mm on 1000 mm 0.5 %.
  @ParameterizedTest
  @CsvSource({
    "2 deg, 3.492",
    "2 degrees, 3.492",
    "2°, 3.492",
    "1/4 in/ft, 2.0833",
    "0.25\" / ft, 2.0833",
    "5 mm/m, 0.5",
    "5 mm per m, 0.5",
    "3 %, 3",
    "3, 3",
  })
  void a_grade_is_typed_as_the_level_tells_it(String typed, double percent) {
    Worked.out("leaf-force", "mass=400 kg", "resistance=0 %", "grade=" + typed)
        .gives("up-low", 3922.66 * Math.sin(Math.atan(percent / 100)));
  }
}
