package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.paper.PdfFile;
import yett.replay.RecordedCase;
import yett.testing.Pages;
import yett.testing.Shipped;
import yett.trial.CasesBeside;

class CausePageTest {
  private static final Path SMALL = Path.of("src/test/resources/every-field");

  private static String page(String cause) {
    KnowledgeSource source = KnowledgeSource.folder(Path.of("knowledge"));
    RuleBase base = Shipped.BASE;
    List<RecordedCase> cases = CasesBeside.of(source.files(), base, "chain/").cases();
    return CausePage.of(cause, base, cases, "A4");
  }

  @Test
  void it_tells_all_that_the_cards_know_of_a_cause() {
    String text = Pages.parsed(page("chain-slack")).getDocumentElement().getTextContent();
    assertThat(text)
        .contains("Chain too slack", "at 6.5 of a hundred faulty gates")
        .contains("The chain is loose") // an effect
        .contains("How far does the long free run of the chain hang") // a sign
        .contains("What it is mistaken for", "The check that decides", "What puts it right")
        .contains(
            "Check first, however sure it looks: How far does the long free run") // of a repair
        .contains("slack-chain-after-winter") // a case
        .contains("chain handbooks"); // a source
    assertThat(text.indexOf("WARNING: "))
        .as("what can hurt stands before how it is done")
        .isBetween(0, text.indexOf("Hold a string taut from the bracket"));
  }

  @Test
  void a_bar_is_as_long_as_its_sign_is_frequent() {
    NodeList boxes = Pages.parsed(page("chain-slack")).getElementsByTagName("rect");
    Check check = Shipped.BASE.checks().get("chain-sag");
    double[] sag = check.likelihood().get("chain-slack");
    double most = Math.max(sag[check.indexOf("slack")], sag[check.indexOf("very-slack")]);
    List<Double> widths =
        java.util.stream.IntStream.range(0, boxes.getLength())
            .mapToObj(i -> boxes.item(i).getAttributes().getNamedItem("width").getNodeValue())
            .map(Double::valueOf)
            .toList();
    assertThat(widths).anySatisfy(w -> assertThat(w / 60).isBetween(most - 0.001, most + 0.001));
  }

  @Test
  void words_of_a_card_put_no_mark_on_the_page_and_nothing_is_fetched() {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(SMALL).files());
    files.replaceAll(
        (name, text) ->
            text.replace("name: Charger does not charge", "name: A <b>\"bad\"</b> & one"));
    RuleBase base = RuleBase.read(() -> files);
    String page = CausePage.of("charger-dead", base, List.of(), "A4");
    assertThat(page).doesNotContain("<b>").contains("A &lt;b&gt;");
    assertThat(Pages.parsed(page).getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("A <b>\"bad\"</b> & one");
    assertThat(page.replace("http://www.w3.org/", "")).doesNotContain("http", "src=", "url(");
  }

  @Test
  void every_cause_has_a_page() {
    RuleBase base = Shipped.BASE;
    for (String cause : base.causes().keySet()) {
      assertThat(
              Pages.parsed(CausePage.of(cause, base, List.of(), "A4")).getElementsByTagName("h1"))
          .as(cause)
          .satisfies(h -> assertThat(h.getLength()).isEqualTo(1));
    }
  }

  @Test
  void it_prints_on_few_sheets_and_nothing_is_cut_off() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfFile.of(page("chain-slack")))) {
      assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(5);
      for (int number = 0; number < document.getNumberOfPages(); number++) {
        BufferedImage image =
            new PDFRenderer(document).renderImageWithDPI(number, 127, ImageType.RGB);
        if (System.getProperty("yett.look") != null) {
          ImageIO.write(image, "png", new File(System.getProperty("yett.look") + number + ".png"));
        }
        assertThat(image.getWidth()).isBetween(1049, 1051); // 210 mm
        for (int y = 0; y < image.getHeight(); y++) {
          assertThat(image.getRGB(1050 - 40, y) & 0xffffff).as("right margin").isEqualTo(0xffffff);
        }
      }
    }
  }
}
