package org.roastfield.bench;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.ObservedCook;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Series;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Twelve hours of a pork shoulder in a drifting chamber, a reading each half minute, with seven
 * unknown numbers. Made up; the truth is off the priors' medians by a half to one spread.
 */
final class LongLog {

  private static final double LENGTH = 12 * 3600;
  private static final double EVERY = 30;
  private static final double AIR_EVERY = 120;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double NOISE = 0.2;
  private static final String STEM = "stem";

  private static final ParameterSet PARAMETERS =
      ParameterSet.of(
          CookParameters.CONVECTION,
          CookParameters.WALLS,
          CookParameters.SIZE,
          CookParameters.DIFFUSIVITY,
          CookParameters.WETNESS,
          CookParameters.START,
          CookParameters.PROBE_OFFSET);

  private static final double[] TRUTH = {0.2, 5, 0.04, -0.05, 0.25, 1, 0.006};

  private static final Material SHOULDER = Materials.named("pork shoulder").material();
  private static final Signal AIR = air();
  private static final Signal VAPOUR = Signal.constant(MoistAir.vapourPressure(0.035, PRESSURE));

  private LongLog() {}

  /**
   * What was logged, and the cooks that may have made it.
   *
   * @param dries whether the face dries and is fed, or has a constant wetness
   */
  static CookModel model(boolean dries) {
    double[] times = new double[(int) (LENGTH / EVERY) + 1];
    Arrays.setAll(times, i -> i * EVERY);
    ParameterPoint truth = ParameterPoint.empty();
    for (int p = 0; p < TRUTH.length; p++) {
      Parameter parameter = PARAMETERS.get(p);
      truth = truth.with(parameter.id(), parameter.scale().value(TRUTH[p]), 1);
    }
    Cook cook = cook(truth, dries);
    SimulationResult result = Simulator.withDefaults().run(cook).orElseThrow();
    ProbeTrace shown = result.shownBy(cook.probes().get(0));
    SplittableRandom random = new SplittableRandom(1);
    double[] values = new double[times.length];
    double drift = 0;
    double kept = Math.exp(-EVERY / ErrorModel.CORE.driftTime());
    for (int i = 0; i < values.length; i++) {
      drift = kept * drift + 0.3 * Math.sqrt(1 - kept * kept) * random.nextGaussian();
      values[i] = shown.at(times[i]) + drift + NOISE * random.nextGaussian();
    }
    Series series = Series.of("core", times, values, ErrorModel.CORE);
    List<String> ids = PARAMETERS.list().stream().map(Parameter::id).toList();
    ObservedCook observed =
        new ObservedCook(
            "long log",
            ids,
            ids,
            point -> cook(point, dries),
            List.of(new ObservedTrace(series, STEM, AIR)),
            List.of());
    return CookModel.of(PARAMETERS, List.of(observed), Simulator.withDefaults());
  }

  private static Cook cook(ParameterPoint point, boolean dries) {
    double h = 6 * point.value("convection");
    double wetness = point.value("wetness");
    SurfaceLaw dry =
        SurfaceLaw.sum(new Convection(h, AIR), new Radiation(0.92, AIR.plus(point.value("walls"))));
    SurfaceLaw face =
        dries
            ? DryingFace.ofMeat(dry, evaporation(h, 1), wetness, PRESSURE)
            : SurfaceLaw.sum(dry, evaporation(h, 0.15 * wetness));
    double diffusivity = point.value("diffusivity");
    Material meat = SHOULDER.withDensity(SHOULDER.density() / diffusivity);
    double start = Temperatures.celsius(5) + point.value("start");
    Cut cut = new Cut(Cylinder.ofDiameter(0.12 * point.value("size")), meat, start);
    Stage stage = Stage.allRound("gentle heat", face, StageEnd.after(LENGTH));
    Probe stem = Probe.besideCore(STEM, point.value("probe-offset"));
    return new Cook(cut, List.of(stage), List.of(stem));
  }

  private static SurfaceLaw evaporation(double h, double wetness) {
    return Evaporation.of(wetness, h, 0.98, VAPOUR, PRESSURE);
  }

  private static Signal air() {
    int count = (int) (LENGTH / AIR_EVERY) + 1;
    double[] times = new double[count];
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = i * AIR_EVERY;
      double slow = 4 * Math.sin(times[i] / 700) + 3 * Math.sin(times[i] / 260 + 1);
      values[i] = Temperatures.celsius(110) + slow;
    }
    return SampledSignal.of(times, values, 4 * AIR_EVERY);
  }
}
