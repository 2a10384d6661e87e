package org.roastfield.lab.cooker;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.StageSetup;

/**
 * Part of a cook in which its surroundings are of one kind.
 *
 * @param name of its stage
 * @param upper surroundings of the surface, or a slab's upper face
 * @param lower of a slab's lower face; equal to {@code upper} where the cut is treated alike
 * @param loggedAir air as a probe showed it; empty where the file's holds
 * @param rest whether the cut rests, off the cooker
 * @param gentle whether its stage is away from metal and coals, in all of its turns
 * @param end rule
 * @param wetting water put on when it begins
 * @param continued whether it goes on from the part before
 */
record CookPart(
    String name,
    FaceSetup upper,
    FaceSetup lower,
    Optional<Signal> loggedAir,
    boolean rest,
    boolean gentle,
    StageEnd end,
    Wetting wetting,
    boolean continued) {

  /** Whether a stage is away from metal and coals, in all of its turns. */
  static boolean gentle(StageSetup stage) {
    return gentle(stage.upper()) && gentle(stage.lower());
  }

  private static boolean gentle(FaceSetup face) {
    return face.contact().isEmpty() && face.bed().isEmpty();
  }

  /** Whether its air strays in a cook to come: on the cooker, away from metal and coals. */
  boolean strays() {
    return !rest && gentle;
  }

  /**
   * Its stage.
   *
   * @param straying air of a setting [K], if it strays
   */
  Stage at(Numbers numbers, double pressure, Optional<DoubleFunction<Signal>> straying) {
    SurfaceLaw above = law(upper, numbers, pressure, straying);
    SurfaceLaw below = lower.equals(upper) ? above : law(lower, numbers, pressure, straying);
    return new Stage(name, above, below, end, wetting, continued);
  }

  private SurfaceLaw law(
      FaceSetup face, Numbers numbers, double pressure, Optional<DoubleFunction<Signal>> straying) {
    double drive = numbers.get(CookParameters.WETNESS);
    FaceSetup varied =
        rest
            ? face.varied(numbers.get(CookParameters.REST), 0, 1, 1, drive)
            : face.varied(
                numbers.get(CookParameters.CONVECTION)
                    * numbers.get(CookParameters.CONVECTION_OF_COOK),
                numbers.get(CookParameters.WALLS),
                numbers.get(CookParameters.HUMIDITY),
                numbers.get(CookParameters.CONTACT),
                drive);
    double size = numbers.get(CookParameters.SIZE);
    double bias = numbers.get(CookParameters.AIR_BIAS);
    if (loggedAir.isPresent()) {
      return varied.law(loggedAir.get().plus(-bias), pressure, drive).scaled(size);
    }
    return straying
        .map(air -> varied.strayingLaw(air.apply(face.air() - bias), pressure, drive))
        .orElseGet(() -> varied.law(pressure, drive))
        .scaled(size);
  }
}
