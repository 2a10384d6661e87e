package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;

class StationsTest {

  private static final String LEG = new String(Published.lambLegBytes(), StandardCharsets.UTF_8);

  @Test
  void thickestStation_isTheCookOfTheFile() {
    assertLeadIsItself(read(LEG));
  }

  /** Basted: the water goes on every station. */
  @Test
  void thickestStation_isTheCookOfTheFile_whenBasted() {
    CookFile basted =
        read(
            LEG.replace("wetness: 0.3", "wetness: drying")
                .replace("wetness: 0.05", "wetness: drying\n    baste: 80 g/m²"));
    assertTrue(basted.cook().stages().get(1).wetting().upper() > 0);
    assertLeadIsItself(basted);
  }

  @Test
  void otherShapes_haveNoStations() {
    CookFile loin = Published.porkLoin();
    assertEquals(List.of(), Stations.of(loin, run(loin)));
  }

  private static void assertLeadIsItself(CookFile file) {
    SimulationResult result = run(file);
    Station thick = Stations.of(file, result).get(0);
    assertEquals("thick end", thick.name());
    assertEquals(result.core().at(result.endTime()), thick.coreAtEnd(), 0.02);
    assertEquals(CoreHistory.highest(result), thick.warmestCore(), 0.02);
    double evaporated = result.water().evaporatedUpper();
    assertEquals(evaporated, thick.evaporated(), 1e-3 * evaporated);
  }

  private static CookFile read(String text) {
    return CookFileReader.parse("leg.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  private static SimulationResult run(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }
}
