package org.roastfield.core.simulation;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.chamber.FireCourse;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.HoldBox;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.AirExchange;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.AirVapour;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.surface.VapourLaw;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/**
 * Every surface law of the library, drawn with surroundings from a cold room to a hot grate, bare
 * or under a wrap. {@code AnyCookPropertiesTest} fails if one is missing.
 */
final class AnyLaws {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  /** A wrap that changes nothing. */
  private static final Wrap BARE = new Wrap("nothing", 1, 1, 1);

  /** How long the fire burns before the cook, and with it [s]. */
  private static final double WARM = 3600;

  private static final double LONGEST = 7200;

  private static final Lid LID = Lid.openedAt(200, 60);
  private static final Chamber FIRE = fire();

  private AnyLaws() {}

  /** Any law. */
  static Arbitrary<SurfaceLaw> any() {
    Arbitrary<SurfaceLaw> bare =
        Arbitraries.frequencyOf(Tuple.of(3, dry()), Tuple.of(3, moist()), Tuple.of(4, drying()));
    return Combinators.combine(bare, Arbitraries.of(BARE, Wrap.FOIL, Wrap.PAPER, Wrap.TENT))
        .as(SurfaceLaw::under);
  }

  /** Laws that say nothing of water. */
  static Arbitrary<SurfaceLaw> dry() {
    return Arbitraries.oneOf(inAir(), onMetal(), radiating(), resting());
  }

  /** Laws of constant wetness, from dry air to humid smoke that condenses. */
  static Arbitrary<SurfaceLaw> moist() {
    Arbitrary<SurfaceLaw> simple = simplyMoist();
    Arbitrary<SurfaceLaw> shared =
        Combinators.combine(uniform(0, 1), dry(), simple).as(SurfaceLaw::shared);
    Arbitrary<SurfaceLaw> overMetal =
        Combinators.combine(onMetal(), simple).as((metal, air) -> SurfaceLaw.sum(metal, air));
    return Arbitraries.oneOf(simple, simple, shared, overMetal);
  }

  private static Arbitrary<SurfaceLaw> simplyMoist() {
    return Arbitraries.oneOf(
        Combinators.combine(chambers(), uniform(3, 40), uniform(0, 1))
            .as((chamber, h, wetness) -> chamber.around(h, 0.9, wetness, 0.98)),
        Combinators.combine(chambers(), uniform(3, 40), uniform(0, 1), uniform(0, 800))
            .as((chamber, h, wetness, load) -> chamber.around(h, 0.9, wetness, 0.98, load)),
        Combinators.combine(chambers(), films(), uniform(0, 1))
            .as((chamber, film, wetness) -> chamber.around(film, 0.9, wetness, 0.98)));
  }

  /** Faces that dry, and the mean ones of round cuts that are rolled over metal or coals. */
  static Arbitrary<SurfaceLaw> drying() {
    Arbitrary<DryingFace> faces = dryingFaces();
    return Arbitraries.oneOf(
        faces.map(face -> face), faces.map(face -> face), rolledOverMetal(faces), rolled(faces));
  }

  private static Arbitrary<SurfaceLaw> rolledOverMetal(Arbitrary<DryingFace> faces) {
    return Combinators.combine(uniform(0, 1), dry(), faces).as(SurfaceLaw::shared);
  }

  private static Arbitrary<SurfaceLaw> rolled(Arbitrary<DryingFace> faces) {
    return Combinators.combine(uniform(0, 1), radiating(), faces)
        .as((share, heat, face) -> SurfaceLaw.shared(share, beside(heat, face), face));
  }

  private static DryingFace beside(SurfaceLaw heat, DryingFace face) {
    return new DryingFace(
        SurfaceLaw.sum(face.dry(), heat),
        face.wet(),
        face.water(),
        face.crust(),
        face.boilingPoint(),
        face.air());
  }

  /** With a stated coefficient or by correlation, in air that they load or not. */
  private static Arbitrary<DryingFace> dryingFaces() {
    Arbitrary<SurfaceLaw> more =
        Arbitraries.oneOf(Arbitraries.just(SurfaceLaw.insulated()), onMetal(), radiating());
    Arbitrary<DryingFace> stated =
        Combinators.combine(chambers(), uniform(3, 40), more, uniform(0, 2), loads())
            .as(
                (chamber, h, beside, drive, load) ->
                    drying(
                        SurfaceLaw.sum(chamber.around(h, 0.9, 0, 1), beside),
                        Evaporation.of(1, h, 0.98, chamber.vapourPressure(), PRESSURE),
                        drive,
                        load));
    Arbitrary<DryingFace> correlated =
        Combinators.combine(chambers(), films(), more, uniform(0, 2))
            .as(
                (chamber, film, beside, drive) ->
                    drying(
                        SurfaceLaw.sum(chamber.around(film, 0.9, 0, 1), beside),
                        new AirVapour(
                            AirExchange.of(
                                film, chamber.airTemperature(), 1, 0.98, chamber.vapourPressure())),
                        drive,
                        AirLoad.NONE));
    return Arbitraries.oneOf(stated, stated, correlated);
  }

  private static DryingFace drying(SurfaceLaw dry, VapourLaw wet, double drive, AirLoad load) {
    return DryingFace.ofMeat(dry, wet, drive, PRESSURE).into(load);
  }

  private static Arbitrary<AirLoad> loads() {
    return Arbitraries.oneOf(
        Arbitraries.just(AirLoad.NONE),
        uniform(10, 800).map(load -> new AirLoad(load, 0)),
        Combinators.combine(uniform(10, 800), uniform(0.1, 2)).as(AirLoad::new));
  }

  private static Arbitrary<SurfaceLaw> inAir() {
    return Arbitraries.oneOf(
        Combinators.combine(uniform(3, 60), airs()).as(Convection::new),
        Combinators.combine(films(), airs()).as(AirExchange::dry));
  }

  private static Arbitrary<SurfaceLaw> onMetal() {
    Arbitrary<Signal> metal = constant(40, 300);
    return Arbitraries.oneOf(
        Combinators.combine(uniform(20, 500), metal).as(Contact::new),
        constant(60, 300).map(Touch::ofPlate),
        metal.map(Touch::ofBars));
  }

  private static Arbitrary<SurfaceLaw> radiating() {
    return Arbitraries.oneOf(
        Combinators.combine(uniform(0, 1), airs()).as(Radiation::new),
        Combinators.combine(uniform(0, 0.6), constant(400, 800), airs())
            .as((view, coals, walls) -> new CoalBed(view, coals).withWalls(0.9, walls)));
  }

  private static Arbitrary<SurfaceLaw> resting() {
    return Arbitraries.oneOf(
        Arbitraries.just(SurfaceLaw.insulated()),
        uniform(0.7, 1.5).map(loss -> new HoldBox(loss, Temperatures.celsius(22)).law()),
        constant(15, 80).map(board -> new Contact(Contact.BOARD_CONDUCTANCE, board)));
  }

  /** Chambers of stated humidity, of one that burning and draught make, and a computed fire. */
  private static Arbitrary<Chamber> chambers() {
    return Arbitraries.oneOf(
        stated(),
        stated(),
        stated(),
        draughts(),
        Arbitraries.of(FIRE, FIRE.withLid(LID, 310, 330, 0.008)));
  }

  private static Chamber fire() {
    Outside outside = new Outside(288, 0, 0.007, PRESSURE);
    FirePit pit = FirePit.brickAndSteel();
    FireCourse course =
        pit.run(outside, pit.cold(outside, 1), List.of(Tending.hold(0, 390)), WARM + LONGEST);
    return course.chamber(Draught.Fuel.CHARCOAL, WARM);
  }

  private static Arbitrary<Chamber> draughts() {
    return Combinators.combine(airs(), Arbitraries.of(Draught.Fuel.values()), uniform(1, 20))
        .as(
            (air, fuel, excess) -> {
              double humidity = Draught.ofFire(fuel, 2e-4, excess, 0.007).humidityRatio();
              Signal vapour = Signal.constant(MoistAir.vapourPressure(humidity, PRESSURE));
              return new Chamber(air, air, vapour, PRESSURE);
            });
  }

  private static Arbitrary<Chamber> stated() {
    return Combinators.combine(airs(), airs(), uniform(0, 0.12))
        .as(
            (air, walls, humidity) ->
                new Chamber(
                    air,
                    walls,
                    Signal.constant(MoistAir.vapourPressure(humidity, PRESSURE)),
                    PRESSURE));
  }

  /** Air that is steady, swings, or falls while a lid is open. */
  private static Arbitrary<Signal> airs() {
    return Arbitraries.oneOf(
        constant(10, 240),
        uniform(60, 200).map(mean -> new SampleCooks.Swinging(Temperatures.celsius(mean), 8, 700)),
        uniform(80, 220)
            .map(
                closed ->
                    Lid.openedAt(150, 60)
                        .over(Signal.constant(Temperatures.celsius(closed)), Lid.OPEN_AIR)));
  }

  /** Natural, forced and mixed, of every form. */
  private static Arbitrary<FilmCoefficient> films() {
    return Combinators.combine(
            Arbitraries.of(FaceForm.values()),
            uniform(0.03, 0.09),
            Arbitraries.oneOf(Arbitraries.just(0.0), uniform(0.2, 3)),
            uniform(0.5, 2))
        .as(
            (form, length, wind, factor) ->
                FilmCoefficient.windyAir(form, length, wind, PRESSURE).times(factor));
  }

  private static Arbitrary<Signal> constant(double low, double high) {
    return uniform(low, high).map(celsius -> Signal.constant(Temperatures.celsius(celsius)));
  }

  static Arbitrary<Double> uniform(double low, double high) {
    return Arbitraries.doubles().between(low, high).withDistribution(RandomDistribution.uniform());
  }
}
