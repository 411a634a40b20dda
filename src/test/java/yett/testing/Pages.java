package yett.testing;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Parses pages for tests. */
public final class Pages {
  private Pages() {}

  /** The parsed page; fails if it is not well-formed. */
  public static Document parsed(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    } catch (ParserConfigurationException | SAXException e) {
      throw new AssertionError("not well-formed", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static List<Element> all(Document page, String name) {
    NodeList found = page.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** The elements with this name and class. */
  public static List<Element> all(Document page, String name, String kind) {
    return all(page, name).stream().filter(e -> e.getAttribute("class").equals(kind)).toList();
  }
}
