package org.roastfield.lab.cooker;

import java.util.Optional;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.FaceSetup;

/**
 * Part of a cook in which its surroundings are of one kind.
 *
 * @param name of its stage
 * @param upper surroundings of the surface, or a slab's upper face
 * @param lower of a slab's lower face; equal to {@code upper} where the cut is treated alike
 * @param loggedAir air as a probe showed it; empty where the file's holds
 * @param rest whether the cut rests, off the cooker
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
    StageEnd end,
    Wetting wetting,
    boolean continued) {

  Stage at(Numbers numbers, double pressure) {
    SurfaceLaw above = law(upper, numbers, pressure);
    SurfaceLaw below = lower.equals(upper) ? above : law(lower, numbers, pressure);
    return new Stage(name, above, below, end, wetting, continued);
  }

  private SurfaceLaw law(FaceSetup face, Numbers numbers, double pressure) {
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
    SurfaceLaw law =
        loggedAir
            .map(
                air -> varied.law(air.plus(-numbers.get(CookParameters.AIR_BIAS)), pressure, drive))
            .orElseGet(() -> varied.law(pressure, drive));
    return law.scaled(size);
  }
}
