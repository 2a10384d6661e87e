package org.roastfield.core.cook;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Part of a cook with its own surface conditions.
 *
 * @param name shown in results
 * @param upper law of the surface; in a slab, of the upper face
 * @param lower law of a slab's lower face; the same object as {@code upper} when the cut is treated
 *     alike all round
 * @param end rule that ends the stage
 * @param wetting water put on the faces when it begins
 * @param continued whether it goes on from the stage before, so that what counts from the beginning
 *     of a stage, such as contact, does not begin again
 */
public record Stage(
    String name,
    SurfaceLaw upper,
    SurfaceLaw lower,
    StageEnd end,
    Wetting wetting,
    boolean continued) {

  /**
   * @throws IllegalArgumentException if the name is blank, or water is put on a face whose law
   *     holds none
   */
  public Stage {
    Check.notBlank("name", name);
    checkHolds(upper, wetting.upper());
    checkHolds(lower, wetting.lower());
  }

  /** A stage that begins with its surroundings. */
  public Stage(String name, SurfaceLaw upper, SurfaceLaw lower, StageEnd end, Wetting wetting) {
    this(name, upper, lower, end, wetting, false);
  }

  /** A stage that begins without wetting. */
  public Stage(String name, SurfaceLaw upper, SurfaceLaw lower, StageEnd end) {
    this(name, upper, lower, end, Wetting.NONE);
  }

  private static void checkHolds(SurfaceLaw law, double water) {
    if (water > 0 && !law.holdsWater()) {
      throw new IllegalArgumentException(
          "wetting must be 0 on a face whose law holds no water, was "
              + water
              + " kg/m²; raise the wetness of the stage instead");
    }
  }

  /** The same stage with water put on the faces when it begins. */
  public Stage with(Wetting wetting) {
    return new Stage(name, upper, lower, end, wetting, continued);
  }

  /** A stage that treats the cut alike all round. */
  public static Stage allRound(String name, SurfaceLaw law, StageEnd end) {
    return new Stage(name, law, law, end);
  }

  /** A stage of a slab whose faces are treated differently. */
  public static Stage ofFaces(String name, SurfaceLaw upper, SurfaceLaw lower, StageEnd end) {
    return new Stage(name, upper, lower, end);
  }

  /**
   * The same stage in legs, cut where its surroundings bend, such as where a lid is opened and
   * closed: a step that runs across a bend would follow it badly. The end rule is that of the last
   * leg; if it is met before the last cut it ends the stage only there, without length, which the
   * result notes.
   *
   * @param times of the cuts since the start of the cook [s], increasing; cuts that have passed
   *     when the stage begins make legs without length; not modified
   * @throws IllegalArgumentException if the end rule is a duration, since the stage's start may not
   *     be known, or times do not increase
   */
  public List<Stage> cutAt(double... times) {
    if (end instanceof StageEnd.After) {
      throw new IllegalArgumentException(
          "end of a stage that is cut must not be a duration, was " + end.description());
    }
    List<Stage> legs = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      if (i > 0 && !(times[i] > times[i - 1])) {
        throw new IllegalArgumentException(
            "times must increase, but times[" + i + "] = " + times[i] + " follows " + times[i - 1]);
      }
      legs.add(
          new Stage(
              name + ", leg " + (i + 1),
              upper,
              lower,
              StageEnd.at(times[i]),
              i == 0 ? wetting : Wetting.NONE,
              i > 0 || continued));
    }
    legs.add(times.length == 0 ? this : new Stage(name, upper, lower, end, Wetting.NONE, true));
    return List.copyOf(legs);
  }

  /** Whether both faces have the same law. */
  public boolean isAllRound() {
    return upper == lower || upper.equals(lower);
  }
}
