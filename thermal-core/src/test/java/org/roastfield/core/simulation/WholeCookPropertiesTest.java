package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/** Wraps, turns, lids and humidity in whole cooks. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class WholeCookPropertiesTest {

  private static final int TRIES = 40;
  private static final double ROUND_OFF = 1e-12;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double BOILING = SaturationPressure.boilingPoint(PRESSURE);
  private static final double RADIUS = 0.03;

  @Property(tries = TRIES)
  void wrapsTurnsAndLids_conserveHeat(
      @ForAll @DoubleRange(min = 0.02, max = 0.1) @Scale(4) double thickness,
      @ForAll boolean constant,
      @ForAll("wraps") Wrap wrap,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double wetness,
      @ForAll @DoubleRange(min = 10, max = 90) @Scale(4) double period,
      @ForAll @IntRange(min = 1, max = 7) int legs,
      @ForAll @DoubleRange(min = 0, max = 500) @Scale(4) double load) {
    Chamber pit = Chamber.steady(Temperatures.celsius(115), 0.03, PRESSURE);
    Chamber opened = pit.withLid(Lid.openedAt(300, 80), 330, 350, 0.008);
    SurfaceLaw gentle = opened.around(8, 0.9, wetness, 0.98, load);
    SurfaceLaw grate = new Contact(250, Signal.constant(Temperatures.celsius(230)));
    List<Stage> stages = new ArrayList<>();
    stages.add(Stage.allRound("gentle", gentle, StageEnd.after(1500)));
    stages.add(Stage.allRound("wrapped", gentle.under(wrap), StageEnd.after(900)));
    stages.addAll(Turns.every(period, legs).flips("sear", pit.around(12, 0.9, 0, 1), grate));
    Cut cut =
        new Cut(
            Slab.ofThickness(thickness), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    SimulationResult result = Bodies.run(Settings.withDefaults(), new Cook(cut, stages, List.of()));
    double residual = result.energy().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual " + residual);
  }

  /** Water is never more than the leak of what a wet bare face of the same temperature gives. */
  @Property(tries = TRIES)
  void underAWrap_noMoreEvaporatesThanItsLeak(
      @ForAll("wraps") Wrap wrap,
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(4) double wetness,
      @ForAll @DoubleRange(min = 80, max = 180) @Scale(4) double pit) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(pit), 0.01, PRESSURE);
    SurfaceLaw bare = chamber.around(8, 0.9, wetness, 0.98);
    SurfaceLaw wettest = chamber.around(8, 0.9, 1, 0.98);
    Cook cook =
        Cook.of(
            new Cut(Cylinder.ofRadius(0.04), Bodies.CONSTANT, Temperatures.celsius(30)),
            Stage.allRound("wrapped", bare.under(wrap), StageEnd.after(5400)));
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-3), cook);
    double most = wrap.leak() * vapour(result, wettest);
    double lost = result.water().evaporatedUpper();
    assertTrue(lost <= most, () -> lost + " kg/m² against a leak of " + most);
    assertEquals(wetness * most, lost, 2e-3 * most);
  }

  /** The same where the face dries and is fed, as long as it does not boil. */
  @Property(tries = 2 * TRIES)
  void dryingFaceUnderAWrap_losesNoMoreThanItsLeak(
      @ForAll("wraps") Wrap wrap,
      @ForAll @DoubleRange(min = 3, max = 30) @Scale(4) double h,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double drive,
      @ForAll @DoubleRange(min = 0.005, max = 0.1) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 80, max = 200) @Scale(4) double pit) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(pit), humidity, PRESSURE);
    SurfaceLaw wettest = Evaporation.of(1, h, 0.98, chamber.vapourPressure(), PRESSURE);
    SurfaceLaw bare = DryingFace.ofMeat(chamber.around(h, 0.9, 0, 1), wettest, drive, PRESSURE);
    SimulationResult result = wrapped(bare.under(wrap));
    SimulationResult sealed =
        wrapped(bare.under(new Wrap("sealed", wrap.radiation(), wrap.convection(), 0)));
    Assume.that(sealed.upperSurface().at(sealed.endTime()) < BOILING - 1);
    assertEquals(0, sealed.water().evaporatedUpper(), 0);
    double most = wrap.leak() * vapour(result, wettest);
    double lost = result.water().evaporatedUpper();
    assertTrue(lost <= most, () -> lost + " kg/m² against a leak of " + most);
  }

  private static SimulationResult wrapped(SurfaceLaw law) {
    Cook cook =
        Cook.of(
            new Cut(Cylinder.ofRadius(0.04), Bodies.CONSTANT, Temperatures.celsius(55)),
            Stage.allRound("wrapped", law, StageEnd.after(2400)));
    return Bodies.run(Bodies.accuracy(1e-3), cook);
  }

  private static double vapour(SimulationResult result, SurfaceLaw law) {
    SurfaceFlux flux = new SurfaceFlux();
    double sum = 0;
    int steps = 20_000;
    double step = result.endTime() / steps;
    for (int i = 0; i < steps; i++) {
      flux.clear();
      double time = (i + 0.5) * step;
      law.evaluate(result.upperSurface().at(time), time, flux);
      sum += step * flux.evaporation();
    }
    return sum;
  }

  @Property(tries = TRIES)
  void sealedWrap_keepsAllWater(@ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double wetness) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(120), 0.01, PRESSURE);
    SurfaceLaw law = chamber.around(8, 0.9, wetness, 0.98).under(new Wrap("sealed", 0.1, 0.6, 0));
    SimulationResult result =
        Bodies.run(Settings.withDefaults(), Bodies.oneStage(Cylinder.ofRadius(0.04), law, 3600));
    assertEquals(0, result.water().evaporatedUpper(), 0);
  }

  /** Laws that belong to places, changed over: every leg is mirrored. */
  @Property(tries = TRIES)
  void flipsFromTheOtherSide_mirrorTheField(
      @ForAll @DoubleRange(min = 0.02, max = 0.08) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 20, max = 120) @Scale(4) double period,
      @ForAll @IntRange(min = 1, max = 6) int legs) {
    SurfaceLaw grate = new Contact(250, Signal.constant(Temperatures.celsius(220)));
    SurfaceLaw air = new Convection(20, Signal.constant(Temperatures.celsius(60)));
    Turns turns = Turns.every(period, legs);
    SimulationResult up = flipped(thickness, turns.flips("sear", air, grate));
    SimulationResult down = flipped(thickness, turns.flips("sear", grate, air));
    double end = up.endTime();
    assertEquals(up.core().at(end), down.core().at(end), 1e-7);
    assertEquals(up.upperSurface().at(end), down.lowerSurface().at(end), 1e-7);
    TemperatureProfile one = up.profile(end);
    TemperatureProfile other = down.profile(end);
    for (double share = -0.48; share <= 0.48; share += 0.06) {
      assertEquals(one.at(share * thickness), other.at(-share * thickness), 1e-7);
    }
  }

  /** Both faces alike in every leg, though told apart: the profile stays even. */
  @Property(tries = TRIES)
  void facesAlikeAtEachMoment_keepTheFieldSymmetric(
      @ForAll @DoubleRange(min = 0.02, max = 0.08) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 20, max = 120) @Scale(4) double period,
      @ForAll("wraps") Wrap wrap) {
    Chamber pit = Chamber.steady(Temperatures.celsius(140), 0.03, PRESSURE);
    SurfaceLaw one = pit.around(8, 0.9, 0.4, 0.98).under(wrap);
    SurfaceLaw other = (temperature, time, flux) -> one.evaluate(temperature, time, flux);
    List<Stage> stages = Turns.every(period, 4).flips("alike", one, other);
    TemperatureProfile profile = flipped(thickness, stages).profile(4 * period);
    for (double share = 0.02; share <= 0.5; share += 0.06) {
      assertEquals(profile.at(share * thickness), profile.at(-share * thickness), 1e-7);
    }
  }

  private static SimulationResult flipped(double thickness, List<Stage> stages) {
    Cut cut = new Cut(Slab.ofThickness(thickness), Bodies.CONSTANT, Bodies.START);
    return Bodies.run(Bodies.accuracy(1e-3), new Cook(cut, stages, List.of()));
  }

  /** By the correlations, from still air to 2 m/s, past every form of face. */
  @Property(tries = 3 * TRIES)
  void moreWind_shortensTheCookOfADryFace(
      @ForAll FaceForm form,
      @ForAll boolean fromStillAir,
      @ForAll @DoubleRange(min = 0.05, max = 2) @Scale(4) double moving,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) @Scale(4) double more,
      @ForAll @DoubleRange(min = 60, max = 220) @Scale(4) double pit) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(pit), 0.02, PRESSURE);
    double wind = fromStillAir ? 0 : moving;
    double slow = coreTime(chamber.around(air(form, wind), 0.9, 0, 0.98), 27, 48);
    double fast = coreTime(chamber.around(air(form, wind + more), 0.9, 0, 0.98), 27, 48);
    assertTrue(fast < slow, () -> fast + " s against " + slow);
  }

  private static FilmCoefficient air(FaceForm form, double wind) {
    return FilmCoefficient.windyAir(form, 2 * RADIUS, wind, PRESSURE);
  }

  /**
   * The cut starts just above the dew point of the more humid air, so that nothing condenses: more
   * vapour in the air, from a dry oven's to a smoker's, then only slows evaporation. The core is to
   * come half way to where the face stands still in the drier air.
   */
  @Property(tries = 3 * TRIES)
  void moreHumidity_shortensTheCookAtFixedWetness(
      @ForAll @DoubleRange(min = 0.005, max = 0.2) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 0.02, max = 0.2) @Scale(4) double share,
      @ForAll @DoubleRange(min = 3, max = 40) @Scale(4) double h,
      @ForAll @DoubleRange(min = 90, max = 180) @Scale(4) double pit,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(4) double wetness) {
    double more = humidity * (1 + share);
    double start = MoistAir.dewPoint(MoistAir.vapourPressure(more, PRESSURE)) + 0.5;
    double air = Temperatures.celsius(pit);
    SurfaceLaw drier = Chamber.steady(air, humidity, PRESSURE).around(h, 0.9, wetness, 0.98);
    SurfaceLaw moister = Chamber.steady(air, more, PRESSURE).around(h, 0.9, wetness, 0.98);
    double steady = standsStill(drier);
    Assume.that(steady > start + 2);
    double target = 0.5 * (start + steady) - Temperatures.ZERO_CELSIUS;
    double dry = coreTime(drier, start - Temperatures.ZERO_CELSIUS, target);
    double humid = coreTime(moister, start - Temperatures.ZERO_CELSIUS, target);
    assertTrue(humid < dry, () -> humid + " s against " + dry);
  }

  /** Temperature at which a law lets no heat through, by bisection [K]. */
  private static double standsStill(SurfaceLaw law) {
    double low = 270;
    double high = 500;
    SurfaceFlux flux = new SurfaceFlux();
    for (int i = 0; i < 50; i++) {
      double middle = 0.5 * (low + high);
      flux.clear();
      law.evaluate(middle, 0, flux);
      low = flux.heatFlux() > 0 ? middle : low;
      high = flux.heatFlux() > 0 ? high : middle;
    }
    return low;
  }

  private static double coreTime(SurfaceLaw law, double start, double celsius) {
    Cook cook =
        Cook.of(
            new Cut(Cylinder.ofRadius(RADIUS), Bodies.CONSTANT, Temperatures.celsius(start)),
            Stage.allRound(
                "roast", law, StageEnd.coreRisesTo(Temperatures.celsius(celsius), 100_000)));
    return Bodies.run(Bodies.accuracy(1e-4), cook).endTime();
  }

  /** In legs that end where the lid moves, usual steps follow it as well as short ones. */
  @Property(tries = 20)
  void lid_isFollowedInLegs(
      @ForAll @DoubleRange(min = 600, max = 6000) @Scale(4) double opens,
      @ForAll @DoubleRange(min = 20, max = 240) @Scale(4) double duration) {
    Lid lid = Lid.openedAt(opens, duration);
    Chamber pit =
        Chamber.steady(Temperatures.celsius(110), 0.02, PRESSURE).withLid(lid, 320, 340, 0.008);
    Stage stage = Stage.allRound("pit", pit.around(7, 0.9, 0.3, 0.98), StageEnd.at(9000));
    Cut cut = new Cut(Cylinder.ofRadius(0.045), Bodies.CONSTANT, Bodies.START);
    Cook cook = new Cook(cut, stage.cutAt(lid.edges()), List.of());
    SimulationResult usual = Bodies.run(Settings.withDefaults(), cook);
    SimulationResult fine = Bodies.run(Bodies.accuracy(1e-5), cook);
    assertEquals(fine.core().at(9000), usual.core().at(9000), 0.01);
    for (double time = opens; time < opens + 4 * duration; time += 5) {
      assertEquals(fine.upperSurface().at(time), usual.upperSurface().at(time), 0.1);
    }
  }

  @Provide
  static Arbitrary<Wrap> wraps() {
    return Arbitraries.of(Wrap.FOIL, Wrap.PAPER, Wrap.TENT);
  }
}
