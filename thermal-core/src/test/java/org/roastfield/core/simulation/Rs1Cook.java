package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.units.Temperatures;

/** A case of RS-1 as a cook; each leg of the sear is a stage. */
final class Rs1Cook {

  private Rs1Cook() {}

  static Cook of(Rs1Reference reference) {
    return of(reference, Double.NaN);
  }

  /** The cook with a rest of another length [s], or that of the reference if NaN. */
  static Cook of(Rs1Reference reference, double restSeconds) {
    double radius = reference.body().radiusMetres();
    Rs1Reference.Material m = reference.material();
    Material material =
        Material.constant("RS-1", m.conductivity(), m.density(), m.specificHeatCapacity());
    List<Stage> stages = new ArrayList<>();
    for (Rs1Reference.Stage stage : reference.stages()) {
      for (Rs1Reference.Leg leg : stage.legs()) {
        stages.add(Stage.allRound(stage.name(), new Rs1Law(leg, m), end(stage, leg, restSeconds)));
      }
    }
    Cut cut = new Cut(shape(reference), material, Temperatures.celsius(reference.startCelsius()));
    return new Cook(cut, stages, List.of(Probe.atDepth("middle", radius / 2)));
  }

  private static Shape shape(Rs1Reference reference) {
    double radius = reference.body().radiusMetres();
    return switch (reference.body().exponent()) {
      case 0 -> Slab.ofHalfThickness(radius);
      case 1 -> Cylinder.ofRadius(radius);
      case 2 -> Sphere.ofRadius(radius);
      default -> throw new IllegalArgumentException(reference.body().shape());
    };
  }

  private static StageEnd end(Rs1Reference.Stage stage, Rs1Reference.Leg leg, double restSeconds) {
    if (stage.end() instanceof Rs1Reference.CentreReaches reaches) {
      return StageEnd.coreRisesTo(
          Temperatures.celsius(reaches.centreCelsius()), reaches.latestSeconds());
    }
    if (stage.name().equals("rest") && !Double.isNaN(restSeconds)) {
      return StageEnd.after(restSeconds);
    }
    double seconds = ((Rs1Reference.AfterDuration) stage.end()).seconds();
    return StageEnd.after(Double.isFinite(leg.seconds()) ? leg.seconds() : seconds);
  }
}
