package org.roastfield.core.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What sources and documents cite exists: equations, literature, files, tests. */
class ReferencesTest {

  private static final Pattern KEY =
      Pattern.compile("\\[([A-Z][A-Za-z]+[0-9]{3,4}|[A-Z][A-Za-z]{9,})]");
  private static final Pattern ENTRY = Pattern.compile("^@[a-z]+\\{([A-Za-z0-9]+),");
  private static final Pattern CITED_EQUATIONS =
      Pattern.compile(
          "(?:[Ee]qs?\\.|[Ee]quations?) \\((\\d+)\\)(?:-\\((\\d+)\\))?((?:(?:,| and) \\(\\d+\\))*)");
  private static final Pattern NUMBER = Pattern.compile("\\d+");
  private static final Pattern EQUATION = Pattern.compile("^ {4}.*\\S {2,}\\((\\d+)\\)$");
  private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)(?:#[^)]*)?\\)");
  private static final Pattern TEST_NAME = Pattern.compile("`([A-Z][A-Za-z0-9]*Test)`");

  @Test
  void equationsOfTheModel_areNumberedWithoutGap() {
    List<Integer> numbers = equations();
    assertEquals(IntStream.rangeClosed(1, numbers.size()).boxed().toList(), numbers);
  }

  @Test
  void equationsThatTheSourcesCite_standInTheModel() {
    Set<Integer> cited = new TreeSet<>();
    Documents.comments().forEach(text -> cited.addAll(citedEquations(text)));
    assertTrue(cited.size() > 10, () -> "cited " + cited);
    assertEquals(Set.of(), without(cited, equations()));
  }

  @Test
  void citations_areRecognisedInAllTheirForms() {
    assertEquals(Set.of(7), citedEquations("heat, eq. (7): q"));
    assertEquals(Set.of(12, 13, 14), citedEquations("scheme is eqs. (12)-(14) of"));
    assertEquals(Set.of(2, 3, 12), citedEquations("see eqs. (2), (3) and (12)"));
    assertEquals(Set.of(1), citedEquations("Equation (1) holds"));
  }

  @Test
  void literatureThatSourcesAndDocumentsCite_isInTheBibliography() {
    Set<String> cited = citedKeys();
    assertTrue(cited.contains("KennedyCarpenter2003"), () -> "cited " + cited);
    assertEquals(Set.of(), without(cited, entries()));
  }

  @Test
  void everyEntryOfTheBibliography_isCited() {
    assertEquals(Set.of(), without(entries(), citedKeys()));
  }

  @Test
  void linksOfTheDocuments_leadToFiles() {
    for (Path document : Documents.markdown()) {
      for (String link : all(LINK, Documents.text(document))) {
        Path target = document.resolveSibling(link);
        assertTrue(Files.exists(target), () -> document + " links to " + link);
      }
    }
  }

  @Test
  void testsThatTheDocumentsName_exist() {
    Set<String> tests =
        Documents.files(Documents.root(), "Test.java").stream()
            .map(path -> path.getFileName().toString().replace(".java", ""))
            .collect(Collectors.toSet());
    Set<String> named = new TreeSet<>();
    Documents.markdown().forEach(path -> named.addAll(all(TEST_NAME, Documents.text(path))));
    assertFalse(named.isEmpty());
    assertEquals(Set.of(), without(named, tests));
  }

  private static List<Integer> equations() {
    return Documents.text(Documents.module().resolve("docs/model.md"))
        .lines()
        .map(EQUATION::matcher)
        .filter(Matcher::matches)
        .map(matcher -> Integer.valueOf(matcher.group(1)))
        .toList();
  }

  private static Set<Integer> citedEquations(String text) {
    Set<Integer> cited = new TreeSet<>();
    CITED_EQUATIONS.matcher(text).results().forEach(match -> addEquations(match, cited));
    return cited;
  }

  private static void addEquations(MatchResult match, Set<Integer> cited) {
    int first = Integer.parseInt(match.group(1));
    int last = match.group(2) == null ? first : Integer.parseInt(match.group(2));
    IntStream.rangeClosed(first, last).forEach(cited::add);
    NUMBER
        .matcher(match.group(3))
        .results()
        .map(MatchResult::group)
        .map(Integer::valueOf)
        .forEach(cited::add);
  }

  private static Set<String> citedKeys() {
    return Stream.concat(
            Documents.comments().stream(), Documents.markdown().stream().map(Documents::text))
        .flatMap(text -> all(KEY, text).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> entries() {
    return Documents.text(Documents.module().resolve("docs/references.bib"))
        .lines()
        .map(ENTRY::matcher)
        .filter(Matcher::find)
        .map(matcher -> matcher.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(match -> match.group(1)).toList();
  }

  private static <T> Set<T> without(Set<T> some, Iterable<T> others) {
    Set<T> rest = new TreeSet<>(some);
    others.forEach(rest::remove);
    return rest;
  }
}
