package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MarkupTest {

  @Test
  void escape_leavesNothingThatReadsAsMarkup() {
    assertEquals(
        "&lt;script&gt;&amp;&quot;&#39;&lt;/script&gt;", Markup.escape("<script>&\"'</script>"));
  }

  @Test
  void escape_keepsLettersOfAnyScriptAndLineBreaks() {
    assertEquals("96 mm · 57 °C\n肉 🍖", Markup.escape("96 mm · 57 °C\n肉 🍖"));
  }

  @Test
  void escape_replacesWhatXmlForbidsAndWhatTurnsDirection() {
    assertEquals("a\uFFFDb", Markup.escape("a\u0000b"));
    assertEquals("a\uFFFDb", Markup.escape("a\u202Eb"));
    assertEquals("a\uFFFDb", Markup.escape("a\uD800b"));
    assertEquals("a\uFFFDb", Markup.escape("a\uFFFFb"));
  }

  @Test
  void elements_areClosedInOrder() {
    String markup = new Markup().open("p", "class", "a\"b").element("b", "x").close().finished();
    assertEquals("<p class=\"a&quot;b\"><b>x</b></p>", markup);
  }

  @Test
  void finished_refusesAnOpenElement() {
    Markup markup = new Markup().open("section");
    IllegalStateException thrown = assertThrows(IllegalStateException.class, markup::finished);
    assertEquals("element still open: section", thrown.getMessage());
  }

  @Test
  void open_refusesAnAttributeWithoutValue() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class, () -> new Markup().open("p", "class", "a", "id"));
    assertEquals("attributes must be pairs of name and value, were 3", thrown.getMessage());
  }
}
