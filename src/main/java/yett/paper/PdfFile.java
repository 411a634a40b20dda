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

/** Converts a page of {@link Markup} to PDF, tagged for screen readers and with embedded fonts. */
public final class PdfFile {
  /** The font that the style of a page has to name. */
  public static final String FONT = "DejaVu Sans Condensed";

  private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed";

  static {
    // No screen is needed, and one that is configured but cannot be reached must not matter.
    System.setProperty("java.awt.headless", "true");
  }

  private PdfFile() {}

  /**
   * @param html a complete, self-contained page; nothing is fetched for it
   */
  public static byte[] of(String html) {
    XRLog.setLoggingEnabled(false);
    GraphicsEnvironment.getLocalGraphicsEnvironment()
        .registerFont(drawn()); // words in drawings become shapes and need the font in Java
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

  /** The characters of a text that the fonts do not have, each once. */
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
