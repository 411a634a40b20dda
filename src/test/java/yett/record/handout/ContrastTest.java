package yett.record.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.record.handout.HandOut.Part;
import yett.testing.HarrowQuay;

/** All words on a page can be read by whoever sees little contrast. */
class ContrastTest {
  /** WCAG 2.1, 1.4.3: text of ordinary size. */
  private static final double LEAST = 4.5;

  private static final Pattern OF_WORDS =
      Pattern.compile("(?<![-a-z])color: (#[0-9a-f]{6})|<text[^>]* fill=\"(#[0-9a-f]{6})\"");

  @Test
  void words_stand_out_from_white_paper_and_numbers_from_their_discs() {
    String page =
        HandOutTest.html(
            HandOutTest.FIRM, HandOutTest.CHANDLER, HarrowQuay.CHANDLER, EnumSet.allOf(Part.class));

    assertThatWordsStandOut(page, 5);
    // White numbers stand on red discs.
    assertThat(page).contains("fill=\"#a3221b\"");
  }

  @Test
  void so_do_those_of_an_inspection_with_forces_and_trends() {
    assertThatWordsStandOut(
        HandOutTest.html(
            HandOutTest.FIRM, InspectionPrintTest.MOMENT, "Net loft", EnumSet.of(Part.CUSTOMER)),
        3);
  }

  private static void assertThatWordsStandOut(String page, int colours) {
    assertThat(
            OF_WORDS
                .matcher(page)
                .results()
                .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                .distinct()
                .filter(colour -> !colour.equals("#ffffff")))
        .hasSizeGreaterThan(colours)
        .allSatisfy(
            colour -> assertThat(contrast(colour, "#ffffff")).as(colour).isGreaterThan(LEAST));
  }

  /** WCAG 2.1, definition of contrast ratio; black on white is 21. */
  private static double contrast(String one, String other) {
    double first = luminance(one);
    double second = luminance(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(String colour) {
    double[] share = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < share.length; i++) {
      double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += share[i] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  @Test
  void the_ratio_is_that_of_the_guideline() {
    assertThat(contrast("#000000", "#ffffff"))
        .isCloseTo(21, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(contrast("#777777", "#ffffff"))
        .isCloseTo(4.48, org.assertj.core.data.Offset.offset(0.005));
  }
}
