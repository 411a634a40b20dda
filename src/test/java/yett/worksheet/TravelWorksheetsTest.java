package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TravelWorksheetsTest {
  @Test
  void time_of_a_run() {
    // Worked by hand: 6 m at 0.3 m/s, 0.3 m/s² both ways, the last 0.3 m at 0.1 m/s: 22.72 s.
    Worked.out("travel-time", "opening=6 m", "speed=0.3 m/s")
        .gives("time", 22.72)
        .gives("usual-low", 22)
        .gives("usual-high", 26);
    // Without zones: 6 m, 0.3 m/s, 0.3 and 0.15 m/s²: 21.50 s; too short for full speed: 3.464 s.
    Worked.out(
            "travel-time",
            "opening=6 m",
            "speed=0.3 m/s",
            "slowing-down=0.15 m/s2",
            "slow-end=0 m",
            "measured=28 s")
        .gives("time", 21.50)
        .means("Too slow, ", "are usual: 28 s, worked out 21.5 s");
    Worked.out(
            "travel-time",
            "opening=0.3 m",
            "speed=0.3 m/s",
            "speeding-up=0.1 m/s2",
            "slowing-down=0.1 m/s2",
            "slow-end=0 m")
        .gives("time", 3.464);
  }

  @Test
  void speed_has_a_limit_of_its_own() {
    // Worked by hand: 12 ft in 11 s are 1.091 ft/s, over the 1 ft/s of UL 325.
    Worked.out("travel-time", "opening=12 ft", "speed=1.091 ft/s", "measured=12 s")
        .means("more than the 1 ft/s");
    Worked.out("travel-time", "opening=12 ft", "speed=0.9 ft/s", "measured=10 s")
        .means("Maybe a slow-down is missing");
  }

  @Test
  void zones_that_do_not_fit() {
    assertThatThrownBy(
            () -> Worked.out("travel-time", "opening=0.5 m", "speed=0.3 m/s", "slow-end=0.4 m"))
        .hasMessageContaining("take more room than there is");
    assertThatThrownBy(
            () -> Worked.out("travel-time", "opening=5 m", "speed=0.3 m/s", "slow-speed=0.4 m/s"))
        .hasMessageContaining("slow-speed must be below speed");
  }

  @Test
  void turns_of_the_motor() {
    // Geometry: 12 teeth of 12.7 mm are 152.4 mm, a thirtieth 5.08 mm; 3000 a minute 0.254 m/s;
    // 1 - cos(15 deg) is 3.407 %.
    Worked.out(
            "chain-travel",
            "chain=40",
            "ratio=30",
            "turns=1000",
            "per-minute=3000",
            "opening=5.08 m")
        .gives("per-turn", 5.08)
        .gives("per-sprocket", 152.4)
        .gives("travel", 5.08)
        .gives("speed", 0.254)
        .gives("needed", 1000)
        .gives("ripple", 3.407)
        .means("moves the stop by 5.08 mm (0.2 in)");
    Worked.out("chain-travel", "chain=41", "teeth=10", "ratio=20")
        .doesNotTell("travel")
        .gives("ripple", 4.894)
        .means("which can be heard");
  }

  @Test
  void limits_after_links_were_taken_out() {
    // Geometry: two pitches of 12.7 mm are 25.4 mm, a sixth of a turn of 12 teeth, 5 of 30.
    Worked.out("limit-shift", "chain=40", "ratio=30")
        .gives("shift", 25.4)
        .gives("sprocket-turns", 1 / 6.0)
        .gives("motor-turns", 5)
        .means("25.4 mm (1 in) further open", "Teach the limits again", "off by 5 turns");
    Worked.out("limit-shift", "chain=50", "links=4", "end=near")
        .gives("shift", 63.5)
        .doesNotTell("motor-turns")
        .means("further closed");
  }

  @Test
  void place_of_the_marker() {
    // Geometry: 5.2 m run, marker at 2.7 m: 2.5 m before the idler, at the sensor 0.15 m later.
    Worked.out("marker-place", "run=5.2 m", "marker=2.7 m", "opening=5 m")
        .says("closed", "2.5\u00a0m (8.2\u00a0ft) before the first idler")
        .gives("at-sensor", 2.65)
        .gives("wheels-from", 2.5)
        .gives("wheels-to", 2.8)
        .gives("clearance", 0)
        .means("2.65 m (8.69 ft) open", "It runs over the wheels");
    Worked.out("marker-place", "run=5.2 m", "marker=50 mm", "opening=5 m", "sensor=-200 mm")
        .gives("at-sensor", 4.95)
        .gives("clearance", 150)
        .doesNotTell("wheels-from")
        .means("never comes nearer to the wheels than 150 mm (5.91 in)");
    Worked.out("marker-place", "run=5.2 m", "marker=5.25 m", "opening=5 m")
        .means("closed it rests nearer than 50 mm");
    Worked.out("marker-place", "run=5.2 m", "marker=6 m", "opening=5 m")
        .doesNotTell("at-sensor")
        .means("never passes the sensor");
  }

  @Test
  void search_for_the_marker() {
    // Worked by hand: 6 m, marker at 1 m, towards open first: 10 m at the worst, from 4 m 2 + 5 m.
    Worked.out("marker-search", "opening=6 m", "at-sensor=1 m", "stands=4 m")
        .gives("longest", 10)
        .gives("longest-time", 100)
        .gives("from-here", 7)
        .gives("time-from-here", 70)
        .means("Give it 100 s", "10 m (32.8 ft) of creeping");
    Worked.out("marker-search", "opening=20 ft", "at-sensor=10 ft", "first=closed")
        .gives("longest", 20 * 0.3048)
        .doesNotTell("from-here");
    assertThatThrownBy(() -> Worked.out("marker-search", "opening=6 m", "at-sensor=7 m"))
        .hasMessageContaining("beyond the opening");
    assertThatThrownBy(
            () -> Worked.out("marker-search", "opening=6 m", "at-sensor=3 m", "stands=7 m"))
        .hasMessageContaining("cannot be further open");
  }

  // 5 m at 0.25 m/s, and 2 s to 6 s for slow-downs that nobody measured: 22 s to 26 s.
  @Test
  void a_time_within_what_is_usual_is_not_too_slow() {
    Worked.out("travel-time", "opening=5 m", "speed=0.25 m/s", "measured=25.9 s")
        .means("runs as it should, 22 s to 26 s are usual");
    Worked.out("travel-time", "opening=5 m", "speed=0.25 m/s", "measured=26.1 s")
        .means("Too slow, 22 s to 26 s");
    // A zone of 1 m at 0.1 m/s, worked by hand: 10 s for it, 16 s before it and 0.55 s for ramps.
    Worked.out("travel-time", "opening=5 m", "speed=0.25 m/s", "slow-end=1 m", "measured=27.5 s")
        .means("runs as it should");
  }
}
