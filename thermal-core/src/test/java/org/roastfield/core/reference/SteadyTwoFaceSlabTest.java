package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.reference.SteadyTwoFaceSlab.Face;

class SteadyTwoFaceSlabTest {
  private static final double THICKNESS = 0.055;
  private static final double CONDUCTIVITY = 0.48;
  private static final Face GRATE = new Face(300, 523.15);
  private static final Face AIR = new Face(12, 295.15);

  @ParameterizedTest
  @ValueSource(doubles = {0, 3e4})
  void bothFacesExchangeWhatTheySee(double source) {
    SteadyTwoFaceSlab slab = withSource(source);
    double intoFirst =
        GRATE.heatTransferCoefficient() * (GRATE.ambientTemperature() - slab.temperature(0));
    double intoSecond =
        AIR.heatTransferCoefficient() * (AIR.ambientTemperature() - slab.temperature(THICKNESS));
    assertEquals(slab.fluxIntoFirstFace(), intoFirst, 1e-9 * Math.abs(intoFirst));
    assertEquals(slab.fluxIntoSecondFace(), intoSecond, 1e-9 * Math.abs(intoSecond));
    assertEquals(0, intoFirst + intoSecond + source * THICKNESS, 1e-8);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 3e4})
  void conductsTheSourceInside(double source) {
    SteadyTwoFaceSlab slab = withSource(source);
    double curvature = Differences.second(slab::temperature, 0.4 * THICKNESS, 0.02 * THICKNESS);
    assertEquals(source, -CONDUCTIVITY * curvature, 1e-3);
  }

  @Test
  void withoutSource_isAChainOfResistances() {
    double resistance =
        1 / GRATE.heatTransferCoefficient()
            + THICKNESS / CONDUCTIVITY
            + 1 / AIR.heatTransferCoefficient();
    double flux = (GRATE.ambientTemperature() - AIR.ambientTemperature()) / resistance;
    assertEquals(flux, withSource(0).fluxIntoFirstFace(), 1e-9 * flux);
  }

  @Test
  void withEqualFaces_isTheSymmetricSlab() {
    SteadyTwoFaceSlab slab = new SteadyTwoFaceSlab(0.1, CONDUCTIVITY, 2e4, AIR, AIR);
    SteadySource half =
        new SteadySource(
            0, 0.05, CONDUCTIVITY, AIR.heatTransferCoefficient(), 2e4, AIR.ambientTemperature());
    assertEquals(half.temperature(0), slab.temperature(0.05), 1e-9);
    assertEquals(half.temperature(0.02), slab.temperature(0.03), 1e-9);
    assertEquals(half.temperature(0.02), slab.temperature(0.07), 1e-9);
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Face(0, 300));
    assertThrows(
        IllegalArgumentException.class, () -> new SteadyTwoFaceSlab(Double.NaN, 1, 0, AIR, AIR));
    assertThrows(IllegalArgumentException.class, () -> withSource(0).temperature(-0.001));
  }

  private static SteadyTwoFaceSlab withSource(double source) {
    return new SteadyTwoFaceSlab(THICKNESS, CONDUCTIVITY, source, GRATE, AIR);
  }
}
