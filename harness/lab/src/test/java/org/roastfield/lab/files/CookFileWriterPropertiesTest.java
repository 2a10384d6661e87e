package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written is read back, whatever the texts are. */
class CookFileWriterPropertiesTest {

  @Property
  void statements_areReadBack(@ForAll("keys") Statement.Keys keys) {
    String yaml = CookFileWriter.yaml(keys);
    SourceText source = new SourceText("cook.yaml", yaml);
    assertEquals(keys, new Entry("cook.yaml", YamlTree.rootOf(source)).statement(), yaml);
    assertEquals(
        List.copyOf(keys.values().keySet()), List.copyOf(read(source).values().keySet()), yaml);
  }

  private static Statement.Keys read(SourceText source) {
    return (Statement.Keys) new Entry("cook.yaml", YamlTree.rootOf(source)).statement();
  }

  @Provide
  Arbitrary<Statement.Keys> keys() {
    return someKeys(statements(3));
  }

  private static Arbitrary<Statement.Keys> someKeys(Arbitrary<Statement> values) {
    Arbitrary<String> key =
        Arbitraries.strings()
            .withCharRange('a', 'z')
            .withChars('-')
            .ofMaxLength(8)
            .map("k"::concat);
    return Arbitraries.maps(key, values).ofMinSize(1).ofMaxSize(4).map(Statement.Keys::new);
  }

  private static Arbitrary<Statement> statements(int levels) {
    Arbitrary<Statement> texts = texts().map(Statement::text);
    if (levels == 0) {
      return texts;
    }
    Arbitrary<Statement> inner = statements(levels - 1);
    Arbitrary<Statement> items = inner.list().ofMinSize(1).ofMaxSize(3).map(Statement.Items::new);
    return Arbitraries.oneOf(texts, items, someKeys(inner).map(keys -> keys));
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.of(
            "null",
            "~",
            "true",
            "0",
            ".inf",
            "57 °C",
            "a: b",
            "a #b",
            "- a",
            "a:",
            "[a",
            "{",
            "*a",
            "&a",
            "!t",
            "|",
            ">",
            "'",
            "\"",
            "\\",
            " a ",
            "a\nb",
            "\t",
            "@",
            "`",
            "%a",
            "---",
            "...",
            "?",
            "? a",
            ":",
            ",",
            "\u0000",
            "\uFEFF",
            "\u2028",
            "<script>",
            "2026-06-13T15:10"),
        Arbitraries.strings()
            .ofMinLength(1)
            .ofMaxLength(200)
            .filter(text -> text.codePoints().noneMatch(p -> p >= 0xD800 && p <= 0xDFFF)));
  }
}
