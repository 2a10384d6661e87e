package org.roastfield.core.surface;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Check;

/**
 * A face that dries, is fed from inside, and grows a crust once it boils dry, eqs. (43)-(49).
 *
 * <p>One number says how moist it is: W above 0 is water on the face, below 0 what a crust of
 * thickness −W/w_c has lost. A crust boils at its inner side, the front, and keeps the heat
 * capacity of moist food.
 *
 * @param dry what acts on wet and dry faces alike: convection, radiation, contact
 * @param wet vapour flux of a face that is fully wet, with its heat; has a value up to {@code
 *     boilingPoint}
 * @param water what the face holds
 * @param crust what boiling dry leaves
 * @param boilingPoint T_b [K]
 * @param air how the vapour stays in the air around; other than {@link AirLoad#NONE} only if {@code
 *     wet} is a {@link VapourLaw}
 */
public record DryingFace(
    SurfaceLaw dry,
    SurfaceLaw wet,
    SurfaceWater water,
    Crust crust,
    double boilingPoint,
    AirLoad air)
    implements RememberingLaw {

  /** How far below boiling pure water's own law may still be asked for its value [K]. */
  private static final double BELOW_BOILING = 0.02;

  /** Superheat of a face that boils [K·m²/W]: 5 mK at 50 kW/m². */
  private static final double AT_FACE = 1e-7;

  /** Further superheat of a front under a crust [K·m²/W]: 0.1 K at 20 kW/m². */
  private static final double UNDER_CRUST = 5e-6;

  private static final double OUTER_ACCURACY = 1e-9;

  private static final int MOST_CORRECTIONS = 40;

  /**
   * @throws IllegalArgumentException if {@code boilingPoint} is not positive, a law carries
   *     something along itself, or air is loaded with vapour whose law cannot tell it
   */
  public DryingFace {
    Check.positive("boilingPoint", boilingPoint);
    if (dry instanceof RememberingLaw || wet instanceof RememberingLaw) {
      throw new IllegalArgumentException(
          "dry and wet must be laws that carry nothing along, were " + dry + " and " + wet);
    }
    if (air.isLoaded() && !(wet instanceof VapourLaw)) {
      throw new IllegalArgumentException("wet beside a load must be a VapourLaw, was " + wet);
    }
  }

  /** A face in air that its vapour does not change. */
  public DryingFace(
      SurfaceLaw dry, SurfaceLaw wet, SurfaceWater water, Crust crust, double boilingPoint) {
    this(dry, wet, water, crust, boilingPoint, AirLoad.NONE);
  }

  /**
   * A face of meat.
   *
   * @param dry what acts on wet and dry faces alike
   * @param wet vapour flux of a fully wet face
   * @param drive factor of capacity and supply, see {@link SurfaceWater#times}
   * @param pressure of the air [Pa]
   */
  public static DryingFace ofMeat(SurfaceLaw dry, SurfaceLaw wet, double drive, double pressure) {
    return new DryingFace(
        dry,
        wet,
        SurfaceWater.ofMeat().times(drive),
        Crust.ofMeat(),
        SaturationPressure.boilingPoint(pressure) - BELOW_BOILING);
  }

  /**
   * The same in air that the vapour of the cut makes more humid.
   *
   * @throws IllegalArgumentException if the wet law is no {@link VapourLaw}
   */
  public DryingFace into(AirLoad load) {
    return new DryingFace(dry, wet, water, crust, boilingPoint, load);
  }

  @Override
  public DryingFace withoutVapour(SurfaceLaw surroundings) {
    return new DryingFace(surroundings, SurfaceLaw.insulated(), water, crust, boilingPoint);
  }

  @Override
  public double airHeld() {
    return air.held();
  }

  @Override
  public double humidityWithout(double time) {
    return air.isLoaded() ? MoistStage.humidityWithout((VapourLaw) wet, time) : 0;
  }

  @Override
  public double initialWater() {
    return water.capacity();
  }

  @Override
  public double crustThickness(double faceWater) {
    return crust.thickness(faceWater);
  }

  @Override
  public DryingFace scaled(double factor) {
    return new DryingFace(
        dry.scaled(factor), wet.scaled(factor), water, crust, boilingPoint, air.scaled(factor));
  }

  @Override
  public double highestTemperature() {
    return boilingPoint;
  }

  @Override
  public double shortestPeriod() {
    return Math.min(dry.shortestPeriod(), wet.shortestPeriod());
  }

  @Override
  public DryingFace under(Wrap wrap) {
    SurfaceLaw wrapped = wet.under(wrap);
    AirLoad load = wrapped instanceof VapourLaw ? air : AirLoad.NONE;
    return new DryingFace(dry.under(wrap), wrapped, water, crust, boilingPoint, load);
  }

  @Override
  public DryingFace from(double time) {
    SurfaceLaw begun = dry.from(time);
    SurfaceLaw begunWet = wet.from(time);
    return begun == dry && begunWet == wet
        ? this
        : new DryingFace(begun, begunWet, water, crust, boilingPoint, air);
  }

  /** The flux of a fresh face, with all the water it can hold; none above boiling. */
  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    FaceMemory fresh = new FaceMemory();
    fresh.waterBase = initialWater();
    fresh.humidityBase = humidityWithout(time);
    double beyond = surfaceTemperature > boilingPoint ? Double.NaN : surfaceTemperature;
    MoistStage.solve(this, beyond, time, 0, 0, fresh, flux);
    dry.evaluate(beyond, time, flux);
  }

  @Override
  public void evaluate(
      double faceTemperature, double time, FaceMemory memory, Beneath beneath, SurfaceFlux flux) {
    double latent = MoistAir.latentHeat(boilingPoint);
    double inside = 1 - beneath.shareAtFace();
    double excess = beneath.frontTemperature(faceTemperature) - boilingPoint;
    double cooling = AT_FACE + inside * UNDER_CRUST + beneath.frontCooling();
    double taken = excess > 0 ? excess / cooling : 0;
    double takenSlope = excess > 0 ? beneath.frontSlope() / cooling : 0;
    double moist = Math.min(faceTemperature, boilingPoint);
    double before = flux.slope();
    MoistStage.solve(this, moist, time, taken / latent, takenSlope / latent, memory, flux);
    if (moist < faceTemperature) {
      flux.addHeat(0, before - flux.slope());
    }
    flux.addHeat(-beneath.shareAtFace() * taken, -beneath.shareAtFace() * takenSlope);
    memory.sunk = inside * taken;
    memory.sunkSlope = inside * takenSlope;
    memory.room = Math.min(boilingPoint - faceTemperature, -excess / beneath.frontSlope());
    boolean bare = memory.water > 0 && beneath.thickness() == 0;
    memory.straight = bare && memory.room > 0 && !air.isLoaded();
    throughCrust(faceTemperature, time, memory, beneath, flux);
  }

  /**
   * What acts from outside comes through the crust's own resistance less that of the moist food in
   * its place, eq. (48). Vapour that it states itself comes from inside as it leaves.
   */
  private void throughCrust(
      double face, double time, FaceMemory memory, Beneath beneath, SurfaceFlux flux) {
    double resistance =
        beneath.thickness() * (1 / crust.conductivity() - 1 / beneath.conductivity());
    SurfaceFlux outside = memory.scratch;
    double outer = memory.outerTemperature > 0 && resistance != 0 ? memory.outerTemperature : face;
    for (int i = 0; i < MOST_CORRECTIONS; i++) {
      outside.clear();
      dry.evaluate(outer, time, outside);
      double miss = face + resistance * outside.heatFlux() - outer;
      double correction = miss / (1 - resistance * outside.slope());
      if (!(Math.abs(correction) > OUTER_ACCURACY)) {
        double stretch = 1 / (1 - resistance * outside.slope());
        double stated = outside.evaporation() + correction * outside.evaporationSlope();
        memory.outerTemperature = outer + correction;
        double statedSlope = stretch * outside.evaporationSlope();
        memory.fed += stated;
        memory.evaporated += stated;
        memory.fedSlope += statedSlope;
        memory.evaporatedSlope += statedSlope;
        memory.outerSlope = stretch;
        flux.addHeat(outside.heatFlux() + correction * outside.slope(), stretch * outside.slope());
        flux.addEvaporation(stated, statedSlope);
        return;
      }
      outer += correction;
    }
    flux.addHeat(Double.NaN, Double.NaN);
  }
}
