package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.units.Temperatures;

/** What humidity and altitude do to faces that dry. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class DryingAirTest {

  /** Superheat of a face that boils under 100 kW/m². */
  private static final double SUPERHEAT = 0.01;

  /**
   * With wetness that decays either sign is possible: humid air is faster to a core of 52 °C, as
   * the face gives less water by then, and slower to one of 65 °C, nearer to the air, though all
   * else is the same.
   */
  @Test
  void moreHumidity_shortensOrLengthensTheCookOfAFaceThatDries() {
    double early = coreTime(0.005, 52);
    double earlyHumid = coreTime(0.03, 52);
    assertTrue(earlyHumid < 0.95 * early, () -> earlyHumid + " s against " + early);
    double late = coreTime(0.005, 65);
    double lateHumid = coreTime(0.03, 65);
    assertTrue(lateHumid > 1.005 * late, () -> lateHumid + " s against " + late);
  }

  /** The higher, the lower a wet face boils; one that boils dry is hotter, as at sea level. */
  @Property(tries = 20)
  void higherUp_aFaceThatHoldsWaterIsCappedLower(
      @ForAll @DoubleRange(min = 0, max = 2500) @Scale(4) double altitude,
      @ForAll @DoubleRange(min = 300, max = 2000) @Scale(4) double more,
      @ForAll @DoubleRange(min = 230, max = 300) @Scale(4) double plate) {
    double low = hottestWet(altitude, plate);
    double high = hottestWet(altitude + more, plate);
    assertTrue(high < low - 0.5e-3 * more, () -> high + " K against " + low);
  }

  /** Hottest while it holds water, which is at its boiling point and not above it [K]. */
  private static double hottestWet(double altitude, double plate) {
    double pressure = MoistAir.pressureAtAltitude(altitude);
    double boiling = SaturationPressure.boilingPoint(pressure);
    SurfaceLaw metal = Touch.ofPlate(Signal.constant(Temperatures.celsius(plate)));
    Chamber pit = Chamber.steady(Temperatures.celsius(110), 0.02, pressure);
    Cook cook =
        Cook.of(
            new Cut(Slab.ofThickness(0.03), Bodies.CONSTANT, Bodies.START),
            Stage.allRound("gentle", face(pit, 8, 1, SurfaceLaw.insulated()), StageEnd.after(900)),
            Stage.allRound("sear", face(pit, 8, 1, metal), StageEnd.after(240)));
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    double hottest = 0;
    for (double time = 0; time <= result.endTime(); time += 0.1) {
      if (result.upperFaceWaterAt(time) > 0) {
        hottest = Math.max(hottest, result.upperSurface().at(time));
      }
    }
    double reached = hottest;
    assertTrue(reached <= boiling + SUPERHEAT, () -> reached + " K above " + boiling);
    assertTrue(reached >= boiling - 0.5, () -> reached + " K far below " + boiling);
    return reached;
  }

  /** Time of a cylinder of 2 cm, with little water, in air of 80 °C [s]. */
  private static double coreTime(double humidity, double core) {
    Chamber pit = Chamber.steady(Temperatures.celsius(80), humidity, MoistAir.STANDARD_PRESSURE);
    Cook cook =
        Cook.of(
            new Cut(Cylinder.ofRadius(0.01), Bodies.CONSTANT, Temperatures.celsius(40)),
            Stage.allRound(
                "roast",
                face(pit, 10, 0.1, SurfaceLaw.insulated()),
                StageEnd.coreRisesTo(Temperatures.celsius(core), 100_000)));
    return Bodies.run(Bodies.accuracy(1e-3), cook).endTime();
  }

  private static DryingFace face(Chamber chamber, double h, double drive, SurfaceLaw more) {
    SurfaceLaw dry = SurfaceLaw.sum(chamber.around(h, 0.9, 0, 1), more);
    SurfaceLaw wet = Evaporation.of(1, h, 0.98, chamber.vapourPressure(), chamber.pressure());
    return DryingFace.ofMeat(dry, wet, drive, chamber.pressure());
  }
}
