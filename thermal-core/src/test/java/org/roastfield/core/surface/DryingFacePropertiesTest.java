package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.support.UniformDraws;

/** One stage of a face with memory, against its own equations. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class DryingFacePropertiesTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Property
  void stage_solvesItsEquationAndItsSlopesAreDifferences(
      @ForAll @DoubleRange(min = 280, max = 372) @Scale(4) double temperature,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double base,
      @ForAll @DoubleRange(min = 0, max = 300) @Scale(4) double weight,
      @ForAll @DoubleRange(min = 2, max = 40) @Scale(4) double h) {
    SurfaceLaw air = new Convection(h, Signal.constant(420));
    SurfaceLaw wet = Evaporation.of(1, h, 0.98, Signal.constant(4000), PRESSURE);
    DryingFace face = DryingFace.ofMeat(air, wet, 1, PRESSURE);
    FaceMemory memory = new FaceMemory();
    memory.weight = weight;
    memory.waterBase = base;
    SurfaceFlux at = evaluate(face, temperature, memory);
    assertEquals(memory.water, base + weight * memory.waterRate(), 1e-12 * (1 + weight));
    double step = 1e-4;
    SurfaceFlux above = evaluate(face, temperature + step, memory);
    SurfaceFlux below = evaluate(face, temperature - step, memory);
    double slope = (above.heatFlux() - below.heatFlux()) / (2 * step);
    assertEquals(slope, at.slope(), 1e-5 * (1 + Math.abs(slope)));
    double rate = (above.evaporation() - below.evaporation()) / (2 * step);
    assertEquals(rate, at.evaporationSlope(), 1e-5 * (1e-3 + Math.abs(rate)));
  }

  @Property
  void stageInLoadedAir_solvesBothEquationsAndItsSlopesAreDifferences(
      @ForAll @DoubleRange(min = 280, max = 372) @Scale(4) double temperature,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double base,
      @ForAll @DoubleRange(min = 0, max = 300) @Scale(4) double weight,
      @ForAll @DoubleRange(min = 0.02, max = 0.5) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 1, max = 2000) @Scale(4) double load,
      @ForAll @DoubleRange(min = 0, max = 5) @Scale(4) double held) {
    SurfaceLaw air = new Convection(12, Signal.constant(420));
    Evaporation wet = Evaporation.of(1, 12, 0.98, Signal.constant(4000), PRESSURE);
    DryingFace face =
        DryingFace.ofMeat(air, wet, 1, PRESSURE).into(new AirLoad(load, held < 0.2 ? 0 : held));
    FaceMemory memory = new FaceMemory();
    memory.weight = weight;
    memory.waterBase = base;
    memory.humidityBase = humidity;
    SurfaceFlux at = evaluate(face, temperature, memory);
    assertEquals(memory.water, base + weight * memory.waterRate(), 1e-12 * (1 + weight));
    double without = face.humidityWithout(0);
    double balance =
        held < 0.2 ? without + load * memory.evaporated : humidity + weight * memory.humidityRate;
    assertEquals(balance, memory.humidity, 1e-11 * (1 + balance));
    if (held >= 0.2) {
      double carriedOff = (memory.humidity - without) / load;
      assertEquals(memory.evaporated, carriedOff + held * memory.humidityRate, 1e-12);
    }
    double step = 1e-4;
    SurfaceFlux above = evaluate(face, temperature + step, memory);
    SurfaceFlux below = evaluate(face, temperature - step, memory);
    double slope = (above.heatFlux() - below.heatFlux()) / (2 * step);
    assertEquals(slope, at.slope(), 1e-4 * (1 + Math.abs(slope)));
    double rate = (above.evaporation() - below.evaporation()) / (2 * step);
    assertEquals(rate, at.evaporationSlope(), 1e-4 * (1e-3 + Math.abs(rate)));
  }

  private static SurfaceFlux evaluate(DryingFace face, double temperature, FaceMemory memory) {
    SurfaceFlux flux = new SurfaceFlux();
    face.evaluate(temperature, 0, memory, new BareFace(), flux);
    return flux;
  }

  /** A face without a crust. */
  private record BareFace() implements Beneath {

    @Override
    public double frontTemperature(double faceTemperature) {
      return faceTemperature;
    }

    @Override
    public double frontSlope() {
      return 1;
    }

    @Override
    public double frontCooling() {
      return 0;
    }

    @Override
    public double shareAtFace() {
      return 1;
    }

    @Override
    public double thickness() {
      return 0;
    }

    @Override
    public double conductivity() {
      return 0.48;
    }
  }
}
