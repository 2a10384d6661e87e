package org.roastfield.core.simulation;

import java.util.function.UnaryOperator;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Heat and water through the faces of a cook, integrated from the surface laws over the dense
 * output: it shares no sum with the balances of the integration.
 *
 * @param heatUpper [J/m²]
 * @param heatLower [J/m²]; 0 where the cut is treated alike all round
 * @param waterUpper [kg/m²]
 * @param waterLower [kg/m²]
 * @param nextToBoiling whether a face of constant wetness came so near to boiling that its law
 *     bends more than the dense output resolves: it may rest there on more heat than the law has
 *     numbers for, and what the law comes to is no measure then
 * @param cook the integration itself, to compare with
 * @param trajectory its steps
 * @param upper what the upper face drew out of the cut, time by time
 */
record FluxIntegral(
    double heatUpper,
    double heatLower,
    double waterUpper,
    double waterLower,
    boolean nextToBoiling,
    CookIntegration cook,
    Trajectory trajectory,
    FaceSums upper) {

  /** Distance from boiling [K]. */
  private static final double NEXT_TO_BOILING = 0.02;

  private static final int PIECES = 8;

  private static final double[] NODES = {
    -0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640
  };
  private static final double[] WEIGHTS = {
    0.2369268850561891,
    0.4786286704993665,
    0.5688888888888889,
    0.4786286704993665,
    0.2369268850561891
  };

  static FluxIntegral of(Cook cook, double accuracy, int cells) {
    return of(cook, accuracy, cells, law -> law);
  }

  /**
   * Integrates a cook, and {@code planted} versions of its laws over what came out.
   *
   * @param planted changes the laws that are integrated, not those that are computed with
   */
  static FluxIntegral of(Cook cook, double accuracy, int cells, UnaryOperator<SurfaceLaw> planted) {
    CookIntegration integration =
        CookIntegration.of(cook, new CookIntegration.Accuracy(accuracy, cells, 0.5e-3, 200_000));
    Trajectory trajectory = integration.newTrajectory();
    FaceSums upper = new FaceSums();
    FaceSums lower = new FaceSums();
    Reading top = integration.reading(Probe.SURFACE);
    Reading bottom = integration.readingAt(-cook.cut().shape().halfThickness());
    double start = 0;
    for (Stage stage : cook.stages()) {
      int first = trajectory.steps();
      start = stage.continued() ? start : integration.time();
      CookIntegration.End end = integration.run(stage, trajectory);
      if (end != CookIntegration.End.RULE_MET) {
        throw new IllegalStateException("stage " + stage.name() + " ended as " + end);
      }
      add(trajectory, top, planted.apply(stage.upper().from(start)), first, upper, cook.cut());
      if (!cook.isSymmetric()) {
        add(trajectory, bottom, planted.apply(stage.lower().from(start)), first, lower, cook.cut());
      }
    }
    boolean next = upper.nextToBoiling || lower.nextToBoiling;
    return new FluxIntegral(
        upper.heat, lower.heat, upper.water, lower.water, next, integration, trajectory, upper);
  }

  /** Largest difference of heat from the balances, relative to the turnover. */
  double heatDiscrepancy() {
    double upper = Math.abs(heatUpper - cook.throughUpper());
    double lower = Math.abs(heatLower - cook.throughLower());
    return Math.max(upper, lower) / cook.turnover();
  }

  /** Largest difference of water from the balances, relative to the larger evaporation. */
  double waterDiscrepancy() {
    double upper = Math.abs(waterUpper - cook.evaporatedUpper());
    double lower = Math.abs(waterLower - cook.evaporatedLower());
    double scale = Math.max(Math.abs(cook.evaporatedUpper()), Math.abs(cook.evaporatedLower()));
    return scale == 0 ? Math.max(upper, lower) : Math.max(upper, lower) / scale;
  }

  private static void add(
      Trajectory trajectory,
      Reading reading,
      SurfaceLaw law,
      int firstStep,
      FaceSums sums,
      Cut cut) {
    if (law instanceof DryingFace face) {
      addDrying(trajectory, reading, face, firstStep, sums, cut);
      return;
    }
    SurfaceFlux flux = new SurfaceFlux();
    for (int step = firstStep; step < trajectory.steps(); step++) {
      double middle = 0.5 * (trajectory.stepStart(step) + trajectory.stepEnd(step));
      double half = 0.5 * (trajectory.stepEnd(step) - trajectory.stepStart(step));
      for (int j = 0; j < NODES.length; j++) {
        double time = middle + half * NODES[j];
        double temperature = trajectory.inStep(reading, step, time);
        flux.clear();
        law.evaluate(temperature, time, flux);
        sums.nextToBoiling |= temperature > law.highestTemperature() - NEXT_TO_BOILING;
        sums.heat += half * WEIGHTS[j] * flux.heatFlux();
        sums.water += half * WEIGHTS[j] * flux.evaporation();
        sums.aside += half * WEIGHTS[j] * flux.evaporation();
      }
      sums.end(step, trajectory.stepEnd(step), 0);
    }
  }

  /**
   * Water that left is what the face had, got and no longer holds; what of it was not the
   * evaporation of a moist face boiled off.
   */
  private static void addDrying(
      Trajectory trajectory,
      Reading reading,
      DryingFace law,
      int firstStep,
      FaceSums sums,
      Cut cut) {
    sums.begin(law, cut);
    boolean upper = reading.upperWeight() != 0;
    if (law.air().isLoaded()) {
      addLoaded(trajectory, reading, law, firstStep, sums, cut);
      return;
    }
    double held =
        trajectory.water(upper, Math.nextUp(trajectory.stepStart(firstStep)))
            - trajectory.water(upper, trajectory.end());
    double moist = 0;
    double conductivity = cut.material().conductivity().at(law.boilingPoint());
    DryingFlux flux = new DryingFlux(law, conductivity, sums.fed, sums.mostFed);
    for (int step = firstStep; step < trajectory.steps(); step++) {
      double middle = 0.5 * (trajectory.stepStart(step) + trajectory.stepEnd(step));
      double half = 0.5 * (trajectory.stepEnd(step) - trajectory.stepStart(step));
      for (int j = 0; j < NODES.length; j++) {
        double time = middle + half * NODES[j];
        flux.evaluate(trajectory.inStep(reading, step, time), trajectory.water(upper, time), time);
        sums.fed += half * WEIGHTS[j] * flux.feeding;
        sums.heat += half * WEIGHTS[j] * flux.heat;
        held += half * WEIGHTS[j] * flux.gained;
        moist += half * WEIGHTS[j] * flux.evaporation;
      }
      flux.fedUpTo(sums.fed, trajectory.stepEnd(step));
      sums.end(step, trajectory.stepEnd(step), trajectory.water(upper, trajectory.stepEnd(step)));
    }
    sums.heat -= MoistAir.latentHeat(law.boilingPoint()) * (held - moist);
    sums.water += held;
  }

  /**
   * The same in air that the face's vapour loads: what left is not asked of the law, but follows
   * from the water that came and that is still held, piece by piece, each with its latent heat.
   */
  private static void addLoaded(
      Trajectory trajectory,
      Reading reading,
      DryingFace law,
      int firstStep,
      FaceSums sums,
      Cut cut) {
    boolean upper = reading.upperWeight() != 0;
    DryingFlux flux =
        new DryingFlux(
            law, cut.material().conductivity().at(law.boilingPoint()), sums.fed, sums.mostFed);
    double before = trajectory.water(upper, Math.nextUp(trajectory.stepStart(firstStep)));
    for (int step = firstStep; step < trajectory.steps(); step++) {
      double piece = (trajectory.stepEnd(step) - trajectory.stepStart(step)) / PIECES;
      for (int i = 0; i < PIECES; i++) {
        double begin = trajectory.stepStart(step) + i * piece;
        double gained = 0;
        double latent = 0;
        for (int j = 0; j < NODES.length; j++) {
          double time = begin + 0.5 * piece * (1 + NODES[j]);
          double weight = 0.5 * piece * WEIGHTS[j];
          flux.evaluate(
              trajectory.inStep(reading, step, time), trajectory.water(upper, time), time);
          sums.heat += weight * flux.dryHeat;
          gained += weight * flux.gained;
          sums.fed += weight * flux.feeding;
          latent += 0.5 * WEIGHTS[j] * MoistAir.latentHeat(flux.moistFace);
        }
        double after = trajectory.water(upper, begin + piece);
        double left = gained + before - after;
        sums.heat -= latent * left;
        sums.water += left;
        before = after;
        flux.fedUpTo(sums.fed, begin + piece);
      }
      sums.end(step, trajectory.stepEnd(step), before);
    }
  }
}
