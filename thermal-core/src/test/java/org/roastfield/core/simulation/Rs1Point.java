package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.units.Temperatures;

/** RS-1 as a function of six parameters: k, h and w of the roast, h of the contact, start, R. */
final class Rs1Point {

  static final Probe MIDDLE = Probe.atDepth("middle", 0.012);

  private static final double CONTACT_ABOVE = 100;

  private final Rs1Reference reference;

  private Rs1Point(Rs1Reference reference) {
    this.reference = reference;
  }

  static Rs1Point of(String name) {
    return new Rs1Point(Rs1Reference.load(name));
  }

  /** The point at which {@link #cook} is the cook of the reference. */
  ParameterPoint point() {
    Rs1Reference.Leg roast = reference.stage("roast").legs().get(0);
    return ParameterPoint.empty()
        .with("conductivity", reference.material().conductivity())
        .with("roast heat transfer", roast.heatTransferCoefficient())
        .with("roast wetness", roast.wetness())
        .with("contact", reference.stage("sear").legs().get(0).heatTransferCoefficient())
        .with("start", Temperatures.celsius(reference.startCelsius()), 10)
        .with("radius", reference.body().radiusMetres());
  }

  Cook cook(ParameterPoint point) {
    Rs1Reference.Material m = reference.material();
    Material material =
        Material.constant(
            "RS-1", point.value("conductivity"), m.density(), m.specificHeatCapacity());
    List<Stage> stages = new ArrayList<>();
    for (Rs1Reference.Stage stage : reference.stages()) {
      for (Rs1Reference.Leg leg : stage.legs()) {
        Rs1Law law = new Rs1Law(leg(stage.name(), leg, point), m);
        stages.add(Stage.allRound(stage.name(), law, end(stage, leg)));
      }
    }
    Cut cut = new Cut(shape(point.value("radius")), material, point.value("start"));
    return new Cook(cut, stages, List.of());
  }

  private static Rs1Reference.Leg leg(String stage, Rs1Reference.Leg leg, ParameterPoint point) {
    double h = leg.heatTransferCoefficient();
    double w = leg.wetness();
    if (stage.equals("roast")) {
      h = point.value("roast heat transfer");
      w = point.value("roast wetness");
    } else if (h > CONTACT_ABOVE) {
      h = point.value("contact");
    }
    return new Rs1Reference.Leg(
        leg.seconds(), h, w, leg.vapourPressurePascals(), leg.air(), leg.wall());
  }

  private Shape shape(double radius) {
    return switch (reference.body().exponent()) {
      case 0 -> Slab.ofHalfThickness(radius);
      case 1 -> Cylinder.ofRadius(radius);
      case 2 -> Sphere.ofRadius(radius);
      default -> throw new IllegalArgumentException(reference.body().shape());
    };
  }

  private static StageEnd end(Rs1Reference.Stage stage, Rs1Reference.Leg leg) {
    if (stage.end() instanceof Rs1Reference.CentreReaches reaches) {
      return StageEnd.coreRisesTo(
          Temperatures.celsius(reaches.centreCelsius()), reaches.latestSeconds());
    }
    double seconds = ((Rs1Reference.AfterDuration) stage.end()).seconds();
    return StageEnd.after(Double.isFinite(leg.seconds()) ? leg.seconds() : seconds);
  }
}
