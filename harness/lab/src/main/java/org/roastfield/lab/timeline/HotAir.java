package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.HeatTransfer;
import org.roastfield.lab.files.StageSetup;

/**
 * Where the model of the surface is known to fail: moist faces in hot air that moves, as in a fan
 * oven (docs/model.md, section 6). A wet face would go on losing water for hours there, while a
 * real one dries and shrinks.
 */
final class HotAir {

  /** Air from which on roasts were computed with far too much loss [K]. */
  private static final double HOT = Temperatures.celsius(150);

  /** Convection beyond what still air gives, 5-8, and a draught [W/(m²·K)]; assumed. */
  private static final double MOVING = 15;

  /** Wetness below which little is lost, whatever the air; assumed. */
  private static final double MOIST = 0.1;

  /** Face temperature at which a correlation is asked [K]. */
  private static final double FACE = Temperatures.celsius(70);

  private HotAir() {}

  /** A caution that names the stages, if there are any. */
  static Optional<Caution> caution(CookFile file) {
    List<String> names = new ArrayList<>();
    boolean drying = true;
    for (StageSetup stage : file.stages()) {
      for (FaceSetup face : List.of(stage.upper(), stage.lower())) {
        if (fails(face)) {
          drying &= face.drying();
          if (!names.contains(stage.name())) {
            names.add(stage.name());
          }
        }
      }
    }
    return names.isEmpty() ? Optional.empty() : Optional.of(caution(names, drying));
  }

  private static boolean fails(FaceSetup face) {
    return face.air() >= HOT && face.wetness() >= MOIST && convection(face) >= MOVING;
  }

  private static double convection(FaceSetup face) {
    return face.heatTransfer() instanceof HeatTransfer.Stated stated
        ? stated.coefficient()
        : ((HeatTransfer.ByCorrelation) face.heatTransfer()).film().at(FACE, face.air());
  }

  private static Caution caution(List<String> names, boolean drying) {
    String law =
        drying
            ? "Evaporation alone comes to what such roasts lose with their juice."
            : "With a constant wetness a roast of 12 cm loses half its weight by the estimate, where"
                + " 20-29 % are measured, and takes too long: state wetness: drying, which is nearer.";
    return new Caution(
        "Hot moving air",
        "Loss and time of "
            + String.join(", ", names)
            + " are rough: how a face dries in hot air that moves, as in a fan oven, is beyond what"
            + " this model gets right. "
            + law,
        "");
  }
}
