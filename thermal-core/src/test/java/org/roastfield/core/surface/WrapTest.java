package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.units.Temperatures;

class WrapTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Signal ROOM = Signal.constant(Temperatures.celsius(20));

  /**
   * Bare cut in a room of 20 °C: radiation of 5.8-6.8 W/(m²·K), its low and high end with faces of
   * 40 and 70 °C and emissivity 0.9, and natural convection of 4.4-6.6. Left are 3.5-5 under tight
   * foil and 6-8 under a loose tent, to a twentieth.
   */
  @ParameterizedTest(name = "face {0} °C, convection {1}")
  @CsvSource({"40, 4.4, 3.5, 6", "70, 6.6, 5, 8"})
  void foilAndTent_leaveTheKnownExchange(double face, double convection, double foil, double tent) {
    SurfaceLaw bare = SurfaceLaw.sum(new Convection(convection, ROOM), new Radiation(0.9, ROOM));
    double surface = Temperatures.celsius(face);
    double bareExchange = exchange(bare, surface) - convection;
    assertTrue(bareExchange > 5.5 && bareExchange < 7, () -> "radiation " + bareExchange);
    assertEquals(foil, exchange(bare.under(Wrap.FOIL), surface), 0.05 * foil);
    assertEquals(tent, exchange(bare.under(Wrap.TENT), surface), 0.05 * tent);
  }

  private static double exchange(SurfaceLaw law, double surface) {
    return -flux(law, surface).heatFlux() / (surface - ROOM.at(0));
  }

  @Test
  void each_factorActsOnItsOwnExchange() {
    Wrap wrap = new Wrap("half", 0.2, 0.5, 0.3);
    Signal hot = Signal.constant(400);
    Evaporation wet = Evaporation.of(0.8, 9, 0.98, Signal.constant(1500), PRESSURE);
    assertShare(0.5, new Convection(12, hot), wrap);
    assertShare(0.2, new Radiation(0.9, hot), wrap);
    assertShare(0.3, wet, wrap);
    assertEquals(
        0.3 * flux(wet, 330).evaporation(), flux(wet.under(wrap), 330).evaporation(), 1e-18);
    Contact contact = new Contact(300, hot);
    assertSame(contact, contact.under(wrap));
    SurfaceLaw shared = SurfaceLaw.shared(0.4, contact, new Convection(12, hot));
    double expected = 0.4 * flux(contact, 330).heatFlux() + 0.6 * 0.5 * 12 * 70;
    assertEquals(expected, flux(shared.under(wrap), 330).heatFlux(), 1e-9);
  }

  @Test
  void airByCorrelation_leaksItsShareOfVapour_andConvectsItsShareOfHeat() {
    FilmCoefficient film = FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, PRESSURE);
    Signal air = Signal.constant(Temperatures.celsius(115));
    AirExchange bare = AirExchange.of(film, air, 0.6, 0.98, Signal.constant(3000));
    SurfaceLaw wrapped = bare.under(Wrap.FOIL);
    double expected = Wrap.FOIL.leak() * flux(bare, 330).evaporation();
    assertEquals(expected, flux(wrapped, 330).evaporation(), 1e-12 * expected);
    AirExchange dry = AirExchange.dry(film, air);
    double heat = Wrap.FOIL.convection() * flux(dry, 330).heatFlux();
    assertEquals(heat, flux(dry.under(Wrap.FOIL), 330).heatFlux(), 1e-12 * heat);
    Wrap vacuum = new Wrap("vacuum", 0.1, 0, 0);
    assertEquals(0, flux(bare.under(vacuum), 330).heatFlux());
    Wrap gauze = new Wrap("gauze", 1, 0.5, 1);
    assertRefused("wetness must be in [0.0, 1.0], was 1.2", () -> bare.under(gauze));
  }

  @Test
  void faceThatDries_isWrappedInBothItsLaws() {
    Evaporation wet = Evaporation.of(1, 9, 0.98, Signal.constant(1500), PRESSURE);
    Convection dry = new Convection(9, ROOM);
    DryingFace face = DryingFace.ofMeat(dry, wet, 1, PRESSURE);
    DryingFace wrapped = face.under(Wrap.PAPER);
    assertEquals(dry.under(Wrap.PAPER), wrapped.dry());
    assertEquals(wet.under(Wrap.PAPER), wrapped.wet());
    assertEquals(face.water(), wrapped.water());
    Touch plate = Touch.ofPlate(ROOM);
    assertSame(plate, plate.under(Wrap.FOIL));
    assertTrue(SurfaceLaw.shared(0.2, plate, dry).remembers());
  }

  private static void assertShare(double share, SurfaceLaw law, Wrap wrap) {
    SurfaceFlux bare = flux(law, 330);
    SurfaceFlux wrapped = flux(SurfaceLaw.sum(law).under(wrap), 330);
    assertEquals(share * bare.heatFlux(), wrapped.heatFlux(), 1e-9);
    assertEquals(share * bare.slope(), wrapped.slope(), 1e-9);
  }

  @Test
  void sharedFace_isTheMeanOfBothByArea() {
    Evaporation wet = Evaporation.of(0.8, 9, 0.98, Signal.constant(1500), PRESSURE);
    Contact plate = new Contact(300, Signal.constant(450));
    SurfaceFlux flux = new SurfaceFlux();
    flux.addHeat(7, -1);
    SurfaceLaw.shared(0.25, plate, wet).evaluate(330, 0, flux);
    assertEquals(7 + 0.25 * 300 * 120 + 0.75 * flux(wet, 330).heatFlux(), flux.heatFlux(), 1e-9);
    assertEquals(-1 - 0.25 * 300 + 0.75 * flux(wet, 330).slope(), flux.slope(), 1e-9);
    assertEquals(0.75 * flux(wet, 330).evaporation(), flux.evaporation(), 1e-18);
    assertEquals(0.75 * flux(wet, 330).evaporationSlope(), flux.evaporationSlope(), 1e-18);
    double hotterThanBoiling = 380;
    SurfaceLaw allOn = SurfaceLaw.shared(1, plate, wet);
    assertEquals(300 * 70, flux(allOn, hotterThanBoiling).heatFlux(), 1e-9);
  }

  @Test
  void wrongWraps_areRefused() {
    assertRefused("radiation must be in [0.0, 1.0], was 1.1", () -> new Wrap("w", 1.1, 1, 1));
    assertRefused("convection must be in", () -> new Wrap("w", 1, -0.1, 1));
    assertRefused("leak must be in", () -> new Wrap("w", 1, 1, Double.NaN));
    assertRefused("name must not be blank", () -> new Wrap(" ", 1, 1, 1));
    assertRefused("share must be in", () -> SurfaceLaw.shared(1.2, insulated(), insulated()));
    SurfaceLaw own = (surfaceTemperature, time, flux) -> flux.addHeat(1, 0);
    assertRefused("law under foil must say what a wrap does to it", () -> own.under(Wrap.FOIL));
  }

  private static SurfaceLaw insulated() {
    return SurfaceLaw.insulated();
  }

  private static void assertRefused(String start, Runnable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action::run);
    assertTrue(String.valueOf(e.getMessage()).startsWith(start), e::getMessage);
  }

  private static SurfaceFlux flux(SurfaceLaw law, double surfaceTemperature) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(surfaceTemperature, 0, flux);
    return flux;
  }
}
