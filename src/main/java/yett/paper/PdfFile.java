package yett.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.stream.Collectors;

/** A page of {@link Markup} as PDF: tagged for screen readers, its fonts inside. */
public final class PdfFile {
  /** What the page has to name in its style. */
  public static final String FONT = "DejaVu Sans Condensed";

  private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed";

  static {
    // A screen is not needed for it, and one that is named but cannot be reached must not matter.
    System.setProperty("java.awt.headless", "true");
  }

  private PdfFile() {}

  /**
   * @param html a whole page that needs nothing from elsewhere; nothing is fetched for it
   */
  public static byte[] of(String html) {
    XRLog.setLoggingEnabled(false);
    GraphicsEnvironment.getLocalGraphicsEnvironment()
        .registerFont(drawn()); // words in drawings become shapes, by fonts that Java knows
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePdfUaAccessibility(true);
    builder.useFont(() -> font(".ttf"), FONT, 400, FontStyle.NORMAL, true);
    builder.useFont(() -> font("-Bold.ttf"), FONT, 700, FontStyle.NORMAL, true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
    builder.withHtmlContent(html, null);
    builder.toStream(out);
    try {
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** The characters of a text that its fonts do not have, each once. */
  public static String missing(String text) {
    Font font = drawn();
    return text.codePoints()
        .filter(c -> !Character.isWhitespace(c) && !font.canDisplay(c))
        .distinct()
        .mapToObj(Character::toString)
        .collect(Collectors.joining(" "));
  }

  private static Font drawn() {
    try (InputStream in = font(".ttf")) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException | FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  private static InputStream font(String ending) {
    return Objects.requireNonNull(
        PdfFile.class.getResourceAsStream(FONTS + ending), "the font to embed is missing");
  }
}
