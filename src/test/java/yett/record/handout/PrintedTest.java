package yett.record.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.knowledge.Letterhead;
import yett.paper.Page;
import yett.paper.PdfFile;
import yett.record.drawing.GateShape;
import yett.record.drawing.Plan;
import yett.record.drawing.Spots;
import yett.record.handout.HandOut.Part;
import yett.testing.HarrowQuay;
import yett.testing.Shipped;

/**
 * The paper as a printer gets it: its pages are drawn, and looked at by a program. The picture in
 * the docs is one of them: {@code mvn test -Dtest=PrintedTest -Dyett.write=true}.
 */
class PrintedTest {
  /** Ten dots a millimetre. */
  private static final float DPI = 254;

  private static final Path PICTURE = Path.of("docs/figures/record.png");

  private static byte[] pdf(String paper, Set<Part> parts) {
    Letterhead f = HandOutTest.FIRM;
    Letterhead firm =
        new Letterhead(
            f.name(), f.address(), f.telephone(), f.mail(), Optional.empty(), f.currency(), paper);
    return PdfFile.of(HandOutTest.html(firm, HandOutTest.CHANDLER, HarrowQuay.CHANDLER, parts));
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void it_has_few_pages_of_the_right_size_and_nothing_is_cut_off(String paper) throws IOException {
    try (PDDocument customer = Loader.loadPDF(pdf(paper, EnumSet.of(Part.CUSTOMER)));
        PDDocument both = Loader.loadPDF(pdf(paper, EnumSet.of(Part.CUSTOMER, Part.TECHNICIAN)))) {
      assertThat(customer.getNumberOfPages()).isLessThanOrEqualTo(2);
      assertThat(both.getNumberOfPages()).isLessThanOrEqualTo(5);
      double width = paper.equals("A4") ? 210 : 215.9;
      double height = paper.equals("A4") ? 297 : 279.4;
      for (int page = 0; page < both.getNumberOfPages(); page++) {
        BufferedImage image = new PDFRenderer(both).renderImageWithDPI(page, DPI, ImageType.RGB);
        assertThat(image.getWidth())
            .isCloseTo((int) (10 * width), org.assertj.core.data.Offset.offset(2));
        assertThat(image.getHeight())
            .isCloseTo((int) (10 * height), org.assertj.core.data.Offset.offset(2));
        assertThat(isBlank(image, 0, 0, 150, image.getHeight())).as("left margin").isTrue();
        assertThat(isBlank(image, image.getWidth() - 150, 0, 150, image.getHeight()))
            .as("right margin")
            .isTrue();
        assertThat(isBlank(image, 0, 0, image.getWidth(), 120)).as("upper margin").isTrue();
        assertThat(isBlank(image, 0, image.getHeight() - 40, image.getWidth(), 40))
            .as("lower edge")
            .isTrue();
        int filled = image.getHeight() / 3;
        assertThat(isBlank(image, 0, filled, image.getWidth(), image.getHeight() - filled - 200))
            .as("page %s is nearly empty", page + 1)
            .isFalse();
      }
    }
  }

  static boolean isBlank(BufferedImage image, int x, int y, int width, int height) {
    for (int i = x; i < x + width; i++) {
      for (int j = y; j < y + height; j++) {
        if ((image.getRGB(i, j) & 0xffffff) != 0xffffff) {
          return false;
        }
      }
    }
    return true;
  }

  /** The first page that shows this colour. */
  private static BufferedImage pageWith(PDDocument document, int colour) throws IOException {
    PDFRenderer renderer = new PDFRenderer(document);
    for (int page = 0; page < document.getNumberOfPages(); page++) {
      BufferedImage image = renderer.renderImageWithDPI(page, DPI, ImageType.RGB);
      if (edges(image, colour, 0, image.getHeight(), 100)[1] > 0) {
        return image;
      }
    }
    throw new AssertionError("no page with the colour " + Integer.toHexString(colour));
  }

  /** 0.4 m by 0.75 m at 1 : 50: 8 mm by 15 mm of paper, the operator's colour. */
  @Test
  void the_drawing_is_to_scale_on_paper_within_a_millimetre() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf("A4", EnumSet.of(Part.CUSTOMER)))) {
      BufferedImage image = pageWith(document, 0xc4d3e6);
      int[] operator = edges(image, 0xc4d3e6, 0, image.getHeight(), 100);
      assertThat((operator[1] - operator[0]) / 10.0).isBetween(7.0, 9.0);
      assertThat((operator[3] - operator[2]) / 10.0).isBetween(14.0, 16.0);
      // From post to post: 6 m.
      assertThat(gap(image, 0xe4e4e4, operator[2], operator[3], 60) / 10.0).isBetween(119.0, 121.0);
    }
  }

  /** The gate from above, for the next technician: 6 m at 1 : 50, an operator of 8 mm by 6 mm. */
  @Test
  void the_plan_is_to_scale_on_paper_within_a_millimetre() throws IOException {
    GateShape shape = GateShape.of(HandOutTest.CHANDLER, Shipped.BASE);
    String html =
        Page.of("Gate", "Gate", "Letter", page -> new Plan(shape, new Spots(shape)).draw(page));
    try (PDDocument document = Loader.loadPDF(PdfFile.of(html))) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.RGB);
      int[] operator = edges(image, 0xc4d3e6, 0, image.getHeight(), 40);
      assertThat((operator[1] - operator[0]) / 10.0).isBetween(7.0, 9.0);
      assertThat((operator[3] - operator[2]) / 10.0).isBetween(5.0, 7.0);
      assertThat(gap(image, 0xe4e4e4, 0, image.getHeight(), 15) / 10.0).isBetween(119.0, 121.0);
    }
  }

  /** The most columns in a row that a colour does not fill, between some that it does. */
  private static int gap(BufferedImage image, int colour, int from, int to, int least) {
    int widest = 0;
    int before = image.getWidth();
    for (int x = 0; x < image.getWidth(); x++) {
      int dots = 0;
      for (int y = from; y < to; y++) {
        dots += (image.getRGB(x, y) & 0xffffff) == colour ? 1 : 0;
      }
      if (dots >= least) {
        widest = Math.max(widest, x - before);
        before = x;
      }
    }
    return widest;
  }

  /**
   * First and last column, first and last row of a colour, as far as it fills columns.
   *
   * @param least dots of it in a column that counts
   */
  private static int[] edges(BufferedImage image, int colour, int from, int to, int least) {
    int[] edges = {Integer.MAX_VALUE, 0, Integer.MAX_VALUE, 0};
    for (int x = 0; x < image.getWidth(); x++) {
      int first = Integer.MAX_VALUE;
      int last = 0;
      int dots = 0;
      for (int y = from; y < to; y++) {
        if ((image.getRGB(x, y) & 0xffffff) == colour) {
          first = Math.min(first, y);
          last = y;
          dots++;
        }
      }
      if (dots >= least) {
        edges[0] = Math.min(edges[0], x);
        edges[1] = x;
        edges[2] = Math.min(edges[2], first);
        edges[3] = Math.max(edges[3], last);
      }
    }
    return edges;
  }

  @Test
  void its_fonts_are_inside_and_a_screen_reader_finds_its_way() throws IOException {
    try (PDDocument document =
        Loader.loadPDF(pdf("A4", EnumSet.of(Part.CUSTOMER, Part.TECHNICIAN)))) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          fonts++;
        }
      }
      assertThat(fonts).isPositive();
      var catalog = document.getDocumentCatalog();
      assertThat(catalog.getMarkInfo().isMarked()).isTrue();
      assertThat(catalog.getLanguage()).isEqualTo("en");
      assertThat(catalog.getStructureTreeRoot()).isNotNull();
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Record of work: Chandler's gate");
      assertThat(new PDFTextStripper().getText(document).replace('\u00a0', ' '))
          .contains("Chain too slack", "190 mm", "in order")
          .doesNotContain("#");
    }
  }

  @Test
  void the_docs_show_one() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf("A4", EnumSet.of(Part.CUSTOMER)))) {
      BufferedImage image = sideBySide(new PDFRenderer(document), document.getNumberOfPages());
      if (Boolean.getBoolean("yett.write")) {
        ImageIO.write(image, "png", PICTURE.toFile());
      }
      assertThat(Files.exists(PICTURE)).isTrue();
      BufferedImage shown = ImageIO.read(PICTURE.toFile());
      assertThat(shown.getWidth()).isEqualTo(image.getWidth());
      assertThat(shown.getHeight()).isEqualTo(image.getHeight());
    }
  }

  private static BufferedImage sideBySide(PDFRenderer pages, int count) throws IOException {
    BufferedImage first = pages.renderImageWithDPI(0, 80, ImageType.RGB);
    BufferedImage all =
        new BufferedImage(first.getWidth() * count, first.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int page = 0; page < count; page++) {
      all.createGraphics()
          .drawImage(
              pages.renderImageWithDPI(page, 80, ImageType.RGB), page * first.getWidth(), 0, null);
    }
    return all;
  }
}
