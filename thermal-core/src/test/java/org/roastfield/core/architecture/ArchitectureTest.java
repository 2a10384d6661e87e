package org.roastfield.core.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.architecture.fixture.RuleBreaker;
import org.roastfield.core.simulation.Simulator;

/** Package order and house rules of the main classes; each rule is shown to fail where broken. */
class ArchitectureTest {

  private static final String ROOT = "org.roastfield.core.";

  /** In order of dependency: a package uses only those before it. */
  private static final List<String> ORDER =
      List.of(
          "internal",
          "units",
          "parameter",
          "shape",
          "material",
          "air",
          "surface",
          "chamber",
          "cook",
          "grid",
          "integration",
          "simulation",
          "ensemble",
          "outcome",
          "salting",
          "inference",
          "plan");

  private static final Set<String> HIDDEN = Set.of("internal", "grid", "integration");

  private static final Path MAIN = locationOf(Simulator.class, "classes");
  private static final JavaClasses MAIN_CLASSES = new ClassFileImporter().importPath(MAIN);
  private static final JavaClasses BREAKERS =
      new ClassFileImporter().importClasses(RuleBreaker.class, RuleBreaker.Holder.class);

  static Stream<Arguments> rules() {
    return Stream.of(
        Arguments.of("reproducible mathematics", Rules.onlyReproducibleMathematics()),
        Arguments.of("no console", Rules.noConsole()),
        Arguments.of("no clock", Rules.noClock()),
        Arguments.of("no threads", Rules.noThreads()),
        Arguments.of("concurrency in ensembles only", Rules.concurrencyOnlyInEnsembles()),
        Arguments.of("no files and no logging", Rules.noFilesAndNoLogging()),
        Arguments.of("no mutable statics", Rules.noMutableStatics()),
        Arguments.of("no arrays in records", Rules.noArraysInRecords()),
        Arguments.of("no bean names", Rules.noBeanNames()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void mainClasses_keepTheRule(String name, ArchRule rule) {
    rule.check(MAIN_CLASSES);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void ruleBreaker_isFound(String name, ArchRule rule) {
    assertTrue(rule.evaluate(BREAKERS).hasViolation(), name);
  }

  @Test
  void mathematicsThatIsExact_isNotFound() {
    String found =
        Rules.onlyReproducibleMathematics().evaluate(BREAKERS).getFailureReport().toString();
    assertTrue(found.contains("transcendental"), found);
    assertFalse(found.contains("allowed("), found);
  }

  @Test
  void callersExecutor_isNotFound() {
    String found = Rules.noThreads().evaluate(BREAKERS).getFailureReport().toString();
    assertTrue(found.contains("onThePoolOfTheJvm"), found);
    assertFalse(found.contains("onTheCallersExecutor"), found);
  }

  @Test
  void packages_useOnlyThoseBeforeThem() {
    for (int i = 0; i < ORDER.size(); i++) {
      String[] later =
          ORDER.subList(i + 1, ORDER.size()).stream()
              .map(name -> ROOT + name + "..")
              .toArray(String[]::new);
      if (later.length > 0) {
        mayNotUse(ROOT + ORDER.get(i) + "..", later).check(MAIN_CLASSES);
      }
    }
  }

  @Test
  void packageOrder_canBeBroken() {
    ArchRule backwards = mayNotUse(ROOT + "simulation..", ROOT + "integration..");
    assertTrue(backwards.evaluate(MAIN_CLASSES).hasViolation());
  }

  @Test
  void packages_haveNoCycles() {
    SlicesRuleDefinition.slices()
        .matching(ROOT + "(*)..")
        .should()
        .beFreeOfCycles()
        .check(MAIN_CLASSES);
  }

  @Test
  void everyPackage_hasItsPlaceInTheOrder() {
    Set<String> packages =
        MAIN_CLASSES.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> name.startsWith(ROOT))
            .map(name -> name.substring(ROOT.length()))
            .collect(Collectors.toSet());
    assertEquals(Set.copyOf(ORDER), packages);
  }

  @Test
  void everyPackage_isNullMarked() {
    for (String name : ORDER) {
      JavaClass info = MAIN_CLASSES.get(ROOT + name + ".package-info");
      assertTrue(info.isAnnotatedWith(NullMarked.class), name);
    }
    JavaClasses fixture =
        new ClassFileImporter().importPackages("org.roastfield.core.architecture.fixture");
    assertTrue(
        fixture.stream().noneMatch(type -> type.isAnnotatedWith(NullMarked.class)),
        "the fixture must not be null-marked");
  }

  @Test
  void simulationPackages_useTheJdkAlone() {
    for (String name : ORDER.subList(0, ORDER.indexOf("inference"))) {
      mayNotUse(ROOT + name + "..", "org.apache..", "org.ejml..").check(MAIN_CLASSES);
    }
    ArchRule inference = mayNotUse(ROOT + "inference..", "org.ejml..");
    assertTrue(inference.evaluate(MAIN_CLASSES).hasViolation());
  }

  @Test
  void module_exportsAllButTheHiddenPackages() {
    ModuleDescriptor module =
        ModuleFinder.of(MAIN).find("org.roastfield.core").orElseThrow().descriptor();
    Set<String> exported =
        module.exports().stream()
            .peek(exports -> assertFalse(exports.isQualified(), exports::toString))
            .map(exports -> exports.source().substring(ROOT.length()))
            .collect(Collectors.toSet());
    Set<String> expected =
        ORDER.stream().filter(name -> !HIDDEN.contains(name)).collect(Collectors.toSet());
    assertEquals(expected, exported);
    assertFalse(module.isOpen());
    assertTrue(module.opens().isEmpty());
  }

  @Test
  void module_requiresTwoLibrariesAtRunTime() {
    ModuleDescriptor module =
        ModuleFinder.of(MAIN).find("org.roastfield.core").orElseThrow().descriptor();
    Set<String> required =
        module.requires().stream()
            .filter(
                requires ->
                    !requires.modifiers().contains(ModuleDescriptor.Requires.Modifier.STATIC))
            .map(ModuleDescriptor.Requires::name)
            .collect(Collectors.toSet());
    assertEquals(Set.of("java.base", "commons.math3", "ejml.core", "ejml.ddense"), required);
  }

  private static ArchRule mayNotUse(String user, String... used) {
    return noClasses()
        .that()
        .resideInAPackage(user)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(used);
  }

  /** Folder of compiled main classes, whether tests run on the class path or patch the module. */
  private static Path locationOf(Class<?> type, String folder) {
    try {
      URI source = type.getProtectionDomain().getCodeSource().getLocation().toURI();
      return Path.of(source).resolveSibling(folder);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
