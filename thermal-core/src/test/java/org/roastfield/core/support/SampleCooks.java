package org.roastfield.core.support;

import java.util.List;
import java.util.stream.Stream;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.HoldBox;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
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
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/** Every shape, law and material, and cooks of one, two and many stages made of them. */
public final class SampleCooks {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Signal SWINGING = new Swinging(Temperatures.celsius(120), 6, 1500);
  private static final Chamber PIT = Chamber.of(SWINGING, 0.03, PRESSURE);
  private static final Chamber ROOM = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);

  /** Constant properties. */
  public static final Material CONSTANT = Material.constant("constant", 0.48, 1060, 3450);

  /** Properties that depend on temperature. */
  public static final Material LOIN =
      ChoiOkos.material("pork loin", Composition.ofMeat(0.722, 0.214, 0.057, 0.0105));

  /** Properties that depend on temperature, with melting fat and proteins that denature. */
  public static final Material BRISKET = Materials.named("beef brisket").material();

  private SampleCooks() {}

  /**
   * mean + amplitude sin(2 π t / period).
   *
   * @param mean [K]
   * @param amplitude [K]
   * @param period [s]
   */
  public record Swinging(double mean, double amplitude, double period) implements Signal {
    @Override
    public double at(double time) {
      return mean + amplitude * StrictMath.sin(2 * Math.PI * time / period);
    }

    @Override
    public double shortestPeriod() {
      return period;
    }
  }

  /**
   * A law with a name for the report of a test.
   *
   * @param name shown
   * @param law tested
   */
  public record NamedLaw(String name, SurfaceLaw law) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** Every law, sums, wraps and what shares a face. */
  public static List<NamedLaw> laws() {
    return Stream.of(plainLaws(), coveredLaws(), rememberingLaws()).flatMap(List::stream).toList();
  }

  /** A face that dries and is fed in a hot pit. */
  public static SurfaceLaw drying() {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(0.03, PRESSURE));
    return DryingFace.ofMeat(
        SurfaceLaw.sum(new Convection(25, SWINGING), new Radiation(0.9, SWINGING)),
        Evaporation.of(1, 25, 0.98, vapour, PRESSURE),
        0.6,
        PRESSURE);
  }

  private static List<NamedLaw> rememberingLaws() {
    Signal plate = Signal.constant(Temperatures.celsius(180));
    return List.of(
        new NamedLaw("drying", drying()),
        new NamedLaw("drying under paper", drying().under(Wrap.PAPER)),
        new NamedLaw("touch of a plate", Touch.ofPlate(plate)),
        new NamedLaw(
            "touch of bars", SurfaceLaw.sum(Touch.ofBars(plate), PIT.around(17, 0.7, 0.2, 0.99))));
  }

  private static List<NamedLaw> coveredLaws() {
    SurfaceLaw pit = PIT.around(17, 0.9, 0.35, 0.99);
    Contact band = new Contact(250, Signal.constant(Temperatures.celsius(95)));
    return List.of(
        new NamedLaw("foil", pit.under(Wrap.FOIL)),
        new NamedLaw("paper", pit.under(Wrap.PAPER)),
        new NamedLaw("tent", PIT.around(8, 0.9, 0.3, 0.99).under(Wrap.TENT)),
        new NamedLaw("hot band", SurfaceLaw.shared(0.25, band, pit)),
        new NamedLaw("loaded draught", PIT.around(17, 0.9, 0.35, 0.99, 200)),
        new NamedLaw(
            "loaded draught under paper", PIT.around(17, 0.9, 0.9, 0.99, 400).under(Wrap.PAPER)),
        new NamedLaw("hold box", new HoldBox(1.2, Temperatures.celsius(22)).law()));
  }

  private static List<NamedLaw> plainLaws() {
    return List.of(
        new NamedLaw("convection", new Convection(17, SWINGING)),
        new NamedLaw("radiation", new Radiation(0.9, Signal.constant(Temperatures.celsius(180)))),
        new NamedLaw("contact", new Contact(300, Signal.constant(Temperatures.celsius(230)))),
        new NamedLaw("pit", PIT.around(17, 0.9, 0.35, 0.99)),
        new NamedLaw(
            "evaporation and contact",
            SurfaceLaw.sum(
                new Contact(60, Signal.constant(Temperatures.celsius(140))),
                Evaporation.of(0.5, 10, 0.98, Signal.constant(1200), PRESSURE))),
        new NamedLaw(
            "evaporation alone", Evaporation.of(0.7, 12, 0.98, Signal.constant(900), PRESSURE)),
        new NamedLaw(
            "air by correlation",
            PIT.around(
                FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, 0.06, 0.1, PRESSURE),
                0.9,
                0.35,
                0.99)),
        new NamedLaw(
            "humid smoke over coals",
            SurfaceLaw.sum(
                Chamber.of(SWINGING, 0.12, PRESSURE)
                    .around(
                        FilmCoefficient.stillAir(FaceForm.LOWER_FACE, 0.04, PRESSURE),
                        0,
                        0.5,
                        0.98),
                new CoalBed(0.1, Signal.constant(Temperatures.celsius(500)))
                    .withWalls(0.9, SWINGING))));
  }

  /** Slab, cylinder, sphere and box with the same half thickness. */
  public static List<Shape> shapes() {
    return List.of(
        Slab.ofHalfThickness(0.03),
        Cylinder.ofRadius(0.03),
        Sphere.ofRadius(0.03),
        Compact.ofBox(0.06, 0.08, 0.15));
  }

  /** One stage under one law. */
  public static Cook plain(Shape shape, Material material, SurfaceLaw law) {
    Cut cut = new Cut(shape, material, Temperatures.celsius(8));
    return Cook.of(cut, Stage.allRound("heat", law, StageEnd.after(2400)));
  }

  /** Gentle heat to a core temperature, a sear in four legs, and a rest of the dried face. */
  public static Cook roast(Shape shape, Material material) {
    return roast(shape, material, 0);
  }

  /** The same with a face that is wet again in the rest. */
  public static Cook roast(Shape shape, Material material, double wetnessInRest) {
    SurfaceLaw bars = new Contact(250, Signal.constant(Temperatures.celsius(220)));
    SurfaceLaw above =
        Chamber.steady(Temperatures.celsius(190), 0.02, PRESSURE).around(25, 0.9, 0, 1);
    return Cook.of(
        new Cut(shape, material, Temperatures.celsius(6)),
        Stage.allRound(
            "gentle",
            PIT.around(17, 0.9, 0.35, 0.99),
            StageEnd.coreRisesTo(Temperatures.celsius(40), 40_000)),
        Stage.allRound("sear 1", bars, StageEnd.after(30)),
        Stage.allRound("sear 2", above, StageEnd.after(30)),
        Stage.allRound("sear 3", bars, StageEnd.after(30)),
        Stage.allRound("sear 4", above, StageEnd.after(30)),
        Stage.allRound("rest", ROOM.around(8, 0.9, wetnessInRest, 0.99), StageEnd.after(900)));
  }

  /** A slab turned over a grate: one face on it, the other in the air, then changed over. */
  public static Cook turned(Material material) {
    return turned(material, 0);
  }

  /** The same with faces that are wet while they are in the air. */
  public static Cook turned(Material material, double wetness) {
    SurfaceLaw grate = new Contact(200, Signal.constant(Temperatures.celsius(210)));
    SurfaceLaw air = PIT.around(12, 0.9, wetness, 0.99);
    return Cook.of(
        new Cut(Slab.ofThickness(0.055), material, Temperatures.celsius(12)),
        Stage.ofFaces("first side", air, grate, StageEnd.after(240)),
        Stage.ofFaces("second side", grate, air, StageEnd.after(240)),
        Stage.ofFaces("first side again", air, grate, StageEnd.after(120)),
        Stage.allRound("rest", ROOM.around(8, 0.9, wetness, 0.99), StageEnd.after(600)));
  }
}
