package yett.paper;

import java.io.StringWriter;
import java.util.regex.Pattern;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes elements and text that are always well-formed. All words are escaped; only this class puts
 * markup on the page. The result is HTML for a browser and XML for a program.
 */
public final class Markup {
  private static final XMLOutputFactory WRITERS = XMLOutputFactory.newDefaultFactory();

  /** Characters that XML does not allow, or that control the direction of a line. */
  private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Cn}]");

  /**
   * A run of blanks and line ends. The quantifier is possessive, so that a long run is scanned only
   * once.
   */
  private static final Pattern BLANKS = Pattern.compile("[\\s\\u0085\\u2028\\u2029]++");

  private static final Pattern BREAK = Pattern.compile("\\R|\\t");

  private final StringWriter out = new StringWriter();
  private final XMLStreamWriter writer;

  public Markup() {
    try {
      writer = WRITERS.createXMLStreamWriter(out);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Words on one line, without invisible characters. */
  static String plain(String words) {
    String line =
        BLANKS
            .matcher(words.strip())
            .replaceAll(run -> BREAK.matcher(run.group()).find() ? " " : run.group());
    return UNSEEN.matcher(line).replaceAll("");
  }

  /**
   * Begins an element.
   *
   * @param attributes names, each followed by its value
   */
  public Markup open(String element, Object... attributes) {
    return write(
        () -> {
          writer.writeStartElement(element);
          write(attributes);
        });
  }

  /** Ends the element that was begun last. */
  public Markup close() {
    return write(writer::writeEndElement);
  }

  public Markup text(String words) {
    return write(() -> writer.writeCharacters(plain(words)));
  }

  /** An element that contains only words. */
  public Markup leaf(String element, String words, Object... attributes) {
    return open(element, attributes).text(words).close();
  }

  /** A row of a table: a name and its value. */
  public Markup fact(String name, String value) {
    return open("tr").leaf("th", name, "scope", "row").leaf("td", value).close();
  }

  /** An element without content. */
  public Markup empty(String element, Object... attributes) {
    return write(
        () -> {
          writer.writeEmptyElement(element);
          write(attributes);
        });
  }

  /** The style of the page. It is not escaped, because it is the program's own. */
  public Markup style(String css) {
    return open("style").write(() -> writer.writeCharacters(css)).close();
  }

  private void write(Object... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      writer.writeAttribute(attributes[i].toString(), plain(attributes[i + 1].toString()));
    }
  }

  private interface Step {
    void write() throws XMLStreamException;
  }

  private Markup write(Step step) {
    try {
      step.write();
      return this;
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The text; all elements must have been closed. */
  @Override
  public String toString() {
    write(writer::flush);
    return out.toString();
  }
}
