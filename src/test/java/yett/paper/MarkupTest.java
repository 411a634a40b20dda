package yett.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** No word puts a mark on a page. */
class MarkupTest {
  @Test
  void words_stay_words_in_elements_and_attributes() {
    String page =
        new Markup()
            .open("p", "title", "\"><script>\n& '")
            .text("<b>bold</b> & more ]]>")
            .close()
            .toString();

    assertThat(page)
        .isEqualTo(
            "<p title=\"&quot;&gt;&lt;script&gt; &amp; '\">"
                + "&lt;b&gt;bold&lt;/b&gt; &amp; more ]]&gt;</p>");
  }

  @Test
  void what_nobody_sees_and_what_XML_cannot_hold_is_left_out() {
    assertThat(new Markup().leaf("p", "a\u001b[31m\u202eb\u0000c\ud800d\uffffe\nf").toString())
        .isEqualTo("<p>a[31mbcde f</p>");
  }

  @Test
  void what_is_empty_has_an_end_of_its_own_as_HTML_asks() {
    assertThat(new Markup().open("p").leaf("i", "").empty("br").close().toString())
        .isEqualTo("<p><i></i><br/></p>");
  }

  @Test
  void a_picture_is_what_its_first_bytes_say() {
    byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0};
    byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0};

    assertThat(Picture.of(png).address()).startsWith("data:image/png;base64,iVBORw0KGgo");
    assertThat(Picture.of(jpeg).address()).isEqualTo("data:image/jpeg;base64,/9j/4A==");
    assertThatThrownBy(() -> Picture.of("<svg/>".getBytes(StandardCharsets.UTF_8)))
        .hasMessageContaining("neither a PNG nor a JPEG");
    assertThatThrownBy(() -> Picture.of(new byte[0])).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void characters_that_the_fonts_lack_are_named() {
    assertThat(PdfFile.missing("Chandler's gate, 5 \u00b0C \u2264 \u03a9 \u0416")).isEmpty();
    assertThat(PdfFile.missing("North \u6e2f \u6e2f gate")).isEqualTo("\u6e2f");
  }

  /** Where a run of blanks was looked at from each of its blanks, this took an hour. */
  @Test
  void blanks_without_end_are_gone_through_once() {
    String blanks = " ".repeat(1_000_000);
    assertThat(Markup.plain("a" + blanks + "b")).isEqualTo("a" + blanks + "b");
    assertThat(Markup.plain("a" + blanks + "\n" + blanks + "b")).isEqualTo("a b");
  }
}
