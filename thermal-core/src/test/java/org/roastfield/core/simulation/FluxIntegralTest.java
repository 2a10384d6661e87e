package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** The laws integrated over the dense output against the balances that the integration keeps. */
class FluxIntegralTest {

  private static final double ALLOWED = 1e-4;
  private static final double PLANTED = 1e-3;

  /**
   * Tighter than the default 0.01 K, at which the two differ by up to 6e-4: in the first seconds
   * after a jump the cubic through four stages follows the face less closely than the sums do.
   */
  static final double ACCURACY = 1e-4;

  static final int CELLS = 40;

  static Stream<Arguments> plainCooks() {
    return Stream.of(SampleCooks.CONSTANT, SampleCooks.LOIN, SampleCooks.BRISKET)
        .flatMap(
            material ->
                SampleCooks.shapes().stream()
                    .flatMap(
                        shape ->
                            SampleCooks.laws().stream()
                                .map(law -> Arguments.of(law, shape, material))));
  }

  static List<Cook> stagedCooks() {
    Stream<Cook> models = Rs1Reference.names().stream().map(Rs1Reference::load).map(Rs1Cook::of);
    Stream<Cook> roasts =
        SampleCooks.shapes().stream()
            .flatMap(
                shape ->
                    Stream.of(
                        SampleCooks.roast(shape, SampleCooks.CONSTANT),
                        SampleCooks.roast(shape, SampleCooks.LOIN),
                        SampleCooks.roast(shape, SampleCooks.BRISKET)));
    Stream<Cook> turned =
        Stream.of(
            SampleCooks.turned(SampleCooks.CONSTANT),
            SampleCooks.turned(SampleCooks.LOIN),
            SampleCooks.turned(SampleCooks.BRISKET));
    return Stream.concat(models, Stream.concat(roasts, turned)).toList();
  }

  @ParameterizedTest
  @MethodSource("plainCooks")
  void eachLaw_integratesToTheHeatAndWaterOfTheBalances(
      SampleCooks.NamedLaw named, Shape shape, Material material) {
    Cook cook = SampleCooks.plain(shape, material, named.law());
    assertAgrees(FluxIntegral.of(cook, ACCURACY, CELLS));
  }

  @ParameterizedTest
  @MethodSource("stagedCooks")
  void stagesAndTurns_integrateToTheHeatAndWaterOfTheBalances(Cook cook) {
    assertAgrees(FluxIntegral.of(cook, ACCURACY, CELLS));
  }

  @ParameterizedTest
  @MethodSource("stagedCooks")
  void fluxThatIsOneThousandthWrong_isFound(Cook cook) {
    FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, CELLS, FluxIntegralTest::planted);
    double heat = integral.heatDiscrepancy();
    double upper = Math.abs(integral.cook().throughUpper());
    double lower = Math.abs(integral.cook().throughLower());
    double expected = PLANTED * Math.max(upper, lower) / integral.cook().turnover();
    assertEquals(expected, heat, ALLOWED);
    assertTrue(heat > ALLOWED, () -> "heat differs by only " + heat);
  }

  @Test
  void evaporationThatIsOneThousandthWrong_isFound() {
    Cook cook = SampleCooks.roast(SampleCooks.shapes().get(1), SampleCooks.CONSTANT);
    FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, CELLS, FluxIntegralTest::planted);
    assertEquals(PLANTED, integral.waterDiscrepancy(), ALLOWED);
  }

  @Test
  void dryingFace_whoseEvaporationIsOneThousandthWrong_isFound() {
    Shape shape = SampleCooks.shapes().get(1);
    Cook cook = SampleCooks.plain(shape, SampleCooks.CONSTANT, SampleCooks.drying());
    FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, CELLS, FluxIntegralTest::planted);
    double heat = integral.heatDiscrepancy();
    assertTrue(heat > ALLOWED, () -> "heat differs by only " + heat);
  }

  @Test
  void tighterAccuracy_bringsThemCloser() {
    Cook cook = SampleCooks.roast(SampleCooks.shapes().get(1), SampleCooks.CONSTANT);
    double loose = FluxIntegral.of(cook, 0.1, CELLS).heatDiscrepancy();
    double tight = FluxIntegral.of(cook, 1e-5, CELLS).heatDiscrepancy();
    assertTrue(tight < 0.1 * loose, () -> tight + " against " + loose);
  }

  private static void assertAgrees(FluxIntegral integral) {
    double heat = integral.heatDiscrepancy();
    double water = integral.waterDiscrepancy();
    assertTrue(heat <= ALLOWED, () -> "heat differs by " + heat);
    assertTrue(water <= ALLOWED, () -> "water differs by " + water);
  }

  /** The same law with its flux and evaporation a little too large. */
  private static SurfaceLaw planted(SurfaceLaw law) {
    if (law instanceof DryingFace face) {
      return new DryingFace(
          planted(face.dry()),
          planted(face.wet()),
          face.water(),
          face.crust(),
          face.boilingPoint());
    }
    SurfaceFlux inner = new SurfaceFlux();
    return (surfaceTemperature, time, flux) -> {
      inner.clear();
      law.evaluate(surfaceTemperature, time, inner);
      flux.addHeat((1 + PLANTED) * inner.heatFlux(), inner.slope());
      flux.addEvaporation((1 + PLANTED) * inner.evaporation(), inner.evaporationSlope());
    };
  }
}
