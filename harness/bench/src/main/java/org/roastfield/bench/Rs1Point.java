package org.roastfield.bench;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;

/** {@link Rs1} as a function of conductivity, surface drive, contact, start and size. */
final class Rs1Point {

  private static final double CONTACT_ABOVE = 100;

  private Rs1Point() {}

  /** The point of a case: k, h and w of the roast, h of the contact, start, half thickness. */
  static ParameterPoint of(String name) {
    Cut cut = Rs1.cook(name).cut();
    return ParameterPoint.empty()
        .with("conductivity", 0.48)
        .with("roast heat transfer", 17)
        .with("roast wetness", 0.35)
        .with("contact", 300)
        .with("start", cut.startTemperature(), 10)
        .with("size", cut.shape().halfThickness());
  }

  /** The case at a point. */
  static Cook cook(String name, ParameterPoint point) {
    Cook plain = Rs1.cook(name);
    Material material = Material.constant("RS-1", point.value("conductivity"), 1060, 3450);
    List<Stage> stages = new ArrayList<>();
    for (Stage stage : plain.stages()) {
      stages.add(Stage.allRound(stage.name(), law(stage, point), stage.end()));
    }
    Cut cut = new Cut(shape(plain, point.value("size")), material, point.value("start"));
    return new Cook(cut, stages, List.of());
  }

  private static Rs1Law law(Stage stage, ParameterPoint point) {
    Rs1Law law = (Rs1Law) stage.upper();
    double h = law.heatTransfer();
    double w = law.wetness();
    if (stage.name().equals("roast")) {
      h = point.value("roast heat transfer");
      w = point.value("roast wetness");
    } else if (h > CONTACT_ABOVE) {
      h = point.value("contact");
    }
    return new Rs1Law(h, w, law.vapourPressure(), law.mean(), law.amplitude(), law.period());
  }

  private static Shape shape(Cook plain, double size) {
    return switch ((int) plain.cut().shape().exponent()) {
      case 0 -> Slab.ofHalfThickness(size);
      case 1 -> Cylinder.ofRadius(size);
      default -> Sphere.ofRadius(size);
    };
  }
}
