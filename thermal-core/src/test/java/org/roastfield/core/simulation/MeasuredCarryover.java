package org.roastfield.core.simulation;

import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * One draw of {@link CarryoverPriors} as a cook: sear, oven until the thermometer reads the
 * recorded temperature, rest. The wetness falls with the water lost, f = max(f_min, f₀
 * exp(−M/M_c)); since laws know no history, it is found by cooking again with the wetness that the
 * last run implies.
 */
final class MeasuredCarryover {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double DENSITY = 1050;
  private static final double LONGEST_ROAST = 12 * 3600;
  private static final double REST = 2 * 3600;
  private static final double SPACING = 60;
  private static final int MOST_PASSES = 12;

  /** Change of the rise [K] below which the wetness is taken as found. */
  private static final double SETTLED = 0.02;

  private final CarryoverPriors draw;
  private final double removed;
  private final Shape shape;

  private MeasuredCarryover(CarryoverPriors draw, double removed, Shape shape) {
    this.draw = draw;
    this.removed = removed;
    this.shape = shape;
  }

  /**
   * Rise of the reading after removal [K]; NaN if it never reads that much.
   *
   * @param removed reading on removal [K]
   */
  static double rise(CarryoverPriors draw, double removed) {
    double radius = 0.5 * draw.diameter();
    double round = new MeasuredCarryover(draw, removed, Cylinder.ofRadius(radius)).rise();
    double share = draw.exponent() - 1;
    Shape other = share > 0 ? Sphere.ofRadius(radius) : Slab.ofHalfThickness(radius);
    double otherRise = new MeasuredCarryover(draw, removed, other).rise();
    return round + Math.abs(share) * (otherRise - round);
  }

  private double rise() {
    Signal wetness = Signal.constant(draw.wetness());
    double last = Double.NaN;
    for (int i = 0; i < MOST_PASSES; i++) {
      Outcome outcome = Simulator.withDefaults().run(cook(wetness));
      SimulationResult result =
          outcome instanceof Outcome.Failed failed ? failed.partial() : outcome.orElseThrow();
      boolean done = outcome instanceof Outcome.Completed;
      double rise = done ? rise(result) : Double.NaN;
      if (Math.abs(rise - last) < SETTLED) {
        return rise;
      }
      last = rise;
      wetness = implied(result, wetness);
    }
    return last;
  }

  private double rise(SimulationResult result) {
    StageResult rest = result.stages().get(2);
    Peak peak = result.probe(bulb()).peak(rest.start(), rest.end());
    return peak.temperature() - (removed - draw.probeBias());
  }

  private Probe bulb() {
    return Probe.besideCore("bulb", draw.probeOffset());
  }

  private Cook cook(Signal wetness) {
    Material material =
        Material.constant(
            "roast",
            draw.conductivity(),
            DENSITY,
            draw.conductivity() / (draw.diffusivity() * DENSITY));
    StageEnd pull = new StageEnd.Rises(bulb(), removed - draw.probeBias(), LONGEST_ROAST);
    return Cook.of(
        new Cut(shape, material, draw.startTemperature()),
        Stage.allRound(
            "sear", oven(draw.searTemperature(), wetness), StageEnd.after(draw.searDuration())),
        Stage.allRound("roast", oven(draw.ovenTemperature(), wetness), pull),
        Stage.allRound("rest", rest(wetness), StageEnd.after(REST)));
  }

  private SurfaceLaw oven(double temperature, Signal wetness) {
    Signal air = Signal.constant(temperature);
    return SurfaceLaw.sum(
        new Convection(draw.heatTransferCoefficient(), air),
        new Radiation(draw.emissivity(), air.plus(draw.wallOffset())),
        new Drying(wet(draw.heatTransferCoefficient(), draw.humidityRatio()), wetness));
  }

  /** The coefficient of the rest counts radiation, 6 W/(m²·K) at an emissivity of 0.9. */
  private SurfaceLaw rest(Signal wetness) {
    double convection = Math.max(1, draw.restCoefficient() - 6);
    return SurfaceLaw.sum(
        new Convection(draw.restCoefficient(), Signal.constant(draw.room())),
        new Drying(wet(convection, 0.008), wetness));
  }

  private static Evaporation wet(double convection, double humidityRatio) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, PRESSURE));
    return Evaporation.of(1, convection, 0.98, vapour, PRESSURE);
  }

  /** Evaporation times a wetness that changes in time; none above boiling, where a face is dry. */
  private record Drying(Evaporation wet, Signal wetness) implements SurfaceLaw {

    private static final double NEARLY_BOILING = Temperatures.celsius(99.5);

    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      double share = wetness.at(time);
      SurfaceFlux full = new SurfaceFlux();
      double held = Math.min(surfaceTemperature, NEARLY_BOILING);
      wet.evaluate(held, time, full);
      double slope = surfaceTemperature < NEARLY_BOILING ? share : 0;
      flux.addHeat(share * full.heatFlux(), slope * full.slope());
      flux.addEvaporation(share * full.evaporation(), slope * full.evaporationSlope());
    }
  }

  /** Wetness over time that the water of a run implies. */
  private Signal implied(SimulationResult result, Signal wetness) {
    List<Stage> stages = cook(wetness).stages();
    double end = Math.max(result.endTime(), SPACING);
    int count = (int) Math.ceil(end / SPACING) + 1;
    double[] times = new double[count];
    double[] values = new double[count];
    double water = 0;
    double lastRate = 0;
    SurfaceFlux flux = new SurfaceFlux();
    for (int i = 0; i < count; i++) {
      times[i] = i * SPACING;
      double inside = Math.min(times[i], result.endTime());
      flux.clear();
      stages
          .get(stageAt(result, inside))
          .upper()
          .evaluate(result.upperSurface().at(inside), inside, flux);
      water += i == 0 ? 0 : 0.5 * SPACING * (lastRate + flux.evaporation());
      lastRate = flux.evaporation();
      double falling = draw.wetness() * StrictMath.exp(-Math.max(0, water) / draw.dryingScale());
      values[i] = Math.max(draw.leastWetness(), falling);
    }
    return SampledSignal.of(times, values, Double.POSITIVE_INFINITY);
  }

  private static int stageAt(SimulationResult result, double time) {
    int stage = 0;
    while (stage < result.stages().size() && time > result.stages().get(stage).end()) {
      stage++;
    }
    return Math.min(stage, 2);
  }
}
