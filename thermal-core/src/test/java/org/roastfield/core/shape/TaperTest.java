package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class TaperTest {

  private static final Taper LEG = Taper.between(0.110, 0.060, 0.3);

  @Test
  void threeStations_lieInTheMiddlesOfTheThirds() {
    List<Taper.Station> stations = LEG.stations(3);
    assertEquals(3, stations.size());
    assertEquals(0.05, stations.get(0).position(), 1e-15);
    assertEquals(0.15, stations.get(1).position(), 1e-15);
    assertEquals(0.110 - 0.050 / 6, stations.get(0).crossSection().thickness(), 1e-15);
    assertEquals(0.085, stations.get(1).crossSection().thickness(), 1e-15);
    assertEquals(0.060 + 0.050 / 6, stations.get(2).crossSection().thickness(), 1e-15);
  }

  @Test
  void volumeAndArea_areThoseOfTheConeAndOfTheCylinder() {
    Taper cylinder = Taper.between(0.1, 0.1, 0.3);
    assertEquals(Math.PI * 0.05 * 0.05 * 0.3, cylinder.volume(), 1e-15);
    assertEquals(2 * Math.PI * 0.05 * (0.05 + 0.3), cylinder.area(), 1e-15);
    double whole = 0.66;
    double cut = 0.36;
    double volume = Math.PI / 3 * (0.055 * 0.055 * whole - 0.030 * 0.030 * cut);
    assertEquals(volume, LEG.volume(), 1e-15);
    double slope = Math.hypot(0.055, whole) / whole;
    double side = Math.PI * slope * (0.055 * whole - 0.030 * cut);
    assertEquals(side + Math.PI * (0.055 * 0.055 + 0.030 * 0.030), LEG.area(), 1e-15);
  }

  @Test
  void manyStations_sumToTheVolume() {
    Taper bulged = new Taper(List.of(0.07, 0.11, 0.10, 0.05), 0.33);
    double sum = 0;
    for (Taper.Station station : bulged.stations(999)) {
      double radius = station.crossSection().radius();
      sum += Math.PI * radius * radius * 0.33 / 999;
    }
    assertEquals(bulged.volume(), sum, 1e-6 * sum);
    assertEquals(0.11, bulged.diameterAt(0.11), 1e-15);
    assertEquals(0.05, bulged.diameterAt(0.33), 1e-15);
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "number of diameters must be in [2, 1000], was 1", () -> new Taper(List.of(0.1), 1));
    assertRefused(
        "diameter must be finite and greater than 0, was 0.0", () -> Taper.between(0.1, 0, 1));
    assertRefused(
        "length must be finite and greater than 0, was NaN",
        () -> Taper.between(0.1, 0.1, Double.NaN));
    assertRefused("count must be in [1, 1000], was 0", () -> LEG.stations(0));
    assertRefused("position must be in [0.0, 0.3], was 0.31", () -> LEG.diameterAt(0.31));
  }

  private static void assertRefused(
      String message, org.junit.jupiter.api.function.Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
