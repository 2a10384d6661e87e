package org.roastfield.lab.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads pages and pictures as XML, so that what is not well formed fails. */
final class SvgReader {

  private SvgReader() {}

  /** A document whose markup is well formed; its DOCTYPE may name nothing outside. */
  static Document parse(String markup) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(markup)));
    } catch (Exception e) {
      throw new AssertionError("not well formed: " + e.getMessage(), e);
    }
  }

  static List<Element> all(Document document, String tag) {
    return list(document.getElementsByTagName(tag));
  }

  static List<Element> all(Element within, String tag) {
    return list(within.getElementsByTagName(tag));
  }

  static boolean hasClass(Element element, String name) {
    return List.of(element.getAttribute("class").split(" ", -1)).contains(name);
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** About where the letters of a text lie. */
  static Room room(Element text) {
    double width = Letters.width(text.getTextContent());
    double x = number(text, "x");
    double y = number(text, "y");
    double left = hasClass(text, "end") ? x - width : hasClass(text, "middle") ? x - width / 2 : x;
    return new Room(left, left + width, y - Letters.SIZE, y + 3);
  }

  private static List<Element> list(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
