package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What holds for every page. */
public final class PageChecks {

  private static final List<String> LOADING =
      List.of(
          "script", "link", "img", "iframe", "object", "embed", "video", "audio", "base", "image");

  private PageChecks() {}

  /** Nothing is loaded or run, whatever the data say. */
  public static void assertStandsAlone(String html) {
    Document page = SvgReader.parse(html);
    for (String tag : LOADING) {
      assertEquals(List.of(), SvgReader.all(page, tag), tag);
    }
    for (Element element : SvgReader.all(page, "*")) {
      for (String attribute : List.of("src", "href", "xlink:href", "srcset", "data", "action")) {
        assertFalse(element.hasAttribute(attribute), () -> element.getTagName() + " " + attribute);
      }
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        String name = element.getAttributes().item(i).getNodeName().toLowerCase(Locale.ROOT);
        assertFalse(name.startsWith("on"), name);
      }
    }
    String rest = html.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
    assertFalse(rest.contains("http:") || rest.contains("https:") || rest.contains("url("));
  }

  /** Every picture can be heard, and the numbers behind it can be read. */
  public static void assertFiguresSpeak(String html, int figures) {
    Document page = SvgReader.parse(html);
    List<Element> all = SvgReader.all(page, "figure");
    assertEquals(figures, all.size());
    for (Element figure : all) {
      assertFalse(SvgReader.all(figure, "svg").isEmpty());
      SvgReader.all(figure, "svg").forEach(PageChecks::assertSpeaks);
      Element details = SvgReader.all(figure, "details").get(0);
      assertTrue(SvgReader.all(details, "td").size() > 10, "a table with numbers");
      assertEquals(1, SvgReader.all(figure, "figcaption").size());
    }
  }

  /** No text runs out of its drawing. */
  public static void assertTextInside(String html) {
    for (Element svg : SvgReader.all(SvgReader.parse(html), "svg")) {
      String[] box = svg.getAttribute("viewBox").split(" ", -1);
      Room inside = new Room(0, Double.parseDouble(box[2]), 0, Double.parseDouble(box[3]));
      for (Element text : SvgReader.all(svg, "text")) {
        assertTrue(
            inside.holds(SvgReader.room(text)),
            () -> text.getTextContent() + " at " + SvgReader.room(text) + " of " + inside);
      }
    }
  }

  private static void assertSpeaks(Element svg) {
    assertEquals("img", svg.getAttribute("role"));
    List<Element> children = SvgReader.all(svg, "*");
    assertEquals("title", children.get(0).getTagName());
    assertEquals("desc", children.get(1).getTagName());
    assertFalse(children.get(0).getTextContent().isBlank());
    assertTrue(children.get(1).getTextContent().length() > 40);
    Node box = svg.getParentNode();
    String shownOn = ((Element) box).getAttribute("class");
    assertTrue(List.of("wide", "narrow").contains(shownOn), shownOn);
  }
}
