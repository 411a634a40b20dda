package yett.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Even a page that asks for something from elsewhere gets nothing. */
class HostilePageTest {
  @TempDir private Path directory;

  @Test
  void nothing_is_fetched_and_no_file_is_read() throws IOException {
    Path secret = Files.writeString(directory.resolve("secret.css"), "p::after{content:'SECRET'}");
    AtomicInteger asked = new AtomicInteger();
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    try {
      String there = "http://localhost:" + server.getAddress().getPort() + "/";
      String page =
          "<!DOCTYPE html><html lang='en'><head><title>t</title>"
              + ("<link rel='stylesheet' href='" + secret.toUri() + "'/>")
              + ("<link rel='stylesheet' href='" + there + "a.css'/>")
              + ("<style>@import url('"
                  + there
                  + "b.css'); body{font-family:'"
                  + PdfFile.FONT
                  + "'} p{background:url("
                  + there
                  + "c.png)}")
              + ("@font-face{font-family:F;src:url(" + there + "f.ttf)}</style></head><body>")
              + ("<p>words</p><img src='" + there + "d.png' alt='d'/>")
              + "<svg xmlns='http://www.w3.org/2000/svg' xmlns:x='http://www.w3.org/1999/xlink'"
              + " width='10mm' height='10mm' alt='s'>"
              + ("<image x:href='" + there + "e.png' width='5' height='5'/>")
              + "<script>java.lang.System.exit(3)</script></svg></body></html>";

      try (PDDocument document = Loader.loadPDF(PdfFile.of(page))) {
        assertThat(new PDFTextStripper().getText(document))
            .contains("words")
            .doesNotContain("SECRET");
      }
    } finally {
      server.stop(0);
    }
    assertThat(asked).hasValue(0);
  }
}
