package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Shape;

/** Sizes that follow from weight and density, and weights that are checked against sizes. */
class SizesTest {

  private static final double DENSITY = 1060;

  private static CookFile cut(String sizes) {
    return CookTexts.read(CookTexts.spoilt("  shape: slab\n  thickness: 40 mm\n", sizes));
  }

  private static String error(String sizes) {
    return String.valueOf(assertThrows(CookFileException.class, () -> cut(sizes)).getMessage());
  }

  private static Shape shape(String sizes) {
    return cut(sizes).cook().cut().shape();
  }

  @Test
  void cylinder_followsFromAnyTwoOfWeightLengthAndDiameter() {
    double volume = Math.PI / 4 * 0.096 * 0.096 * 0.31;
    String weight = Dimension.MASS.exactText(volume * DENSITY);
    CookFile byLength = cut("  shape: cylinder\n  weight: " + weight + "\n  length: 310 mm\n");
    assertEquals(0.096, byLength.cook().cut().shape().thickness(), 1e-12);
    CookFile byDiameter = cut("  shape: cylinder\n  weight: " + weight + "\n  diameter: 96 mm\n");
    assertEquals(Math.PI * 0.096 * 0.31, byDiameter.extent().orElseThrow().area(), 1e-12);
    CookFile bySizes = cut("  shape: cylinder\n  length: 310 mm\n  diameter: 96 mm\n");
    assertEquals(volume * DENSITY, bySizes.extent().orElseThrow().mass(), 1e-12);
    assertTrue(cut("  shape: cylinder\n  diameter: 96 mm\n").extent().isEmpty());
  }

  @Test
  void girth_isThatOfARoundCut() {
    assertEquals(0.1, shape("  shape: cylinder\n  girth: 314.159265 mm\n").thickness(), 1e-9);
    assertEquals(0.1, shape("  shape: sphere\n  girth: 314.159265 mm\n").thickness(), 1e-9);
    assertEquals(
        0.1,
        shape("  shape: taper\n  girths: [314.159265 mm, 314.159265 mm]\n  length: 30 cm\n")
            .thickness(),
        1e-9);
  }

  @Test
  void sphere_followsFromItsWeight() {
    double diameter = Math.cbrt(6 / Math.PI * 1.8 / DENSITY);
    CookFile file = cut("  shape: sphere\n  weight: 1.8 kg\n");
    assertEquals(diameter, file.cook().cut().shape().thickness(), 1e-12);
    assertEquals(1.8, file.extent().orElseThrow().mass());
  }

  @Test
  void compactPieces_followFromWeightAndAllSizesButOne() {
    Compact box = Compact.ofBox(0.05, 0.08, 0.12);
    String weight = "  weight: " + Dimension.MASS.exactText(0.05 * 0.08 * 0.12 * DENSITY) + "\n";
    for (String two :
        new String[] {
          "  thickness: 50 mm\n  width: 80 mm\n",
          "  thickness: 50 mm\n  length: 12 cm\n",
          "  width: 80 mm\n  length: 12 cm\n"
        }) {
      assertEquals(box.thickness(), shape("  shape: box\n" + weight + two).thickness(), 1e-9, two);
    }
    String round = "  shape: finite-cylinder\n  weight: 1 kg\n";
    double length = 1 / DENSITY / (Math.PI / 4 * 0.01);
    double diameter = Math.sqrt(4 / Math.PI / DENSITY / 0.1);
    assertEquals(
        Compact.ofCylinder(0.1, length).thickness(),
        shape(round + "  diameter: 10 cm\n").thickness(),
        1e-12);
    assertEquals(
        Compact.ofCylinder(diameter, 0.1).thickness(),
        shape(round + "  length: 10 cm\n").thickness(),
        1e-12);
  }

  @Test
  void slab_followsFromWeightAndFace_orHasItsAreaFromTheWeight() {
    CookFile byFace = cut("  shape: slab\n  weight: 1 kg\n  length: 20 cm\n  width: 10 cm\n");
    assertEquals(1 / DENSITY / 0.02, byFace.cook().cut().shape().thickness(), 1e-12);
    CookFile byThickness = cut("  shape: slab\n  weight: 1 kg\n  thickness: 4 cm\n");
    assertEquals(1 / DENSITY / 0.04, byThickness.extent().orElseThrow().area(), 1e-12);
    assertEquals(1.0, byThickness.extent().orElseThrow().mass());
  }

  @Test
  void taper_hasItsLengthFromTheWeight() {
    CookFile file = cut("  shape: taper\n  diameters: [11 cm, 6 cm]\n  weight: 1.8 kg\n");
    assertEquals(1.8 / DENSITY, file.taper().orElseThrow().volume(), 1e-12);
  }

  @Test
  void density_isThatOfTheCompositionAtTheStart() {
    String text =
        CookTexts.spoilt("  shape: slab\n  thickness: 40 mm\n", "  shape: sphere\n  weight: 1 kg\n")
            .replaceFirst("material: \\{.*\\}", "material: beef loin");
    double density =
        ChoiOkos.density(Materials.find("beef loin").orElseThrow().composition(), 278.15);
    assertEquals(
        Math.cbrt(6 / Math.PI / density),
        CookTexts.read(text).cook().cut().shape().thickness(),
        1e-12);
  }

  @Test
  void weightBesideAllSizes_isKeptIfItAgrees() {
    String sizes = "  shape: cylinder\n  diameter: 96 mm\n  length: 310 mm\n  weight: ";
    assertEquals(2.6, cut(sizes + "2.6 kg\n").extent().orElseThrow().mass());
    assertEquals(
        "cook.yaml:10:11: found \"3.4 kg\", expected about 2.38 kg, the weight of a cylinder of"
            + " these sizes at 1060 kg/m³ (within 20 %): measure again, or leave out the number you"
            + " trust least",
        error(sizes + "3.4 kg\n"));
    double weight = 1000 * Math.PI / 4 * 0.096 * 0.096 * 0.31 * DENSITY;
    cut(sizes + 1.199 * weight + " g\n");
    cut(sizes + weight / 1.199 + " g\n");
    error(sizes + 1.201 * weight + " g\n");
    error(sizes + weight / 1.201 + " g\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'  shape: cylinder\n  weight: 2 kg\n' | 6:3: found no key \"diameter\", expected it, or"
            + " girth, or weight and length instead",
        "'  shape: cylinder\n' | 6:3: found no key \"diameter\", expected it, or girth, or weight"
            + " and length instead",
        "'  shape: slab\n  weight: 2 kg\n' | 6:3: found no key \"thickness\", expected it, or"
            + " weight, length and width instead",
        "'  shape: box\n  weight: 2 kg\n  width: 8 cm\n' | 6:3: found no key \"thickness\", expected"
            + " it, or weight and the other two sizes instead",
        "'  shape: finite-cylinder\n  diameter: 8 cm\n' | 6:3: found no key \"length\", expected it,"
            + " or weight instead",
        "'  shape: taper\n  length: 30 cm\n' | 6:3: found no key \"diameters\", expected it, or"
            + " girths instead",
        "'  shape: sphere\n  diameter: 10 cm\n  girth: 40 cm\n' | 9:10: found \"40 cm\", expected"
            + " about 314 mm, that of a round cut 100 mm across (within 10 %)",
        "'  shape: box\n  girth: 40 cm\n' | 8:10: found \"40 cm\", expected no girth for a box",
        "'  shape: cylinder\n  diameter: 2 mm\n  weight: 90 kg\n' | 9:11: found \"90 kg\", expected a"
            + " weight that fits the other sizes: by this one the length would be 27026311.1 mm",
        "'  shape: sphere\n  weight: 2\n' | 8:11: found \"2\", expected a weight, such as 2.4 kg or"
            + " 5 lb 4 oz (kg, g, lb, oz); 2 of kg, g, lb or oz?",
      })
  void sizesThatDoNotMakeAShape_areNamed(String sizes, String message) {
    assertEquals("cook.yaml:" + message, error(sizes));
  }

  @Test
  void sizeFromTheWeight_standsAmongTheFacts() {
    assertEquals(
        Optional.of("95.7 mm (from the weight, at 1060 kg/m³)"),
        cut("  shape: cylinder\n  weight: 5 lb 4 oz\n  length: 31.2 cm\n").facts().stream()
            .filter(fact -> fact.subject().equals("diameter"))
            .map(Fact::text)
            .findFirst());
  }
}
