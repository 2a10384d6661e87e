package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.units.Temperatures;

class MaterialsTest {

  private static final double FORTY = Temperatures.celsius(40);

  static List<Foodstuff> all() {
    return Materials.all();
  }

  @Test
  void catalogue_hasTheCutsAndFoodsOfTheHouse() {
    List<String> names = Materials.all().stream().map(Foodstuff::name).toList();
    assertEquals(
        List.of(
            "beef loin",
            "beef brisket",
            "pork loin",
            "pork shoulder",
            "lamb leg",
            "venison",
            "bison",
            "chicken breast",
            "chicken thigh",
            "turkey breast",
            "turkey thigh",
            "duck breast",
            "salmon",
            "tuna",
            "beetroot",
            "cauliflower"),
        names);
    for (String name : names) {
      assertEquals(name, Materials.named(name).name());
      assertEquals(name, Materials.find(name).orElseThrow().material().name());
    }
  }

  /** Round figures of raw foods: a slipped digit in a composition leaves them. */
  @ParameterizedTest
  @MethodSource("all")
  void properties_arePlausible(Foodstuff food) {
    Material material = food.material();
    boolean animal = food.kind() != FoodKind.VEGETABLE;
    assertWithin(material.density(), 1005, 1075);
    assertWithin(material.heatCapacity().at(FORTY), animal ? 3200 : 3850, animal ? 3700 : 4150);
    assertWithin(material.conductivity().at(FORTY), animal ? 0.38 : 0.55, 0.62);
    assertWithin(1e7 * material.diffusivity(FORTY), 1.15, animal ? 1.35 : 1.5);
    assertWithin(food.composition().protein(), animal ? 0.16 : 0.01, animal ? 0.25 : 0.03);
  }

  /** Lean and fatty values of measurements, 0 to 100 °C, in [JamesJames2002]. */
  @ParameterizedTest
  @CsvSource({"beef loin, 3430", "chicken breast, 3390", "pork loin, 3430"})
  void meanHeatCapacity_isNearThatOfMeasurements(String name, double measured) {
    Material material = Materials.named(name).material();
    double mean = material.heatBetween(Temperatures.celsius(0), Temperatures.celsius(100)) / 100;
    assertEquals(measured, mean, 0.09 * measured);
  }

  @Test
  void fatOfMeat_meltsMostlyBetweenTwentyAndFiftyDegrees() {
    Foodstuff brisket = Materials.named("beef brisket");
    LatentHeat fat = brisket.latentHeats().get(0);
    double perFat =
        (fat.takenUp(Temperatures.celsius(50)) - fat.takenUp(Temperatures.celsius(20)))
            / brisket.composition().fat();
    assertWithin(perFat, 100e3, 140e3);
    double inAll = fat.heat() / brisket.material().heatCapacity().at(FORTY);
    assertEquals(10, inAll, 0.5);
  }

  @Test
  void proteinsOfLeanBeef_takeUpWhatWasMeasured() {
    List<LatentHeat> heats = Materials.named("beef loin").latentHeats();
    double protein = heats.stream().skip(1).mapToDouble(LatentHeat::heat).sum();
    assertWithin(protein, 3.0e3, 3.9e3);
  }

  @Test
  void oilAndVegetables_doNotMelt() {
    assertTrue(
        Materials.named("salmon").latentHeats().stream().noneMatch(h -> h.name().equals("fat")));
    assertEquals(List.of(), Materials.named("beetroot").latentHeats());
    assertEquals(List.of(), Materials.named("beetroot").material().latentHeats());
  }

  @Test
  void spread_isLargerForFattyCuts() {
    Foodstuff.Spread lean = Materials.named("pork loin").spread();
    Foodstuff.Spread fatty = Materials.named("pork shoulder").spread();
    assertEquals(new Foodstuff.Spread(0.03, 0.5, 0.07, 0.07), lean);
    assertEquals(new Foodstuff.Spread(0.03, 0.5, 0.10, 0.09), fatty);
    assertThrows(IllegalArgumentException.class, () -> new Foodstuff.Spread(0, 0, 0, Double.NaN));
  }

  @Test
  void unknownName_isRefusedWithTheKnownOnes() {
    String message =
        String.valueOf(
            assertThrows(IllegalArgumentException.class, () -> Materials.named("pork lion"))
                .getMessage());
    assertTrue(message.startsWith("name must be one of beef loin, beef brisket, "), message);
    assertTrue(message.endsWith(", beetroot, cauliflower, was \"pork lion\""), message);
  }

  @Test
  void statedComposition_becomesAFoodstuff() {
    Composition goat = Composition.ofMeat(0.7584, 0.206, 0.0231, 0.0111);
    Material material = Foodstuff.of("goat", FoodKind.MEAT, goat).material();
    assertEquals(FoodKind.MEAT.freezingPoint(), material.freezingPoint());
    assertEquals(3, material.latentHeats().size());
    assertEquals(ChoiOkos.material("goat", goat).density(), material.density());
    assertThrows(
        IllegalArgumentException.class, () -> new Foodstuff("goat", FoodKind.MEAT, goat, " "));
  }

  private static void assertWithin(double value, double low, double high) {
    assertTrue(value >= low && value <= high, () -> value + " not in " + low + " … " + high);
  }
}
