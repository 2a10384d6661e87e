package org.roastfield.core.cook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Water and crust are the face's, not the stage's: where one stage says that a face dries, they are
 * there in all stages, and boil under laws that say nothing of water.
 */
final class HeldWater {

  private HeldWater() {}

  /** The same stages, with what their faces hold in each of them. */
  static List<Stage> carried(List<Stage> stages) {
    List<SurfaceLaw> upper = carried(stages, Stage::upper);
    List<SurfaceLaw> lower = carried(stages, Stage::lower);
    List<Stage> all = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      boolean same = upper.get(i) == stage.upper() && lower.get(i) == stage.lower();
      all.add(
          same
              ? stage
              : new Stage(
                  stage.name(),
                  upper.get(i),
                  lower.get(i),
                  stage.end(),
                  stage.wetting(),
                  stage.continued()));
    }
    return List.copyOf(all);
  }

  /** Laws of one face: of those that remember, the last before a stage counts, else the first. */
  private static List<SurfaceLaw> carried(List<Stage> stages, Function<Stage, SurfaceLaw> face) {
    List<SurfaceLaw> laws = new ArrayList<>();
    RememberingLaw holding = first(stages, face);
    for (Stage stage : stages) {
      SurfaceLaw law = face.apply(stage);
      if (law instanceof RememberingLaw remembering) {
        holding = remembering;
      }
      boolean saysNothing = !law.holdsWater() && Double.isInfinite(law.highestTemperature());
      laws.add(holding != null && saysNothing ? holding.withoutVapour(law) : law);
    }
    return laws;
  }

  private static @Nullable RememberingLaw first(
      List<Stage> stages, Function<Stage, SurfaceLaw> face) {
    for (Stage stage : stages) {
      if (face.apply(stage) instanceof RememberingLaw law) {
        return law;
      }
    }
    return null;
  }
}
