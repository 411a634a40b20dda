package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainWorksheetsTest {
  // Worked in pounds and inches from w L²/(8 s): chain, span, sag, lbf.
  @ParameterizedTest
  @CsvSource({"40, 12 ft, 3 in, 29.52", "40, 12 ft, 6 in, 14.76", "41, 20 ft, 4 in, 42.00"})
  void tension_of_a_hanging_chain(String chain, String span, String sag, double poundsForce) {
    Worked.out("chain-sag", "chain=" + chain, "span=" + span, "sag=" + sag)
        .gives("parabola", poundsForce * 4.4482216);
  }

  @Test
  void parabola_and_catenary_side_by_side() {
    // Worked by hand for w 5.982 N/m (0.61 kg/m), 5 m, 100 mm: 186.9, 187.0 and 187.6 N.
    Worked.out("chain-sag", "chain=40", "span=5 m", "sag=100 mm")
        .gives("parabola", 186.9)
        .gives("catenary", 187.0)
        .gives("at-supports", 187.6)
        .gives("slack-length", 5.329)
        .means("The chain is slack", "43.3 mm (1.7 in) to 86.6 mm (3.41 in)");
  }

  @Test
  void movement_by_hand_is_not_the_sag() {
    // Complete Guide to Chain, 7.1.2: 4 % of 5 m is 200 mm of movement; 0.4330 of it is the sag.
    Worked.out("chain-sag", "chain=40", "span=5 m", "sag=150 mm", "read-as=movement")
        .gives("static-sag", 64.95)
        .gives("movement", 150.0)
        .means("hangs as it should");
    Worked.out("chain-allowance", "span=5 m")
        .gives("movement-low", 100)
        .gives("movement-high", 200)
        .gives("sag-high", 86.60)
        .means("by hand it moves 100 mm (3.94 in) to 200 mm (7.87 in)");
  }

  @Test
  void a_tight_chain_is_said_to_be() {
    Worked.out("chain-sag", "chain=50", "span=5 m", "sag=20 mm").means("too tight", "all day");
  }

  @Test
  void a_deep_sag_goes_by_the_catenary() {
    // Worked by hand: 4 m, 800 mm: 14.96 N by the parabola, 15.69 N by the catenary.
    Worked.out("chain-sag", "chain=40", "span=4 m", "sag=800 mm")
        .gives("parabola", 14.96)
        .gives("catenary", 15.69)
        .means("20 % of the span the catenary counts");
    assertThatThrownBy(() -> Worked.out("chain-sag", "chain=40", "span=1 m", "sag=1.2 m"))
        .hasMessageContaining("The sag is more than the span");
  }

  @Test
  void take_up_by_bolts_or_by_links() {
    // Worked by hand from 8 (s1² - s2²)/(3 L): 16 ft, 6 in to 3 in, 0.3750 in; 5 m, 250 to 100 mm,
    // 28.00 mm, of which two pitches of 12.7 mm leave 2.60 mm.
    Worked.out("chain-take-up", "chain=40", "span=16 ft", "sag=6 in", "wanted=3 in")
        .gives("take-up", 9.525)
        .gives("links", 0)
        .means("Turn the tension bolts in by 9.53 mm (0.375 in)", "one alone would need an offset");
    Worked.out("chain-take-up", "chain=40", "span=5 m", "sag=250 mm", "wanted=100 mm")
        .gives("take-up", 28.00)
        .gives("links", 2)
        .gives("bolts", 2.60, 1e-6)
        .means("Take out 2 pitches (1 pair", "limits are off by up to 25.4 mm (1 in)");
    Worked.out(
            "chain-take-up", "chain=40", "span=5 m", "sag=250 mm", "wanted=100 mm", "thread=40 mm")
        .gives("links", 0)
        .means("no link has to come out");
    Worked.out("chain-take-up", "chain=40", "span=5 m", "sag=150 mm", "thread=5 mm")
        .means("The thread does not go so far");
    Worked.out("chain-take-up", "chain=40", "span=5 m", "sag=50 mm", "wanted=90 mm")
        .doesNotTell("links")
        .means("let out");
  }

  // Worked by hand: chain span and sag in inches, pitches, sag left in inches.
  @ParameterizedTest
  @CsvSource({"144, 6, 1, 3.000", "240, 10, 2, 3.162"})
  void links_taken_out_lower_the_sag(double span, double sag, int links, double left) {
    Worked.out(
            "chain-links",
            "chain=40",
            "span=" + span + " in",
            "sag=" + sag + " in",
            "links=" + links)
        .gives("sag-after", left * 25.4);
  }

  @Test
  void a_chain_that_would_not_close() {
    // Worked by hand: two pitches of 1/2 in on 5 m take 218.2 mm of sag.
    Worked.out("chain-links", "chain=40", "span=5 m", "sag=150 mm")
        .gives("needed-sag", 218.2)
        .doesNotTell("sag-after")
        .means("would not close", "218 mm (8.59 in)");
    Worked.out("chain-links", "chain=40", "span=5 m", "sag=219 mm").means("too tight");
    Worked.out("chain-links", "chain=40", "span=5 m", "sag=300 mm", "links=3")
        .means("take out 2 or 4.");
    Worked.out("chain-links", "chain=40", "span=5 m", "sag=300 mm", "links=1")
        .means("take out 2 or none.");
  }

  // Worked by hand from 100 (M - n P)/(n P): chain, pitches, measured, percent, verdict.
  @ParameterizedTest
  @CsvSource({
    "40, 24, 309.2 mm, 1.444, may stay",
    "50, 20, 322.3 mm, 1.512, worn out",
    "41, 24, 12.21 in, 1.750, worn out",
    "40, 24, 12.18 in, 1.500, worn out",
    "40, 24, 12.36 in, 3.000, worn out",
    "50, 20, 12.80 in, 2.400, worn out",
  })
  void wear_of_a_chain(String chain, int pitches, String measured, double percent, String verdict) {
    Worked.out("chain-elongation", "chain=" + chain, "pitches=" + pitches, "measured=" + measured)
        .gives("elongation", percent)
        .means(verdict);
  }

  @Test
  void wear_has_its_limits() {
    // Chain handbooks: 3 % with a tensioner, 200/80 = 2.5 % for 80 teeth; 24 pitches at 1.5 %
    // 309.4.
    Worked.out(
            "chain-elongation", "chain=40", "pitches=24", "measured=12.2 in", "centres=tensioned")
        .gives("limit", 3)
        .means("may stay");
    Worked.out(
            "chain-elongation",
            "chain=40",
            "pitches=24",
            "measured=12.2 in",
            "centres=tensioned",
            "teeth=80")
        .gives("limit", 2.5);
    Worked.out("chain-elongation", "chain=40", "pitches=24", "measured=306 mm", "whole=10.05 m")
        .gives("limit-length", 309.4)
        .gives("grown", 39.4, 0.5)
        .means("shows as slack");
    Worked.out("chain-elongation", "chain=40", "pitches=24", "measured=304 mm")
        .means("Shorter than new");
  }

  @Test
  void a_tape_limits_what_wear_can_be_told() {
    // Worked by hand: 1/16 in over 12 in is 0.5208 %, as a standard uncertainty 0.3007 %.
    Worked.out("chain-elongation", "chain=40", "pitches=24", "measured=12.1 in +- 0.0625 in")
        .isUncertainBy("elongation", 0.3007)
        .means("may stay: worn 0.833 %, to be replaced at 1.5 %");
    Worked.out("chain-elongation", "chain=40", "pitches=24", "measured=12.16 in +- 0.0625 in")
        .means("may stay", "With u = 0.301 % that is too near to 1.5 % to be sure of");
    Worked.out("chain-elongation", "chain=40", "pitches=96", "measured=48.4 in +- 0.0625 in")
        .isUncertainBy("elongation", 0.07518);
  }

  @Test
  void a_miscount_is_noticed() {
    assertThatThrownBy(
            () -> Worked.out("chain-elongation", "chain=40", "pitches=23", "measured=318 mm"))
        .hasMessageContaining("8.87 % over")
        .hasMessageContaining("Count the pitches again");
    assertThat(
            Worked.out("chain-elongation", "chain=40", "pitches=4", "measured=51 mm")
                .solution()
                .remarks())
        .hasSize(1);
  }

  // H = w L²/(8 s), No. 40 5.983 N/m and 1588 N of working load: 1.5 m that hang 10 mm pull with
  // 168 N,
  // 8 m that hang 40 mm with 1197 N; worked by hand. A fifth is 318 N.
  @Test
  void a_chain_is_tight_by_its_pull_and_not_by_its_sag_alone() {
    Worked.out("chain-sag", "chain=40", "span=1.5 m", "sag=10 mm")
        .gives("catenary", 168.3, 0.3)
        .gives("tight-below", 1000 * 5.983 * 2.25 / (8 * 317.7), 0.01)
        .means("which harms nothing");
    Worked.out("chain-sag", "chain=40", "span=1.5 m", "sag=5 mm").means("is too tight");
    Worked.out("chain-sag", "chain=40", "span=8 m", "sag=40 mm")
        .gives("load", 75.4, 0.1)
        .means("is too tight");
    Worked.out("chain-sag", "chain=40", "span=8 m", "sag=80 mm", "pull=1500 N")
        .gives("load", 132.1, 0.1)
        .means("of what it may be worked at");
    Worked.out("chain-links", "chain=40", "span=1.5 m", "sag=130 mm", "links=2")
        .gives("usual-low", 5.296, 0.01);
  }

  @Test
  void load_against_strength() {
    // ASME B29.1: 3125 lbf for No. 40; Complete Guide to Chain: 0.8 with a connecting link, hence
    // 3125 x 0.8/7 = 357.1 lbf.
    Worked.out("chain-load", "chain=40", "pull=300 lbf")
        .gives("strength", 13900, 2)
        .gives("factor", 10.42)
        .gives("allowed", 357.1 * 4.44822)
        .gives("used", 84.00)
        .means("strong enough: 10.4 times");
    Worked.out("chain-load", "chain=41", "pull=200 lbf", "hang=50 lbf", "joint=offset link")
        .gives("factor", 6.000)
        .means("Too much for this chain", "without the offset link");
  }

  @Test
  void sprockets_out_of_line() {
    // Complete Guide to Chain, fig. 7.7: 1 mm up to 1 m, 5 mm at 5 m; shafts 1/300.
    Worked.out("sprocket-alignment", "distance=0.6 m", "offset=0.8 mm")
        .gives("allowed", 1)
        .means("are in line");
    Worked.out("sprocket-alignment", "distance=5 m", "offset=8 mm", "lean=2 mm")
        .gives("allowed", 5)
        .gives("lean-allowed", 1)
        .means("up to 5 mm (0.197 in) is allowed", "shim the operator");
    Worked.out("sprocket-alignment", "distance=2 ft", "offset=1/4 in")
        .means("before the gate runs again");
  }
}
