package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.material.Material;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Derivatives of what is read of a cook whose face dries, against differences of whole cooks. */
class CookModelTest {

  /**
   * Half the difference of coordinates, as a share of a parameter's spread: smaller ones drown in
   * the steps that whole cooks choose anew, larger ones bend, most where a trace turns at the pull.
   */
  private static final double STEP = 0.005;

  /** Of the largest derivative of a trace, or of a number; 2e-3 was measured. */
  private static final double ALLOWED = 4e-3;

  /** Of a number that is read off the steps, which whole cooks choose anew. */
  private static final double AT_STEPS = 1e-2;

  /** That number drowns sooner: by how much wider its differences are. */
  private static final int WIDER = 4;

  private static final Signal AIR = Signal.constant(Temperatures.celsius(30));

  private static final ParameterSet PARAMETERS =
      ParameterSet.of(
          multiplier("convection", 0.2),
          multiplier("size", 0.05),
          multiplier("wetness", 0.3),
          multiplier("lag", 0.3),
          offset("start", 2),
          offset("target", 2),
          offset("place", 0.003),
          offset("bias", 0.5));

  private static Parameter multiplier(String id, double spread) {
    return Parameter.multiplier(id, Owner.CUT, spread, 0.2, 5, "made up for tests");
  }

  private static Parameter offset(String id, double spread) {
    return Parameter.offset(id, "K", Owner.CUT, spread, -10, 10, "made up for tests");
  }

  private static SurfaceLaw face(ParameterPoint at, double celsius, double h) {
    Signal air = Signal.constant(Temperatures.celsius(celsius));
    double film = h * at.value("convection");
    Signal vapour = Signal.constant(MoistAir.vapourPressure(0.03, MoistAir.STANDARD_PRESSURE));
    return DryingFace.ofMeat(
        SurfaceLaw.sum(new Convection(film, air), new Radiation(0.9, air)),
        Evaporation.of(1, film, 0.98, vapour, MoistAir.STANDARD_PRESSURE),
        at.value("wetness"),
        MoistAir.STANDARD_PRESSURE);
  }

  private static Cook cook(ParameterPoint at) {
    double radius = 0.03 * at.value("size");
    Instrument instrument =
        new Instrument(20 * at.value("lag"), Stem.ofFinLength(0.006), at.value("bias"), 0);
    double end = 4 * 3600.0;
    return new Cook(
        new Cut(
            Cylinder.ofRadius(radius),
            Material.constant("constant", 0.48, 1060, 3500),
            Temperatures.celsius(6) + at.value("start")),
        List.of(
            Stage.allRound(
                "gentle",
                face(at, 150, 15),
                StageEnd.coreRisesTo(Temperatures.celsius(48) + at.value("target"), end)),
            Stage.allRound("sear", face(at, 250, 40), StageEnd.after(300)),
            Stage.allRound("rest", face(at, 22, 6), StageEnd.at(end))),
        List.of(new Probe("tip", 0.0175 + at.value("place"), 0, instrument)));
  }

  private static CookModel model() {
    double[] times = new double[200];
    Arrays.setAll(times, i -> 60 * i);
    Series readings = Series.of("log", times, new double[times.length], ErrorModel.CORE);
    Series faces = Series.of("face", times, new double[times.length], ErrorModel.CORE);
    List<String> ids = PARAMETERS.list().stream().map(Parameter::id).toList();
    return CookModel.of(
        PARAMETERS,
        List.of(
            new ObservedCook(
                "test",
                ids,
                ids,
                CookModelTest::cook,
                List.of(
                    new ObservedTrace(readings, "tip", AIR), new ObservedTrace(faces, "core", AIR)),
                List.of(
                    ObservedNumber.highestCore(new SingleReading("peak", 330, 1, 0)),
                    ObservedNumber.spot(new SingleReading("spot", 300, 1, 0), "tip", 1500),
                    new ObservedNumber(
                        new SingleReading("lost", 0.2, 0.02, 0),
                        (cook, result) -> Juice.of(result).total()),
                    new ObservedNumber(
                        new SingleReading("pull", 0, 60, 0),
                        (cook, result) -> result.stage("gentle").end())))),
        Simulator.with(Settings.withDefaults().withAccuracy(1e-7)));
  }

  @Test
  void readings_numbersAndEvents_agreeWithDifferencesOfWholeCooks() {
    CookModel model = model();
    double[] z = new double[PARAMETERS.size()];
    int rows = model.evidence().size();
    double[] predicted = new double[rows];
    double[] plain = new double[rows];
    double[][] derivatives = new double[z.length][rows];
    assertTrue(model.at(z, plain, null));
    assertTrue(model.at(z, predicted, derivatives));
    assertEquals(0, distance(plain, predicted, 0, rows), 0.0);
    for (int p = 0; p < z.length; p++) {
      double half = STEP * PARAMETERS.get(p).spread();
      double[] quotient = quotient(model, z, p, half);
      quotient[rows - 2] = quotient(model, z, p, WIDER * half)[rows - 2];
      check(PARAMETERS.get(p).id(), derivatives[p], quotient);
    }
  }

  private static double[] quotient(CookModel model, double[] z, int p, double half) {
    double[] above = at(model, z, p, half);
    double[] below = at(model, z, p, -half);
    double[] quotient = new double[above.length];
    for (int i = 0; i < quotient.length; i++) {
      quotient[i] = (above[i] - below[i]) / (2 * half);
    }
    return quotient;
  }

  private static double[] at(CookModel model, double[] z, int p, double by) {
    double[] moved = z.clone();
    moved[p] += by;
    double[] out = new double[model.evidence().size()];
    assertTrue(model.at(moved, out, null));
    return out;
  }

  /** A trace by its largest; each number by itself. */
  private static void check(String what, double[] found, double[] expected) {
    int rows = found.length;
    int numbers = rows - 4;
    assertEquals(
        0,
        distance(found, expected, 0, numbers),
        ALLOWED * largest(expected, 0, numbers),
        what + " of the traces");
    for (int i = numbers; i < rows; i++) {
      double allowed = i == numbers + 2 ? AT_STEPS : ALLOWED;
      assertEquals(expected[i], found[i], allowed * Math.abs(expected[i]) + 1e-6, what + " " + i);
    }
  }

  private static double distance(double[] a, double[] b, int from, int to) {
    double most = 0;
    for (int i = from; i < to; i++) {
      most = Math.max(most, Math.abs(a[i] - b[i]));
    }
    return most;
  }

  private static double largest(double[] a, int from, int to) {
    return distance(a, new double[a.length], from, to);
  }
}
