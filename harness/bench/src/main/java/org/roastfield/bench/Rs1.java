package org.roastfield.bench;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.units.Temperatures;

/**
 * The model problem RS-1 ({@code datasets/reference/rs1/spec.md}): a roast, a sear of eight legs, a
 * rest.
 */
final class Rs1 {

  private static final int LEGS = 8;

  private Rs1() {}

  /** The case named C1 (cylinder), S1 (slab) or P1 (sphere). */
  static Cook cook(String name) {
    Material material = Material.constant("RS-1", 0.48, 1060, 3450);
    Cut cut = new Cut(shape(name), material, Temperatures.celsius(6));
    List<Stage> stages = new ArrayList<>();
    stages.add(
        Stage.allRound(
            "roast",
            new Rs1Law(17, 0.35, 1500, 115, 4, 1500),
            StageEnd.coreRisesTo(Temperatures.celsius(48), 36_000)));
    for (int leg = 0; leg < LEGS; leg++) {
      Rs1Law law =
          leg % 2 == 0
              ? new Rs1Law(300, 0, 1500, 250, 0, 1500)
              : new Rs1Law(25, 0, 1500, 190, 0, 1500);
      stages.add(Stage.allRound("sear", law, StageEnd.after(30)));
    }
    stages.add(
        Stage.allRound("rest", new Rs1Law(8, 0.12, 1200, 22, 0, 1500), StageEnd.after(1200)));
    return new Cook(cut, stages, List.of());
  }

  private static Shape shape(String name) {
    return switch (name) {
      case "C1" -> Cylinder.ofRadius(0.045);
      case "S1" -> Slab.ofHalfThickness(0.025);
      case "P1" -> Sphere.ofRadius(0.050);
      default -> throw new IllegalArgumentException("name must be C1, S1 or P1, was " + name);
    };
  }
}
