package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Diagnostics of calibrations that are linear in their coordinates, against closed forms. */
class LinearDiagnosisTest {

  private static final int READINGS = 12;

  /** What a search to 1e-3 nat may leave [posterior spreads]. */
  private static final double SEARCH = 0.05;

  private final SplittableRandom random = new SplittableRandom(31);
  private final LinearCook cook = LinearCook.drawn(READINGS, random, 1, 2, 0.5);
  private final double[] values = cook.read(new double[] {0.6, -1.5, 0.2}, random);
  private final Calibration calibration = cook.calibration(values, 0, READINGS);
  private final MapEstimate estimate = calibration.map();

  @Test
  void influence_isTheRefitWithoutThePart() {
    List<Integer> last = List.of(8, 9, 10, 11);
    Influence influence =
        Influence.of(FirstOrder.of(calibration, estimate), new EvidencePart(List.of(), last));
    MapEstimate refit = cook.calibration(values, 0, 8).map();
    for (int p = 0; p < 3; p++) {
      double moved = refit.coordinates()[p] - estimate.coordinates()[p];
      assertEquals(moved, influence.move(p), 2 * SEARCH * refit.spread(p), "move of " + p);
      assertEquals(refit.spread(p), influence.spread(p), 1e-9, "spread of " + p);
    }
    assertEquals(Math.abs(influence.move(1)) / estimate.spread(1), influence.distance(1), 1e-12);
    assertTrue(influence.distance(0, 1, 2) >= influence.distance(1));
  }

  @Test
  void influenceOfAnOddReading_standsOut() {
    double[] spoiled = values.clone();
    spoiled[5] += 6;
    Calibration spoiledCalibration = cook.calibration(spoiled, 0, READINGS);
    MapEstimate found = spoiledCalibration.map();
    double[] distances =
        IntStream.range(0, READINGS)
            .mapToDouble(
                k ->
                    Influence.of(FirstOrder.of(spoiledCalibration, found), EvidencePart.ofSingle(k))
                        .distance(0, 1, 2))
            .toArray();
    for (int k = 0; k < READINGS; k++) {
      assertTrue(k == 5 || distances[k] < distances[5], "reading " + k);
    }
  }

  @Test
  void partsThatAreNot_areRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Influence.of(FirstOrder.of(calibration, estimate), EvidencePart.ofSeries(0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Influence.of(FirstOrder.of(calibration, estimate), EvidencePart.ofSingle(READINGS)));
  }

  @Test
  void measurement_teachesWhatARefitWithItKnows() {
    MapEstimate before = cook.calibration(values, 0, 8).map();
    double[][] rows = new double[3][READINGS];
    assertTrue(calibration.model().at(new double[3], new double[READINGS], rows));
    MapEstimate after = cook.calibration(values, 0, 9).map();
    double[] derivatives = {rows[0][8], rows[1][8], rows[2][8]};
    Measurement.Lesson lesson =
        Measurement.once("one more", derivatives, LinearCook.NOISE).after(before);
    double[] gradient = {10, -3, 1};
    double sum = 0;
    for (int p = 0; p < 3; p++) {
      assertEquals(after.spread(p), lesson.spread(p), 1e-9);
      assertEquals(after.contraction(p), lesson.contraction(p), 1e-9);
      for (int q = 0; q < 3; q++) {
        sum += gradient[p] * after.covariance(p, q) * gradient[q];
      }
    }
    assertEquals(Math.sqrt(sum), lesson.spreadAfter(gradient), 1e-9);
    assertTrue(lesson.spreadAfter(gradient) < lesson.spreadBefore(gradient));
  }

  @Test
  void readingsOverTime_teachLessThanIndependentOnes() {
    double[] times = IntStream.range(0, 60).mapToDouble(k -> 60.0 * k).toArray();
    double[][] constant = new double[3][60];
    Arrays.fill(constant[1], 1);
    Measurement.Lesson drifting =
        Measurement.over("drifting", times, constant, ErrorModel.CORE).after(estimate);
    ErrorModel white = new ErrorModel(0, 2700, 0.2, 0);
    Measurement.Lesson independent =
        Measurement.over("independent", times, constant, white).after(estimate);
    assertTrue(independent.spread(1) < drifting.spread(1));
    double alone = estimate.spread(1);
    double expected = 1 / Math.sqrt(1 / (alone * alone) + 60 / (0.2 * 0.2));
    assertEquals(expected, independent.spread(1), 1e-9);
  }

  @Test
  void profileOfALinearModel_isAParabola() {
    // Without a prior: variance of generalised least squares, and its estimate.
    double[][] rows = new double[3][READINGS];
    assertTrue(calibration.model().at(new double[3], new double[READINGS], rows));
    RealMatrix jacobian = new Array2DRowRealMatrix(rows).transpose();
    RealMatrix normal = jacobian.transpose().multiply(jacobian);
    RealMatrix inverse = new LUDecomposition(normal).getSolver().getInverse();
    double[] fitted = inverse.multiply(jacobian.transpose()).operate(values);
    for (int p = 0; p < 3; p++) {
      double spread = LinearCook.NOISE * Math.sqrt(inverse.getEntry(p, p));
      LikelihoodProfile profile = LikelihoodProfile.of(calibration, estimate, p);
      for (LikelihoodProfile.Point point : profile.points()) {
        double away = (point.coordinate() - fitted[p]) / spread;
        assertEquals(away * away, point.deviance(), 5e-3 + 1e-3 * away * away);
      }
      assertEquals(LikelihoodProfile.Kind.IDENTIFIABLE, profile.kind());
      double half = Math.sqrt(LikelihoodProfile.THRESHOLD) * spread;
      assertEquals(fitted[p] - half, profile.low(), 0.02 * spread);
      assertEquals(fitted[p] + half, profile.high(), 0.02 * spread);
    }
  }

  @Test
  void whatNobodySees_hasAFlatProfile() {
    double[][] rows = {{1, 0}, {1, 0}, {1, 0}};
    LinearCook blind = new LinearCook(rows, 1, 1);
    Calibration flat = blind.calibration(new double[] {0.1, 0.2, 0.3}, 0, 3);
    MapEstimate found = flat.map();
    LikelihoodProfile seen = LikelihoodProfile.of(flat, found, 0);
    LikelihoodProfile unseen = LikelihoodProfile.of(flat, found, 1);
    assertEquals(LikelihoodProfile.Kind.IDENTIFIABLE, seen.kind());
    assertEquals(LikelihoodProfile.Kind.FLAT, unseen.kind());
    assertEquals(Double.POSITIVE_INFINITY, unseen.high());
    assertTrue(unseen.points().size() >= 3, () -> "tried " + unseen.points());
  }

  @Test
  void evidence_isTheMarginalLikelihood() {
    double[][] rows = new double[3][READINGS];
    assertTrue(calibration.model().at(new double[3], new double[READINGS], rows));
    double[][] covariance = new double[READINGS][READINGS];
    for (int i = 0; i < READINGS; i++) {
      for (int j = 0; j < READINGS; j++) {
        covariance[i][j] = i == j ? LinearCook.NOISE * LinearCook.NOISE : 0;
        for (int p = 0; p < 3; p++) {
          double spread = estimate.prior().spread(p);
          covariance[i][j] += spread * spread * rows[p][i] * rows[p][j];
        }
      }
    }
    Cholesky factor = Cholesky.of(covariance);
    double[] white = factor.whitened(values);
    double expected =
        -0.5 * LinearCook.product(white, white)
            - factor.halfLogDeterminant()
            - 0.5 * READINGS * Math.log(2 * Math.PI);
    assertEquals(expected, estimate.logEvidence(), 2e-3);
  }

  @Test
  void termThatIsLeftOut_gainsWhatARefitFinds() {
    double[] column = new double[READINGS];
    for (int k = 6; k < READINGS; k++) {
      column[k] = 1;
    }
    double[] shifted = values.clone();
    for (int k = 6; k < READINGS; k++) {
      shifted[k] += 2.5;
    }
    Calibration without = cook.calibration(shifted, 0, READINGS);
    AddedTerm term =
        AddedTerm.of(Parameter.offset("shift", "K", Owner.PROBE, 3, -100, 100, "made up"), column);
    MapEstimate base = without.map();
    MapEstimate refit = term.addedTo(without).map();
    double gained = refit.logEvidence() - base.logEvidence();
    assertTrue(gained > 3, () -> "gained " + gained);
    assertEquals(gained, term.promise(FirstOrder.of(without, base)).gain(), 5e-3);
    assertEquals(
        refit.mean()[3],
        term.promise(FirstOrder.of(without, base)).value(),
        SEARCH * refit.spread(3));
    assertEquals(2.5, refit.mean()[3], 3 * refit.spread(3));
  }

  /** Of a right profile it is a χ² of one degree of freedom, of a wrong one far more. */
  @Test
  void conflictOfTheCooker_countsItsOwnNumbersAlone() {
    ParameterSet parameters =
        ParameterSet.of(
            Parameter.offset("cooker", "K", Owner.COOKER, 1, -1e3, 1e3, "made up"),
            Parameter.offset("cut", "K", Owner.CUT, 2, -1e3, 1e3, "made up"),
            Parameter.offset("probe", "K", Owner.PROBE, 0.5, -1e3, 1e3, "made up"));
    Prior prior = Prior.of(parameters);
    int draws = 400;
    double sum = 0;
    for (int i = 0; i < draws; i++) {
      double[] drawn = cook.read(prior.draw(random), random);
      MapEstimate found = cook.calibration(prior, drawn, 0, READINGS).map();
      Conflict conflict = Conflict.ofCooker(found);
      double away = found.coordinates()[0];
      assertEquals(1, conflict.directions());
      assertEquals(away * away / (1 - found.covariance(0, 0)), conflict.square(), 1e-9);
      sum += conflict.square();
    }
    assertEquals(1, sum / draws, 3 * Math.sqrt(2.0 / draws));
    double[] wrong = cook.read(new double[] {6, 0, 0}, random);
    MapEstimate found = cook.calibration(prior, wrong, 0, READINGS).map();
    assertTrue(Conflict.ofCooker(found).chance() < 1e-6);
  }

  @Test
  void explanationThatIsTrue_ranksFirst_andPoolingIsAsWideAsTheyAreApart() {
    double[] column = new double[READINGS];
    column[3] = 1;
    column[4] = 1;
    double[] shifted = values.clone();
    shifted[3] += 4;
    shifted[4] += 4;
    Calibration stated = cook.calibration(shifted, 0, READINGS);
    Parameter shift = Parameter.offset("shift", "K", Owner.PROBE, 3, -100, 100, "made up");
    double[] elsewhere = new double[READINGS];
    elsewhere[8] = 1;
    List<Explanation> tried = new ArrayList<>();
    tried.add(new Explanation("as stated", 1, stated));
    tried.add(new Explanation("here", 0.1, AddedTerm.of(shift, column).addedTo(stated)));
    tried.add(new Explanation("there", 0.1, AddedTerm.of(shift, elsewhere).addedTo(stated)));
    Explanations found = Explanations.of(tried);
    assertEquals("here", found.best().explanation().name());
    assertTrue(found.lead("as stated") > 3);
    assertEquals(0, found.lead("here"));
    assertEquals(
        1, found.ranked().stream().mapToDouble(Explanations.Ranked::probability).sum(), 1e-12);
    Prior pooled = found.pooled(tried.get(0));
    assertEquals(3, pooled.size());
    double mean = 0;
    double second = 0;
    for (Explanations.Ranked each : found.ranked()) {
      mean += each.probability() * each.estimate().mean()[0];
      double at = each.estimate().mean()[0];
      second += each.probability() * (each.estimate().covariance(0, 0) + at * at);
    }
    assertEquals(mean, pooled.mean()[0], 1e-12);
    assertEquals(Math.sqrt(second - mean * mean), pooled.spread(0), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> found.lead("elsewhere"));
    assertThrows(IllegalArgumentException.class, () -> Explanations.of(List.of()));
    Explanation other = new Explanation("other", 1, calibration);
    assertThrows(
        IllegalArgumentException.class, () -> Explanations.of(List.of(tried.get(0), other)));
  }

  @Test
  void conflictOfARightPrior_isChiSquare() {
    int cooks = 1000;
    double sum = 0;
    int flagged = 0;
    int directions = 0;
    for (int c = 0; c < cooks; c++) {
      double[] truth = new double[3];
      for (int p = 0; p < 3; p++) {
        truth[p] = estimate.prior().spread(p) * StudentProposal.normal(random);
      }
      Calibration right = cook.calibration(cook.read(truth, random), 0, READINGS);
      Conflict conflict = Diagnosis.of(FirstOrder.of(right, right.map())).conflict();
      sum += conflict.square();
      directions += conflict.directions();
      flagged += conflict.chance() < 0.05 ? 1 : 0;
    }
    assertEquals(3 * cooks, directions, "directions learned of");
    // Four standard deviations: √(2 · 3 / 1000) and √(0.05 · 0.95 / 1000).
    assertEquals(3, sum / cooks, 0.31);
    assertEquals(0.05, (double) flagged / cooks, 0.028);
  }

  @Test
  void conflictOfAWrongPrior_isFlagged() {
    Prior elsewhere =
        Prior.of(
            cook.parameters(),
            new double[] {0.6, 4, 0.2},
            new double[][] {{0.04, 0, 0}, {0, 0.04, 0}, {0, 0, 0.04}});
    Calibration wrong = cook.calibration(elsewhere, values, 0, READINGS);
    Diagnosis diagnosis = Diagnosis.of(FirstOrder.of(wrong, wrong.map()));
    assertTrue(diagnosis.conflict().chance() < 1e-6, diagnosis.conflict()::toString);
    assertTrue(diagnosis.conflict().inflation() > 10);
    assertTrue(diagnosis.isDoubtful());
    assertEquals(false, Diagnosis.of(FirstOrder.of(calibration, estimate)).isDoubtful());
  }
}
