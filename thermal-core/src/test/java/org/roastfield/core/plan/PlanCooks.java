package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Cooks to plan: the boathouse pork loin, and thin slices. */
final class PlanCooks {

  static final String SOURCE = "for tests";
  static final Material PORK = Materials.named("pork loin").material();

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  private PlanCooks() {}

  /** Beliefs about cooker, cut and probe, about as wide as without any log. */
  static ParameterSet parameters() {
    return ParameterSet.of(
        Parameter.multiplier("convection", Owner.COOKER, 0.3, 0.5, 2, SOURCE),
        Parameter.multiplier("wetness", Owner.COOKER, 0.4, 0.2, 3, SOURCE),
        Parameter.offset("air", "K", Owner.COOKER, 4, -15, 15, SOURCE),
        Parameter.multiplier("size", Owner.CUT, 0.06, 0.8, 1.2, SOURCE),
        Parameter.offset("start", "K", Owner.CUT, 1.5, -6, 6, SOURCE),
        Parameter.offset("bias", "K", Owner.PROBE, 0.5, -2, 2, SOURCE),
        new Parameter("miss", "m", Owner.PROBE, Scale.LOGARITHM, 0.003, 0.6, 1e-4, 0.015, SOURCE));
  }

  static Prior prior() {
    return Prior.of(parameters());
  }

  /** The loin of the boathouse supper: 96 mm, 110 °C, rolled over a grate, rested under foil. */
  static PlannedCook loin() {
    return loin(0.096, Temperatures.celsius(110));
  }

  static PlannedCook loin(double diameter, double air) {
    return new PlannedCook(
        point -> loin(point, Cylinder.ofDiameter(diameter * point.value("size")), air),
        roles(8 / 4 * 2),
        "middle");
  }

  /** A slice that is only warmed and then put into a cold room. */
  static PlannedCook coldSlice(double thickness) {
    return PlannedCook.of(
        point -> {
          Chamber pit = Chamber.steady(Temperatures.celsius(60), 0.02, PRESSURE);
          Chamber cold = Chamber.steady(Temperatures.celsius(2), 0.004, PRESSURE);
          Cut cut = new Cut(Slab.ofThickness(thickness), PORK, Temperatures.celsius(8));
          return Cook.of(
              cut,
              Stage.allRound(
                  "gentle",
                  pit.around(6 * point.value("convection"), 0.92, 0, 0.98),
                  StageEnd.coreRisesTo(Temperatures.celsius(40), 36_000)),
              Stage.allRound("rest", cold.around(40, 0.92, 0.5, 0.98), StageEnd.after(900)));
        },
        List.of(Role.GENTLE, Role.REST));
  }

  private static List<Role> roles(int sears) {
    List<Role> roles = new ArrayList<>(List.of(Role.GENTLE));
    for (int i = 0; i < sears; i++) {
      roles.add(Role.SEAR);
    }
    roles.add(Role.REST);
    return roles;
  }

  private static Cook loin(ParameterPoint point, Shape shape, double air) {
    double h = point.value("convection");
    Chamber pit = Chamber.steady(air + point.value("air"), 0.035, PRESSURE);
    Chamber hot = Chamber.steady(Temperatures.celsius(180), 0.01, PRESSURE);
    Chamber room = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);
    SurfaceLaw free = hot.around(10 * h, 0.92, 0, 0.98);
    SurfaceLaw touched =
        SurfaceLaw.sum(
            hot.around(7.5 * h, 0.69, 0, 0.98),
            new Contact(62.5, Signal.constant(Temperatures.celsius(260))));
    List<Stage> stages = new ArrayList<>();
    stages.add(
        Stage.allRound(
            "gentle",
            pit.around(6 * h, 0.92, Math.min(1, 0.3 * point.value("wetness")), 0.98),
            StageEnd.coreRisesTo(Temperatures.celsius(52), 6 * 3600)));
    stages.addAll(Turns.every(25, 8).rolls("sear", touched, free, 4));
    stages.add(Stage.allRound("rest", room.around(6, 0.3, 0, 0.98), StageEnd.after(1200)));
    Cut cut = new Cut(shape, PORK, Temperatures.celsius(8) + point.value("start"));
    Probe probe =
        Probe.besideCore("middle", point.value("miss"))
            .with(Instrument.IDEAL.withBias(point.value("bias")));
    return new Cook(cut, stages, List.of(probe));
  }
}
