package org.roastfield.core.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.simulation.Rs1Law;
import org.roastfield.core.units.Temperatures;

/**
 * Members of RS-1: conductivity, radius, transfer in the roast, wetness and contact in the sear
 * within 5 %, start within 1 K.
 */
record Rs1Members(Rs1Reference reference) {

  private static final double SPREAD = 0.05;

  /** The case itself. */
  Cook template() {
    return cook(1, 1, 1, 1, 1, 0);
  }

  /** Member of an index: a pure function of it. */
  Cook member(int index) {
    SplittableRandom random = new SplittableRandom(index);
    return cook(
        factor(random),
        factor(random),
        factor(random),
        factor(random),
        factor(random),
        2 * random.nextDouble() - 1);
  }

  private static double factor(SplittableRandom random) {
    return 1 + SPREAD * (2 * random.nextDouble() - 1);
  }

  private Cook cook(
      double conductivity,
      double radius,
      double transfer,
      double wetness,
      double contact,
      double warmer) {
    Rs1Reference.Material m = reference.material();
    Material material =
        Material.constant(
            "RS-1", m.conductivity() * conductivity, m.density(), m.specificHeatCapacity());
    List<Stage> stages = new ArrayList<>();
    for (Rs1Reference.Stage stage : reference.stages()) {
      for (Rs1Reference.Leg leg : stage.legs()) {
        Rs1Reference.Leg scaled =
            new Rs1Reference.Leg(
                leg.seconds(),
                leg.heatTransferCoefficient() * factorOf(stage, leg, transfer, contact),
                leg.wetness() * wetness,
                leg.vapourPressurePascals(),
                leg.air(),
                leg.wall());
        stages.add(Stage.allRound(stage.name(), new Rs1Law(scaled, m), end(stage, leg)));
      }
    }
    double start = Temperatures.celsius(reference.startCelsius()) + warmer;
    return new Cook(new Cut(shape(radius), material, start), stages, List.of());
  }

  /** Legs on the bars alone have a coefficient above 100 W/(m²·K). */
  private static double factorOf(
      Rs1Reference.Stage stage, Rs1Reference.Leg leg, double transfer, double contact) {
    if (leg.heatTransferCoefficient() > 100) {
      return contact;
    }
    return stage.name().equals("roast") ? transfer : 1;
  }

  private static StageEnd end(Rs1Reference.Stage stage, Rs1Reference.Leg leg) {
    if (stage.end() instanceof Rs1Reference.CentreReaches reaches) {
      return StageEnd.coreRisesTo(
          Temperatures.celsius(reaches.centreCelsius()), reaches.latestSeconds());
    }
    double whole = ((Rs1Reference.AfterDuration) stage.end()).seconds();
    return StageEnd.after(Double.isFinite(leg.seconds()) ? leg.seconds() : whole);
  }

  private Shape shape(double factor) {
    double radius = reference.body().radiusMetres() * factor;
    return switch (reference.body().exponent()) {
      case 0 -> Slab.ofHalfThickness(radius);
      case 1 -> Cylinder.ofRadius(radius);
      case 2 -> Sphere.ofRadius(radius);
      default -> throw new IllegalArgumentException(reference.body().shape());
    };
  }
}
