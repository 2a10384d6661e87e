package org.roastfield.core.simulation;

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
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * One draw of {@link CarryoverPriors} as a cook: sear, oven until the thermometer reads the
 * recorded temperature, rest, with a face that dries by the law of the library. Its drive is the
 * drawn wetness at the start over that of bare meat, as of the state of a surface in cook files.
 */
final class MeasuredCarryover {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double DENSITY = 1050;
  private static final double LONGEST_ROAST = 12 * 3600;
  private static final double REST = 2 * 3600;

  /** Share of a wet face that bare meat begins with, as drives of cook files count it. */
  private static final double BARE = 0.6;

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
    return Simulator.withDefaults().run(cook()) instanceof Outcome.Completed completed
        ? rise(completed.result())
        : Double.NaN;
  }

  private double rise(SimulationResult result) {
    StageResult rest = result.stages().get(2);
    Peak peak = result.probe(bulb()).peak(rest.start(), rest.end());
    return peak.temperature() - (removed - draw.probeBias());
  }

  private Probe bulb() {
    return Probe.besideCore("bulb", draw.probeOffset());
  }

  private Cook cook() {
    Material material =
        Material.constant(
            "roast",
            draw.conductivity(),
            DENSITY,
            draw.conductivity() / (draw.diffusivity() * DENSITY));
    StageEnd pull = new StageEnd.Rises(bulb(), removed - draw.probeBias(), LONGEST_ROAST);
    return Cook.of(
        new Cut(shape, material, draw.startTemperature()),
        Stage.allRound("sear", oven(draw.searTemperature()), StageEnd.after(draw.searDuration())),
        Stage.allRound("roast", oven(draw.ovenTemperature()), pull),
        Stage.allRound("rest", rest(), StageEnd.after(REST)));
  }

  private SurfaceLaw oven(double temperature) {
    Signal air = Signal.constant(temperature);
    SurfaceLaw dry =
        SurfaceLaw.sum(
            new Convection(draw.heatTransferCoefficient(), air),
            new Radiation(draw.emissivity(), air.plus(draw.wallOffset())));
    return drying(dry, draw.heatTransferCoefficient(), draw.humidityRatio());
  }

  /** The coefficient of the rest counts radiation, 6 W/(m²·K) at an emissivity of 0.9. */
  private SurfaceLaw rest() {
    double convection = Math.max(1, draw.restCoefficient() - 6);
    SurfaceLaw dry = new Convection(draw.restCoefficient(), Signal.constant(draw.room()));
    return drying(dry, convection, 0.008);
  }

  private SurfaceLaw drying(SurfaceLaw dry, double convection, double humidityRatio) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, PRESSURE));
    Evaporation wet = Evaporation.of(1, convection, 0.98, vapour, PRESSURE);
    return DryingFace.ofMeat(dry, wet, draw.wetness() / BARE, PRESSURE);
  }
}
