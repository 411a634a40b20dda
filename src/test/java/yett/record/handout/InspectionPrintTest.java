package yett.record.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.calculation.ForceCurve;
import yett.calculation.ForceSample;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.InspectionKind;
import yett.knowledge.Letterhead;
import yett.knowledge.Role;
import yett.paper.Page;
import yett.paper.PdfFile;
import yett.record.drawing.ForceChart;
import yett.record.handout.HandOut.Part;
import yett.testing.Shipped;

/** The sheet of an inspection with forces and a trend, as a printer gets it. */
class InspectionPrintTest {
  private static final float DPI = 254;

  /** Dots from the edge of the paper, where the words beside the axis are passed. */
  private static final int RIGHT_OF_THE_AXIS = 450;

  private static final Instant DAY = Instant.parse("2026-03-02T09:00:00Z");
  static final Moment MOMENT = moment();

  private static Event.Earlier sag(int years, double millimetres, boolean baseline) {
    Instant at = DAY.minus(Duration.ofDays(365L * years));
    return new Event.Earlier("chain-sag", millimetres, at, baseline);
  }

  /** Half a sine of 0.4 s up to 380 N, then 20 N: what a meter draws. */
  private static ForceCurve curve() {
    List<ForceSample> samples = new ArrayList<>();
    for (int i = 0; i <= 1200; i++) {
      double time = i * 0.005;
      double blow = time > 0.1 && time < 0.5 ? 380 * Math.sin(Math.PI * (time - 0.1) / 0.4) : 0;
      samples.add(new ForceSample(time, Math.max(blow, time < 0.1 ? 0 : 20)));
    }
    return new ForceCurve(samples);
  }

  private static Event force(Event.Height height, double peak, List<Double> curve) {
    return new Event.ForceTaken(
        "reversal-closing", 50, height, peak, 0.42, Optional.of(20.0), curve);
  }

  private static Moment moment() {
    return moment(
        InspectionKind.SERVICE, List.of(sag(3, 62, true), sag(1, 75, false), sag(2, 69, false)));
  }

  private static Moment moment(InspectionKind kind, List<Event.Earlier> earlier) {
    List<Event> events =
        List.of(
            new Event.Opened("Net loft", Role.TECHNICIAN, "any", Optional.of(kind), earlier),
            new Event.SiteTaken(),
            new Event.Answered("chain-sag", new Answer.Read("82 mm", 82)),
            force(Event.Height.LOW, 380, Event.ForceTaken.thinned(curve(), 0.11)),
            force(Event.Height.LOW, 370, List.of()),
            force(Event.Height.LOW, 372, List.of()),
            force(Event.Height.MIDDLE, 452, List.of()),
            new Event.Answered("reversal-closing", new Answer.Chosen("fail")));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, DAY, Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.at(entries);
    }
  }

  private static PDDocument pdf(String paper) throws IOException {
    Letterhead f = HandOutTest.FIRM;
    Letterhead firm =
        new Letterhead(
            f.name(), f.address(), f.telephone(), f.mail(), Optional.empty(), f.currency(), paper);
    return Loader.loadPDF(
        PdfFile.of(HandOutTest.html(firm, MOMENT, "Net loft", EnumSet.of(Part.CUSTOMER))));
  }

  @Test
  void the_sheet_tells_forces_with_their_limits_and_what_heads_for_a_limit() throws IOException {
    try (PDDocument document = pdf("A4")) {
      String words =
          new PDFTextStripper().getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " ");
      assertThat(words)
          .contains(
              "Changed, or heading for a limit",
              "rises by 6.6 mm a year",
              "at this rate it reaches 90 mm")
          .contains("in about 15 months")
          .contains("Force on an obstruction (EN 12453)")
          .contains("gap 50 mm, 50 mm above the ground 374 N 400 N 420 ms 750 ms within the limits")
          .contains("gap 50 mm, at the middle 452 N 400 N 420 ms 750 ms over the limits");
      assertThat(words).doesNotContain("chain-sag", "reversal-closing", " dB");
    }
  }

  @Test
  void what_passed_and_has_surely_changed_is_told() {
    EnumSet<Part> parts = EnumSet.of(Part.CUSTOMER);
    Moment hangs = moment(InspectionKind.SERVICE, List.of(sag(1, 52, true)));
    assertThat(HandOutTest.html(HandOutTest.FIRM, hangs, "Net loft", parts))
        .contains("Chain sag: 82 mm; it has changed: 52 mm on ")
        .contains("and 36 mm to 68 mm would mean no change");
    Moment maybe = moment(InspectionKind.SERVICE, List.of(sag(1, 62, true)));
    assertThat(HandOutTest.html(HandOutTest.FIRM, maybe, "Net loft", parts))
        .as("80.6 mm would mean no change, and a tape reads to 5 mm")
        .doesNotContain("has changed");
  }

  @Test
  void baselines_have_a_column_only_where_there_is_one() {
    Moment first = moment(InspectionKind.COMMISSIONING, List.of());
    EnumSet<Part> parts = EnumSet.of(Part.CUSTOMER);
    assertThat(HandOutTest.html(HandOutTest.FIRM, MOMENT, "Net loft", parts))
        .contains(">Baseline<", "62 mm on");
    assertThat(HandOutTest.html(HandOutTest.FIRM, first, "Net loft", parts))
        .contains(">Chain sag<", "82")
        .doesNotContain("Baseline");
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void nothing_is_cut_off(String paper) throws IOException {
    try (PDDocument document = pdf(paper)) {
      assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(4);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        BufferedImage image =
            new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.RGB);
        int width = image.getWidth();
        assertThat(PrintedTest.isBlank(image, 0, 0, 150, image.getHeight())).isTrue();
        assertThat(PrintedTest.isBlank(image, width - 150, 0, 150, image.getHeight())).isTrue();
        assertThat(PrintedTest.isBlank(image, 0, 0, width, 120)).as("upper margin").isTrue();
        assertThat(PrintedTest.isBlank(image, 0, image.getHeight() - 40, width, 40))
            .as("lower edge")
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void nobody_signs_a_page_that_says_nothing_else(String paper) throws IOException {
    try (PDDocument document = pdf(paper)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String words = stripper.getText(document).replace('\u00a0', ' ');
        assertThat(words.contains("name, date, signature"))
            .isEqualTo(words.contains("Not inspected"));
      }
    }
  }

  /** The chart has 36 mm for a tenth more than the 400 N that are allowed: 380 N are 31.1 mm. */
  @Test
  void the_curve_is_to_scale_on_paper_within_a_millimetre() throws IOException {
    Event.ForceTaken taken =
        (Event.ForceTaken) force(Event.Height.LOW, 380, Event.ForceTaken.thinned(curve(), 0.11));
    String html = Page.of("Force", "Force", "A4", page -> new ForceChart(taken).draw(page));
    try (PDDocument document = Loader.loadPDF(PdfFile.of(html))) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.RGB);
      int first = Integer.MAX_VALUE;
      int last = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = RIGHT_OF_THE_AXIS; x < image.getWidth(); x++) {
          if ((image.getRGB(x, y) & 0xffffff) == 0x1b4f8a) {
            first = Math.min(first, y);
            last = Math.max(last, y);
          }
        }
      }
      assertThat((last - first) / 10.0).isBetween(30.1, 32.1);
    }
  }
}
