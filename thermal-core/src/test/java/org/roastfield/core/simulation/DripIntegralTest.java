package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.PressedWater;
import org.roastfield.core.material.Materials;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Drip against an integral of its own over depth and time, eqs. (98) and (100): temperatures read
 * between the cells at places of Gauss's rule, the curve of (69) written out, and what the face
 * draws out of the cut by its laws alone.
 */
class DripIntegralTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double ACCURACY = 1e-5;
  private static final int CELLS = 80;

  /** The places between cells differ from their means by a square of a cell. */
  private static final double AGREEMENT = 1e-3;

  /**
   * A hundredth of a kelvin moves (69) by up to 0.06 % of what is pressed out, a third of it drips.
   */
  private static final double DEFAULT_AGREEMENT = 3e-3;

  /** In how many parts a step is looked at. */
  private static final int TIMES = 5;

  private static final int PANELS = 40;
  private static final double[] NODES = {-0.7745966692414834, 0, 0.7745966692414834};
  private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  private static SurfaceLaw gentle(double air, double wetness) {
    return chamber(air).around(8, 0.9, wetness, 0.98);
  }

  private static Chamber chamber(double air) {
    return Chamber.steady(Temperatures.celsius(air), 0.02, PRESSURE);
  }

  private static SurfaceLaw drying(double air, double convection) {
    Chamber chamber = chamber(air);
    return DryingFace.ofMeat(
        chamber.around(convection, 0.9, 0, 1),
        Evaporation.of(1, convection, 0.98, chamber.vapourPressure(), PRESSURE),
        1,
        PRESSURE);
  }

  private static Cut cut(Shape shape) {
    return new Cut(shape, Materials.named("pork loin").material(), Temperatures.celsius(6));
  }

  private static Stage stage(String name, SurfaceLaw law, double seconds) {
    return Stage.allRound(name, law, StageEnd.after(seconds));
  }

  private static List<Cook> cooks() {
    Stage given = stage("gentle", gentle(150, 0.1), 7000);
    Stage slow = stage("smoke", drying(115, 8), 15_000);
    Stage sear = stage("sear", drying(230, 25), 300);
    Stage rest = stage("rest", drying(22, 5), 1800);
    Stage oneSide =
        Stage.ofFaces("two faces", drying(160, 12), gentle(150, 0.1), StageEnd.after(5000));
    return List.of(
        Cook.of(cut(Cylinder.ofRadius(0.04)), given),
        Cook.of(cut(Cylinder.ofRadius(0.045)), slow, sear, rest),
        Cook.of(cut(Sphere.ofRadius(0.04)), stage("hot", drying(170, 15), 3600), rest),
        Cook.of(cut(Compact.ofBox(0.06, 0.1, 0.18)), given, slow),
        Cook.of(cut(Slab.ofThickness(0.05)), oneSide, rest));
  }

  @Test
  void drip_isThatOfTheIntegral() {
    for (Cook cook : cooks()) {
      FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, CELLS);
      Moisture moisture = cook.cut().material().moisture();
      double depth = cook.cut().shape().volumePerArea();
      double drip = PressedWater.dripped(integral.trajectory(), moisture, depth)[0];
      double own = dripped(cook, integral, true);
      assertTrue(own > 0.3, () -> cook.cut().shape() + " drips " + own);
      assertEquals(own, drip, AGREEMENT * own, () -> cook.cut().shape().toString());
    }
  }

  @Test
  void dripAtTheDefaultAccuracy_isThatOfTheIntegral() {
    for (Cook cook : cooks()) {
      double own = dripped(cook, FluxIntegral.of(cook, ACCURACY, CELLS), true);
      SimulationResult result = Simulator.withDefaults().run(cook).orElseThrow();
      assertEquals(own, result.water().upper().pressedOut(), DEFAULT_AGREEMENT * own);
    }
  }

  /** The integral is good enough to tell juice that a face took from juice that dripped. */
  @Test
  void integralWithoutWhatTheFacesTake_isNot() {
    for (Cook cook : cooks()) {
      FluxIntegral integral = FluxIntegral.of(cook, 1e-3, 40);
      double own = dripped(cook, integral, true);
      double all = dripped(cook, integral, false);
      assertTrue(all > 1.05 * own, () -> cook.cut().shape() + ": " + own + " of " + all);
    }
  }

  /** Most of what was pressed out by a time and not taken by the upper face before [kg/m²]. */
  private static double dripped(Cook cook, FluxIntegral integral, boolean counting) {
    Shape shape = cook.cut().shape();
    List<Reading> places = new ArrayList<>();
    List<Double> volumes = new ArrayList<>();
    double exponent = integral.trajectory().grid().exponent();
    double panel = shape.halfThickness() / PANELS;
    double whole = 0;
    for (int i = 0; i < PANELS; i++) {
      for (int j = 0; j < NODES.length; j++) {
        double place = (i + 0.5 + 0.5 * NODES[j]) * panel;
        places.add(integral.cook().readingAt(place));
        volumes.add(WEIGHTS[j] * Math.pow(place, exponent));
        whole += WEIGHTS[j] * Math.pow(place, exponent);
      }
    }
    double[] hottest = new double[places.size()];
    double depth = shape.volumePerArea() * cook.cut().material().moisture().content();
    double most = 0;
    double before = 0;
    double freeBefore = 0;
    double drained = 0;
    for (FaceSums.Drawn drawn : integral.upper().drawn()) {
      double start = integral.trajectory().stepStart(drawn.step());
      for (int k = 1; k <= TIMES; k++) {
        double share = (double) k / TIMES;
        double time = start + share * (drawn.time() - start);
        double mean = 0;
        for (int i = 0; i < hottest.length; i++) {
          double now = integral.trajectory().inStep(places.get(i), drawn.step(), time);
          hottest[i] = Math.max(hottest[i], now);
          mean += volumes.get(i) / whole * pressed(hottest[i]);
        }
        double piece = (drawn.time() - start) / TIMES;
        drained = drained(drained, freeBefore, depth * mean, piece);
        freeBefore = depth * mean;
        double taken = before + share * (drawn.amount() - before);
        most = Math.max(most, drained - (counting ? taken : 0));
      }
      before = drawn.amount();
    }
    return most;
  }

  /** The lag of (100), five minutes, by small steps of the rule of trapezia. */
  private static double drained(double drained, double free, double freeAfter, double seconds) {
    int pieces = 1 + (int) seconds;
    double step = seconds / pieces / 300 / 2;
    double now = drained;
    for (int i = 0; i < pieces; i++) {
      double middle = free + (freeAfter - free) * (i + 0.5) / pieces;
      now = ((1 - step) * now + 2 * step * middle) / (1 + step);
    }
    return now;
  }

  /** Share of the water: 0.345 of lean meat with 0.72, by eq. (69). */
  private static double pressed(double temperature) {
    double celsius = temperature - 273.15;
    return 0.345 / 0.72 / (1 + 30 * Math.exp(-0.25 * (celsius - 52)));
  }
}
