package org.roastfield.bench;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.units.Temperatures;

/**
 * The boathouse pork loin in full: properties that vary, melting fat and proteins, a face that
 * dries, is fed and grows a crust, contact that settles, two rounds of four sides.
 */
final class Boathouse {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final int ROUNDS = 2;

  private Boathouse() {}

  static Cook porkLoin() {
    List<Stage> stages = new ArrayList<>();
    StageEnd pull = StageEnd.coreRisesTo(Temperatures.celsius(52), 6 * 3600);
    stages.add(Stage.allRound("gentle heat", face(6, 110, 0.92, 0.035), pull));
    SurfaceLaw bars = Touch.ofBars(Signal.constant(Temperatures.celsius(260)));
    for (int round = 0; round < ROUNDS; round++) {
      stages.add(Stage.allRound("on", drying(10, 180, 0.9, 0.02, bars), StageEnd.after(25)));
      stages.add(Stage.allRound("off", face(10, 180, 0.9, 0.02), StageEnd.after(75)));
    }
    stages.add(Stage.allRound("rest", face(6, 22, 0.3, 0.008), StageEnd.after(2900)));
    Cut loin =
        new Cut(
            Cylinder.ofDiameter(0.096),
            Materials.named("pork loin").material(),
            Temperatures.celsius(8));
    return new Cook(loin, stages, List.of());
  }

  private static SurfaceLaw face(double h, double air, double emissivity, double humidityRatio) {
    return drying(h, air, emissivity, humidityRatio, SurfaceLaw.insulated());
  }

  private static SurfaceLaw drying(
      double h, double air, double emissivity, double humidityRatio, SurfaceLaw metal) {
    Signal around = Signal.constant(Temperatures.celsius(air));
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, PRESSURE));
    SurfaceLaw dry =
        SurfaceLaw.sum(new Convection(h, around), new Radiation(emissivity, around), metal);
    return DryingFace.ofMeat(dry, Evaporation.of(1, h, 0.98, vapour, PRESSURE), 1, PRESSURE);
  }
}
