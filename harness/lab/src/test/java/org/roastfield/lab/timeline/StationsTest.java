package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.SurfaceFlux;
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

  /** The coefficient of the thin end is higher than that of the thick one. */
  @Test
  void stationsInStillAir_areMeasuredByTheirOwnDiameters() {
    CookFile file = read(LEG.replace("heat-transfer: 6 W/(m²·K)", "heat-transfer: still air"));
    SimulationResult result = run(file);
    assertLeadIsItself(file);
    Station thin = Stations.of(file, result).get(2);
    Cut cut = file.cook().cut();
    double size = thin.diameter() / cut.shape().thickness();
    List<Stage> stages = new ArrayList<>();
    for (int i = 0; i < result.stages().size(); i++) {
      Stage stage = file.cook().stages().get(i);
      StageEnd end = StageEnd.after(result.stages().get(i).duration());
      stages.add(Stage.allRound(stage.name(), stage.upper().scaled(size), end));
    }
    Cut here =
        new Cut(Cylinder.ofDiameter(thin.diameter()), cut.material(), cut.startTemperature());
    SimulationResult alone =
        Simulator.withDefaults().run(new Cook(here, stages, List.of())).orElseThrow();
    assertEquals(alone.core().at(alone.endTime()), thin.coreAtEnd(), 1e-9);
    SurfaceFlux own = new SurfaceFlux();
    stages.get(1).upper().evaluate(310, 0, own);
    SurfaceFlux thick = new SurfaceFlux();
    file.cook().stages().get(1).upper().evaluate(310, 0, thick);
    assertTrue(Math.abs(own.heatFlux()) > 1.01 * Math.abs(thick.heatFlux()));
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
