package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Derivatives of what the faces of a cook carry along, taken where its integration has been. Empty
 * for a cook whose faces carry nothing. Scratch memory of one integration.
 */
final class TangentFronts {

  private final TangentFront[] faces;
  private final List<CookVariation> variations;
  private final Stepper stepper;
  private final Tangents tangents;
  private final double[] cells;

  /** Stage of the step at hand, 0 where a stage of the cook begins, and the step's length [s]. */
  private int stage;

  private double step;

  TangentFronts(
      Cook cook,
      List<CookVariation> variations,
      Stepper stepper,
      HeatProblem problem,
      Tangents tangents,
      Counters counters) {
    this.variations = variations;
    this.stepper = stepper;
    this.tangents = tangents;
    boolean any = false;
    for (Stage of : cook.stages()) {
      any |= of.upper() instanceof RememberingLaw || of.lower() instanceof RememberingLaw;
    }
    int sides = problem.grid().isTwoSided() ? 2 : 1;
    faces = new TangentFront[any ? sides : 0];
    cells = new double[any ? problem.grid().cells() : 0];
    int most = Math.max(1, variations.size());
    for (int f = 0; f < faces.length; f++) {
      faces[f] =
          new TangentFront(problem.grid(), f, stepper.material(), problem.length(), most, counters);
    }
  }

  /** One a face, or none. */
  TangentFront[] faces() {
    return faces;
  }

  /** Takes the laws of a stage, from its beginning on [2]. */
  void laws(SurfaceLaw[] laws) {
    for (int f = 0; f < faces.length; f++) {
      faces[f].law(laws[f]);
    }
  }

  /** Whether a face carries water along. */
  boolean isPresent(int f) {
    return f < faces.length && faces[f].isPresent();
  }

  /** Takes a face where a stage of the cook has begun. */
  void restarted(int f, int index, State state) {
    stage = 0;
    step = 0;
    double water = state.carried.water[f];
    faces[f].begin(index, state.time, variations, tangents);
    double humidity = state.carried.humidity[f];
    double fed = state.carried.fed[f];
    double most = state.carried.mostFed[f];
    faces[f].at(state.temperature, state.face[f], state.time, water, water, humidity, fed, most, 0);
  }

  /** Takes a face in a stage of the last step. */
  void inStep(int f, int s, DenseStep last) {
    stage = s;
    step = last.end() - last.start();
    FaceStages carried = stepper.carried();
    double held = carried.held(s, f);
    double humidity = last.from().carried.humidity[f];
    double fed = last.from().carried.fed[f];
    double[] base = Esdirk4.baseWeights(s);
    for (int j = 0; j < s; j++) {
      humidity += base[j] * carried.humidityIncrement(j, f);
      fed += base[j] * carried.fedIncrement(j, f);
    }
    faces[f].at(
        cells(s, last.from()),
        stepper.stageFaces.temperature[s][f],
        last.start() + Esdirk4.c(s) * step,
        held,
        held - carried.increment(s, f),
        humidity,
        fed,
        last.from().carried.mostFed[f],
        Esdirk4.GAMMA * step);
  }

  private double[] cells(int s, State from) {
    double[] known = stepper.stageTemperature(s);
    if (known.length > 0) {
      return known;
    }
    StageRows.base(
        s,
        cells.length,
        cells,
        from.enthalpy,
        stepper.increment(0),
        stepper.increment(1),
        stepper.increment(2),
        stepper.increment(3),
        stepper.increment(4));
    Rows.add(cells.length, 1, stepper.increment(s), cells);
    return cells;
  }

  /**
   * Adds derivatives by the parameters, and by time if it moves.
   *
   * @param index of the stage of the cook
   * @param begun when what counts from the beginning of a stage began [s]
   * @param begunChange its change with each parameter, or null if no time moves
   */
  void differentiate(int f, int index, double begun, double @Nullable [] begunChange) {
    for (int p = 0; p < tangents.size(); p++) {
      CookVariation by = variations.get(p);
      boolean body = tangents.logLength[p] != 0 || tangents.logResistance[p] != 0;
      if (body || by.changesWater() || by.changesLaw(index, f)) {
        faces[f].byParameter(p, by, index, begun, stage, step, tangents);
      }
    }
    if (begunChange != null) {
      faces[f].byTime();
      faces[f].byBeginning(begun, begunChange);
    }
  }

  /** Adds derivatives by time. */
  void byTime(int f) {
    faces[f].byTime();
  }
}
