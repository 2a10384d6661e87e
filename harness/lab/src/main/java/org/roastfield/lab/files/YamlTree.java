package org.roastfield.lab.files;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * One YAML document as a tree of nodes with their places. Anchors, aliases, tags, several documents
 * and deep nesting are refused before any tree is built, so that a small file cannot grow into a
 * large one.
 */
final class YamlTree {

  private static final int DEEPEST = 12;

  private final SourceText source;
  private final LoadSettings settings;

  private YamlTree(SourceText source) {
    this.source = source;
    this.settings =
        LoadSettings.builder()
            .setLabel(source.fileName())
            .setUseMarks(true)
            .setAllowNonScalarKeys(true)
            .setCodePointLimit(Math.max(1, source.text().length()))
            .build();
  }

  /** Root node of the only document. */
  static Node rootOf(SourceText source) {
    YamlTree tree = new YamlTree(source);
    try {
      tree.checkEvents();
      return new Composer(tree.settings, tree.parser())
          .getSingleNode()
          .orElseThrow(() -> tree.error(Optional.empty(), "nothing", "keys and values"));
    } catch (MarkedYamlEngineException e) {
      throw tree.syntaxError(e);
    } catch (ReaderException e) {
      throw tree.characterError(e);
    } catch (YamlEngineException e) {
      throw tree.error(Optional.empty(), "no YAML (" + e.getMessage() + ")", "YAML");
    }
  }

  private Parser parser() {
    return new ParserImpl(settings, new StreamReader(settings, source.text()));
  }

  private void checkEvents() {
    int depth = 0;
    int documents = 0;
    for (Parser parser = parser(); parser.hasNext(); ) {
      Event event = parser.next();
      if (event instanceof DocumentStartEvent && ++documents > 1) {
        throw error(event.getStartMark(), "a second document", "one in a file");
      }
      if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
        throw error(
            event.getStartMark(), "nesting beyond " + DEEPEST + " levels", "no more than that");
      }
      if (event instanceof CollectionEndEvent) {
        depth--;
      }
      if (event instanceof NodeEvent node) {
        checkNode(node);
      }
    }
  }

  private void checkNode(NodeEvent event) {
    if (event instanceof AliasEvent || event.getAnchor().isPresent()) {
      throw error(event.getStartMark(), "an anchor or alias (& or *)", "the value itself");
    }
    boolean tagged =
        event instanceof ScalarEvent scalar
            ? scalar.getTag().isPresent()
            : event instanceof CollectionStartEvent start && start.getTag().isPresent();
    if (tagged) {
      throw error(event.getStartMark(), "a tag (!)", "a value without one");
    }
  }

  private CookFileException syntaxError(MarkedYamlEngineException e) {
    Optional<Mark> mark = e.getProblemMark().or(e::getContextMark);
    String problem = String.valueOf(e.getProblem());
    if (problem.contains("\\t") || problem.contains("TAB")) {
      return error(mark, "a tab", "spaces");
    }
    if (problem.contains("mapping values are not allowed")) {
      return error(
          mark,
          "a colon that ends no key",
          "each key on a line of its own, with a space after its colon, as far in as its"
              + " neighbours");
    }
    if (problem.contains("unexpected end of stream")) {
      return error(mark, "the end of the file within quotes", "the closing quote");
    }
    if (problem.startsWith("expected ',' or '")) {
      return error(mark, "braces or brackets that are still open", problem.substring(9, 19));
    }
    return error(mark, "no YAML here (" + problem.strip() + ")", "YAML 1.2");
  }

  private CookFileException characterError(ReaderException e) {
    int index = source.text().offsetByCodePoints(0, e.getPosition());
    String found = String.format("character U+%04X", e.getCodePoint());
    return source.error(index, found, "printable characters");
  }

  private CookFileException error(Optional<Mark> mark, String found, String expected) {
    return new CookFileException(
        source.fileName(),
        mark.map(Mark::getLine).orElse(0) + 1,
        mark.map(Mark::getColumn).orElse(0) + 1,
        found,
        expected);
  }
}
