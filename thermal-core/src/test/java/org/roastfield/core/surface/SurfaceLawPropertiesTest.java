package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.support.UniformDraws;

/** Slopes of every law against central differences, and signs. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class SurfaceLawPropertiesTest {

  private static final int TRIES = 200;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Property(tries = TRIES)
  void convection_fallsByItsCoefficient(
      @ForAll @DoubleRange(min = 0, max = 500) double h,
      @ForAll @DoubleRange(min = 250, max = 600) double air,
      @ForAll @DoubleRange(min = 260, max = 500) double face) {
    SurfaceLaw law = new Convection(h, Signal.constant(air));
    assertSlope(law, face, 1e-6);
    assertEquals(h * (air - face), flux(law, face).heatFlux(), 1e-9 * (1 + h * 600));
    assertEquals(0, flux(law, face).evaporation());
  }

  @Property(tries = TRIES)
  void contact_fallsByItsConductance(
      @ForAll @DoubleRange(min = 0, max = 2000) double conductance,
      @ForAll @DoubleRange(min = 300, max = 600) double plate,
      @ForAll @DoubleRange(min = 260, max = 500) double face) {
    SurfaceLaw law = new Contact(conductance, Signal.constant(plate));
    assertSlope(law, face, 1e-6);
    assertEquals(
        conductance * (plate - face), flux(law, face).heatFlux(), 1e-9 * (1 + conductance * 600));
  }

  @Property(tries = TRIES)
  void radiation_hasTheSlopeOfTheFourthPower(
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double emissivity,
      @ForAll @DoubleRange(min = 250, max = 1000) double wall,
      @ForAll @DoubleRange(min = 260, max = 500) double face) {
    SurfaceLaw law = new Radiation(emissivity, Signal.constant(wall));
    assertSlope(law, face, 1e-6);
    assertTrue((wall - face) * flux(law, face).heatFlux() >= 0);
  }

  @Property(tries = TRIES)
  void evaporation_hasItsSlope(
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double wetness,
      @ForAll @DoubleRange(min = 0, max = 60) double h,
      @ForAll @DoubleRange(min = 0.7, max = 1) @Scale(3) double activity,
      @ForAll @DoubleRange(min = 0, max = 50_000) double vapour,
      @ForAll @DoubleRange(min = 270, max = 370) double face) {
    SurfaceLaw law = Evaporation.of(wetness, h, activity, Signal.constant(vapour), PRESSURE);
    assertSlope(law, face, 1e-5);
    double excess = activity * SaturationPressure.at(face) - vapour;
    assertTrue(excess * flux(law, face).evaporation() >= 0);
    assertTrue(flux(law, face).heatFlux() * flux(law, face).evaporation() <= 0);
  }

  @Property(tries = TRIES)
  void chamber_hasItsSlope(
      @ForAll @DoubleRange(min = 280, max = 520) double air,
      @ForAll @DoubleRange(min = 0, max = 0.1) @Scale(3) double humidity,
      @ForAll @DoubleRange(min = 1, max = 60) double h,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double wetness,
      @ForAll @DoubleRange(min = 270, max = 370) double face) {
    SurfaceLaw law = Chamber.steady(air, humidity, PRESSURE).around(h, 0.9, wetness, 0.98);
    assertSlope(law, face, 1e-5);
  }

  @Property(tries = TRIES)
  void sum_addsFluxesSlopesAndVapour(
      @ForAll @DoubleRange(min = 1, max = 60) double h,
      @ForAll @DoubleRange(min = 270, max = 370) double face) {
    SurfaceLaw one = new Convection(h, Signal.constant(400));
    SurfaceLaw two = Evaporation.of(0.5, h, 0.98, Signal.constant(1000), PRESSURE);
    SurfaceFlux sum = flux(SurfaceLaw.sum(one, two), face);
    assertEquals(flux(one, face).heatFlux() + flux(two, face).heatFlux(), sum.heatFlux(), 1e-8);
    assertEquals(flux(one, face).slope() + flux(two, face).slope(), sum.slope(), 1e-9);
    assertEquals(flux(two, face).evaporation(), sum.evaporation());
  }

  private static void assertSlope(SurfaceLaw law, double face, double relative) {
    double h = 1e-3;
    double difference = flux(law, face + h).heatFlux() - flux(law, face - h).heatFlux();
    double slope = flux(law, face).slope();
    assertEquals(difference / (2 * h), slope, relative * (1 + Math.abs(slope)));
    assertTrue(slope <= 0, () -> "slope " + slope);
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, 0, flux);
    return flux;
  }
}
