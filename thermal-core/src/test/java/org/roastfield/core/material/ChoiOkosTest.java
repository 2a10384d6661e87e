package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.units.Temperatures;

/** Cuts with properties that were computed apart from this code at 40 °C, and the components. */
class ChoiOkosTest {

  /** Last digits of the table: 0.7 kg/m³ and 1.5 J/(kg·K); the sums are checked exactly below. */
  private static final double TABLE_ALLOWED = 7e-4;

  private static final double FORTY = Temperatures.celsius(40);

  @ParameterizedTest
  @CsvSource({
    "71.7, 21.2, 4.4, 1.1, 1049, 3593, 0.491, 1.30",
    "55.2, 16.9, 26.5, 0.8, 1013, 3222, 0.390, 1.20",
    "72.2, 21.4, 5.7, 1.05, 1047, 3574, 0.485, 1.30",
    "74.1, 20.6, 4.5, 1.07, 1046, 3616, 0.495, 1.31",
    "74.8, 23.1, 1.2, 1.0, 1056, 3633, 0.504, 1.31",
    "70.4, 20.4, 8.0, 0.9, 1041, 3547, 0.475, 1.29",
    "64.9, 20.4, 13.4, 1.1, 1037, 3424, 0.444, 1.25",
    "76.4, 19.9, 3.5, 1.2, 1046, 3651, 0.505, 1.32"
  })
  void cuts_haveTheTabulatedProperties(
      double water,
      double protein,
      double fat,
      double ash,
      double density,
      double heatCapacity,
      double conductivity,
      double diffusivity) {
    Material material = ChoiOkos.material("cut", meat(water, protein, fat, ash));
    assertEquals(density, material.density(), TABLE_ALLOWED * density);
    assertEquals(heatCapacity, material.heatCapacity().at(FORTY), TABLE_ALLOWED * heatCapacity);
    assertEquals(conductivity, material.conductivity().at(FORTY), 0.0005);
    assertEquals(diffusivity, 1e7 * material.diffusivity(FORTY), 0.0051);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 0, 20, 47, 83, 120, 150})
  void fittedConductivity_isThatOfTheMixtureWithinOneInAHundredThousand(double celsius) {
    double temperature = Temperatures.celsius(celsius);
    for (Composition composition :
        new Composition[] {
          meat(71.7, 21.2, 4.4, 1.1),
          meat(10, 5, 84.5, 0.5),
          Composition.of(0.876, 0.017, 0.002, 0.068, 0.028, 0.009),
          Composition.of(0, 0, 1, 0, 0, 0)
        }) {
      Material material = ChoiOkos.material("food", composition);
      double exact = ChoiOkos.conductivity(composition, temperature);
      assertEquals(exact, material.conductivity().at(temperature), 1e-5 * exact);
    }
  }

  @Test
  void pureComponents_haveTheirOwnPolynomials() {
    Composition water = Composition.of(1, 0, 0, 0, 0, 0);
    double t = 60;
    double temperature = Temperatures.celsius(t);
    assertEquals(
        0.57109 + 1.7625e-3 * t - 6.7036e-6 * t * t,
        ChoiOkos.conductivity(water, temperature),
        1e-12);
    assertEquals(
        997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t, ChoiOkos.density(water, temperature), 1e-9);
    assertEquals(
        4176.2 - 9.0864e-2 * t + 5.4731e-3 * t * t,
        ChoiOkos.material("water", water).heatCapacity().at(temperature),
        1e-9);
    Composition fat = Composition.of(0, 0, 1, 0, 0, 0);
    assertEquals(
        0.18071 - 2.7604e-4 * t - 1.7749e-7 * t * t,
        ChoiOkos.conductivity(fat, temperature),
        1e-12);
  }

  @Test
  void heatCapacity_isAddedByMassAndVolumeByDensity() {
    Composition c = meat(55.2, 16.9, 26.5, 0.8);
    double t = 40;
    double heatCapacity =
        c.water() * (4176.2 - 9.0864e-2 * t + 5.4731e-3 * t * t)
            + c.protein() * (2008.2 + 1.2089 * t - 1.3129e-3 * t * t)
            + c.fat() * (1984.2 + 1.4733 * t - 4.8008e-3 * t * t)
            + c.ash() * (1092.6 + 1.8896 * t - 3.6817e-3 * t * t);
    double volume =
        c.water() / (997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t)
            + c.protein() / (1329.9 - 0.51840 * t)
            + c.fat() / (925.59 - 0.41757 * t)
            + c.ash() / (2423.8 - 0.28063 * t);
    Material material = ChoiOkos.material("brisket", c);
    assertEquals(heatCapacity, material.heatCapacity().at(FORTY), 1e-9);
    assertEquals(1 / volume, material.density(), 1e-9);
  }

  @Test
  void fat_lowersTheConductivity() {
    double lean = ChoiOkos.conductivity(meat(74, 22, 3, 1), FORTY);
    double fatty = ChoiOkos.conductivity(meat(54, 16, 29, 1), FORTY);
    assertTrue(fatty < lean);
  }

  @Test
  void densityOfTheMaterial_isThatAtFortyDegrees() {
    Composition composition = meat(71.7, 21.2, 4.4, 1.1);
    assertEquals(
        ChoiOkos.density(composition, FORTY), ChoiOkos.material("cut", composition).density());
  }

  @Test
  void temperaturesOutsideTheRange_areRefused() {
    Composition composition = meat(71.7, 21.2, 4.4, 1.1);
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> ChoiOkos.conductivity(composition, 430));
    assertEquals("temperature must be in [272.15, 423.15], was 430.0", refused.getMessage());
  }

  private static Composition meat(double water, double protein, double fat, double ash) {
    return Composition.ofMeat(water / 100, protein / 100, fat / 100, ash / 100);
  }
}
