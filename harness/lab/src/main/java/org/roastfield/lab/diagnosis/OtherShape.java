package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;

/** Cooks of cuts of another shape of the same half thickness. */
final class OtherShape {

  private OtherShape() {}

  /** As stated, and as a slab, long round piece or sphere where the stated one is another. */
  static List<UnaryOperator<Cook>> all(Shape stated) {
    List<UnaryOperator<Cook>> all = new ArrayList<>();
    all.add(cook -> cook);
    if (!(stated instanceof Slab)) {
      all.add(cook -> of(cook, Slab.ofThickness(2 * half(cook))));
    }
    if (!(stated instanceof Cylinder)) {
      all.add(cook -> of(cook, Cylinder.ofRadius(half(cook))));
    }
    if (!(stated instanceof Sphere)) {
      all.add(cook -> of(cook, Sphere.ofRadius(half(cook))));
    }
    return all;
  }

  private static double half(Cook cook) {
    return cook.cut().shape().halfThickness();
  }

  private static Cook of(Cook cook, Shape shape) {
    Cut cut = cook.cut();
    return new Cook(
        new Cut(shape, cut.material(), cut.startTemperature()), cook.stages(), cook.probes());
  }
}
