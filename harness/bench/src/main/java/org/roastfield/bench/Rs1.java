package org.roastfield.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
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
  private static final double SPREAD = 0.05;
  private static final double START = Temperatures.celsius(6);

  private Rs1() {}

  /** The case named C1 (cylinder), S1 (slab) or P1 (sphere). */
  static Cook cook(String name) {
    return cook(name, false);
  }

  /**
   * The case of a name.
   *
   * @param varying whether conductivity and heat capacity vary with temperature, about as those of
   *     lean meat
   */
  static Cook cook(String name, boolean varying) {
    Material material = varying ? lean() : constant(0.48);
    return cook(new Cut(shape(name, 1), material, START), 1, 1, 1);
  }

  /** Member of an ensemble: a pure function of its index. */
  static Cook member(String name, int index) {
    SplittableRandom random = new SplittableRandom(index);
    Material material = constant(0.48 * factor(random));
    double start = START + 2 * random.nextDouble() - 1;
    Cut cut = new Cut(shape(name, factor(random)), material, start);
    return cook(cut, factor(random), factor(random), factor(random));
  }

  private static double factor(SplittableRandom random) {
    return 1 + SPREAD * (2 * random.nextDouble() - 1);
  }

  private static Material lean() {
    return ChoiOkos.material("loin", Composition.ofMeat(0.722, 0.214, 0.057, 0.0105));
  }

  private static Material constant(double conductivity) {
    return Material.constant("RS-1", conductivity, 1060, 3450);
  }

  private static Cook cook(Cut cut, double transfer, double wetness, double contact) {
    List<Stage> stages = new ArrayList<>();
    stages.add(
        Stage.allRound(
            "roast",
            new Rs1Law(17 * transfer, 0.35 * wetness, 1500, 115, 4, 1500),
            StageEnd.coreRisesTo(Temperatures.celsius(48), 36_000)));
    for (int leg = 0; leg < LEGS; leg++) {
      Rs1Law law =
          leg % 2 == 0
              ? new Rs1Law(300 * contact, 0, 1500, 250, 0, 1500)
              : new Rs1Law(25 * transfer, 0, 1500, 190, 0, 1500);
      stages.add(Stage.allRound("sear", law, StageEnd.after(30)));
    }
    stages.add(
        Stage.allRound(
            "rest",
            new Rs1Law(8 * transfer, 0.12 * wetness, 1200, 22, 0, 1500),
            StageEnd.after(1200)));
    return new Cook(cut, stages, List.of());
  }

  private static Shape shape(String name, double scale) {
    return switch (name) {
      case "C1" -> Cylinder.ofRadius(0.045 * scale);
      case "S1" -> Slab.ofHalfThickness(0.025 * scale);
      case "P1" -> Sphere.ofRadius(0.050 * scale);
      default -> throw new IllegalArgumentException("name must be C1, S1 or P1, was " + name);
    };
  }
}
