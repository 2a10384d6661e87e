package org.roastfield.core.ensemble;

import java.util.List;
import java.util.SplittableRandom;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Members of test ensembles: a loin roasted gently, seared and rested, each a pure function of its
 * index.
 */
final class Draws {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  private Draws() {}

  static Cook template() {
    return cook(0.045, 0.48, 388, 0.3, 6);
  }

  /** Member of an index: everything drawn within a tenth. */
  static Cook member(int index) {
    SplittableRandom random = new SplittableRandom(index);
    return cook(
        0.045 * factor(random),
        0.48 * factor(random),
        388 * (1 + 0.01 * (2 * random.nextDouble() - 1)),
        0.3 * factor(random),
        6 * factor(random));
  }

  private static double factor(SplittableRandom random) {
    return 1 + 0.1 * (2 * random.nextDouble() - 1);
  }

  static Cook cook(double radius, double conductivity, double air, double wetness, double h) {
    Chamber pit = Chamber.steady(air, 0.03, PRESSURE);
    Chamber room = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);
    SurfaceLaw sear =
        SurfaceLaw.sum(
            new Contact(200, Signal.constant(Temperatures.celsius(230))),
            pit.around(10, 0.9, 0, 0.98));
    return cook(
        radius,
        conductivity,
        Stage.allRound(
            "gentle",
            pit.around(h, 0.92, wetness, 0.98),
            StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000)),
        Stage.allRound("sear", sear, StageEnd.after(120)),
        Stage.allRound("rest", room.around(5, 0.9, 0.1, 0.98), StageEnd.after(1800)));
  }

  static Cook cook(double radius, double conductivity, Stage... stages) {
    Material material = Material.constant("loin", conductivity, 1060, 3450);
    return new Cook(
        new Cut(Cylinder.ofRadius(radius), material, Temperatures.celsius(6)),
        List.of(stages),
        List.of());
  }

  /** A law without rows: the first stage of the template as a caller's own code. */
  record OwnLaw(double conductance, double mean, double amplitude, double period)
      implements SurfaceLaw {

    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      double air = mean + amplitude * StrictMath.sin(2 * Math.PI * time / period);
      flux.addHeat(conductance * (air - surfaceTemperature), -conductance);
    }

    @Override
    public double shortestPeriod() {
      return amplitude == 0 ? Double.POSITIVE_INFINITY : period;
    }
  }
}
