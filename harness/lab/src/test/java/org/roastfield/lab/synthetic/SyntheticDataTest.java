package org.roastfield.lab.synthetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.files.CookFileException;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.files.PublicProfile;

/** The published list of made-up cooks. */
class SyntheticDataTest {

  private static final Path FOLDER = Path.of("../../datasets/synthetic");

  /** Cooks with weights. */
  private static final int WEIGHED = 35;

  private static final String SMALL = "syn-net-loft-bison-strip-3";

  @TempDir Path folder = Path.of("");

  @Test
  void everyCook_isMadeAgainBitForBit_andIsAPackageWithACookFile() throws IOException {
    Map<String, String> sums = new TreeMap<>();
    int weighed = 0;
    for (SyntheticCook recipe : recipes()) {
      MadeCook made = assertInstanceOf(MadeCook.class, recipe.make(), recipe.id());
      SyntheticData.write(made, folder);
      sums.putAll(SyntheticData.checksums(recipe.id(), folder));
      LogPackage log = LogPackageReader.read(folder.resolve(recipe.id()));
      Path descriptor = folder.resolve(recipe.id()).resolve("datapackage.json");
      assertEquals(List.of(), PublicProfile.complaints(Files.readString(descriptor)));
      weighed += log.afterwards().isPresent() ? 1 : 0;
      assertTrue(recipe.cut() != ScenarioCut.LAMB_LEG || log.afterwards().isEmpty());
      assertTrue(log.facts().madeUp());
      assertEquals("Apache-2.0", log.facts().licence().orElseThrow());
      assertTrue(
          CookFileReader.read(folder.resolve(recipe.id()).resolve("cook.yaml")).madeUp(),
          recipe.id());
    }
    assertEquals(Files.readString(FOLDER.resolve("checksums.sha256")), SyntheticData.text(sums));
    assertEquals(WEIGHED, weighed);
  }

  /** The split that scores rest on: nothing here may be lost in an edit of the list. */
  @Test
  void list_hasEveryCutCookerAndKind_andHalfOfTheHeldOutDepart() throws IOException {
    List<SyntheticCook> all = recipes();
    assertTrue(all.size() >= 40, all.size() + " cooks");
    List<SyntheticCook> heldOut =
        all.stream().filter(cook -> cook.split() == SyntheticCook.Split.HELD_OUT).toList();
    long departed = heldOut.stream().filter(cook -> !cook.departures().isEmpty()).count();
    assertTrue(2 * departed >= heldOut.size(), departed + " of " + heldOut.size());
    assertTrue(
        all.stream()
            .filter(cook -> !heldOut.contains(cook))
            .allMatch(c -> c.departures().isEmpty()));
    EnumSet<Departure> kinds = EnumSet.noneOf(Departure.class);
    all.forEach(cook -> kinds.addAll(cook.departures()));
    assertEquals(EnumSet.allOf(Departure.class), kinds);
    for (SyntheticCooker cooker : SyntheticCooker.boathouse()) {
      List<SyntheticCook> here = all.stream().filter(cook -> cook.cooker().equals(cooker)).toList();
      Predicate<SyntheticCook> isHeldOut = heldOut::contains;
      assertTrue(here.stream().filter(isHeldOut).count() >= 6, cooker.id());
      assertTrue(here.stream().filter(isHeldOut.negate()).count() >= 6, cooker.id());
      assertEquals(
          EnumSet.allOf(ScenarioCut.class),
          EnumSet.copyOf(here.stream().map(SyntheticCook::cut).toList()));
    }
    Set<Long> seeds = new HashSet<>(all.stream().map(SyntheticCook::seed).toList());
    assertEquals(all.size(), seeds.size());
  }

  /**
   * The JVM's compilers and their intrinsics, the locale with digits of its own and the encoding
   * change nothing: an interpreter alone under an Arabic locale makes the same bytes.
   */
  @Test
  void anotherJvm_makesTheSameBytes() throws IOException, InterruptedException {
    Process child =
        ChildJvm.start(
            folder,
            List.of("-Xint", "-Duser.language=ar", "-Duser.country=EG", "-Dfile.encoding=US-ASCII"),
            MakeOne.class,
            FOLDER.toAbsolutePath().resolve("cooks.csv").toString(),
            SMALL,
            folder.resolve("made").toString());
    assertTrue(child.waitFor(300, TimeUnit.SECONDS), "took too long");
    assertEquals(0, child.exitValue(), () -> ChildJvm.said(folder));
    Map<String, String> published =
        SyntheticData.parse(Files.readString(FOLDER.resolve("checksums.sha256")));
    Map<String, String> made = SyntheticData.checksums(SMALL, folder.resolve("made"));
    assertEquals(5, made.size());
    made.forEach((path, sum) -> assertEquals(published.get(path), sum, path));
  }

  /** Main program of the child. */
  static final class MakeOne {

    private MakeOne() {}

    public static void main(String[] arguments) throws IOException {
      for (SyntheticCook recipe :
          RecipeFile.parse("cooks.csv", Files.readString(Path.of(arguments[0])))) {
        if (recipe.id().equals(arguments[1])) {
          SyntheticData.write((MadeCook) recipe.make(), Path.of(arguments[2]));
        }
      }
    }
  }

  @Test
  void mistakesInTheList_areRefusedWithTheirPlace() {
    String row = "syn-a,pork-loin,slipway-pit,110,1,fit,";
    assertRefused(
        "1:1: found \"id,cut\", expected id,cut,cooker,setting_degC,seed,split,departures",
        "id,cut\n");
    assertRefused("1:1: found no recipe, expected at least one line below the header", list());
    assertRefused(
        "2:1: found \"oxtail\", expected one of pork-loin, bison-strip, lamb-leg, turkey-breast,"
            + " beetroot",
        list(row.replace("pork-loin", "oxtail")));
    assertRefused(
        "2:1: found \"kiln\", expected one of slipway-pit, net-loft-oven, pontoon-barrel",
        list(row.replace("slipway-pit", "kiln")));
    assertRefused(
        "2:1: found \"hot\", expected degrees Celsius such as 110",
        list(row.replace("110", "hot")));
    assertRefused(
        "2:1: found \"-1\", expected a seed of 1 to 18 digits", list(row.replace(",1,", ",-1,")));
    assertRefused(
        "2:1: found \"train\", expected fit or held-out", list(row.replace("fit", "train")));
    assertRefused(
        "2:1: found \"thaw\", expected one of finite-length, taper, wetness-law, chamber-gradient,"
            + " wandering-heat-transfer, moved-probe, finer-grid",
        list(row + "thaw"));
    assertRefused(
        "2:1: found a recipe that cannot be, expected departures of pork-loin cannot be taper",
        list(row + "taper"));
    assertRefused("3:1: found the id syn-a again, expected an id of its own", list(row, row));
  }

  @Test
  void sumThatIsNone_isRefused() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> SyntheticData.parse("ab  c\n"));
    assertEquals(
        "line must be a SHA-256 sum, two blanks and a path, was \"ab  c\"", e.getMessage());
  }

  private static String list(String... rows) {
    return String.join(",", RecipeFile.HEADER) + "\n" + String.join("\n", rows);
  }

  private static void assertRefused(String message, String text) {
    CookFileException e =
        assertThrows(CookFileException.class, () -> RecipeFile.parse("cooks.csv", text));
    assertEquals("cooks.csv:" + message, e.getMessage());
  }

  private static List<SyntheticCook> recipes() throws IOException {
    return RecipeFile.parse("cooks.csv", Files.readString(FOLDER.resolve("cooks.csv")));
  }
}
