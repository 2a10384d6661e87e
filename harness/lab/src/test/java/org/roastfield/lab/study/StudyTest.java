package org.roastfield.lab.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Small studies. Bars are those of the full size, widened by four standard errors of so few cases
 * where they are means of cases: they see gross faults only, the stored full results the rest.
 */
class StudyTest {

  private static Bar bar(Study.Findings findings, String what) {
    return findings.bars().stream()
        .filter(bar -> bar.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  /** Laws that other truths are made of add up to those that are fitted. */
  @Test
  void surroundings_areThoseOfTheFittedModel() {
    double[] truth = Truths.PRIOR.draw(Truths.random(3, 0));
    StudyLog log = StudyLog.of(truth, Truths.noise(3, 0));
    CookModel model = log.model(StudyCook.HORIZON / 4);
    ParameterPoint point = model.point(0, truth);
    Cook cook = model.cooks().get(0).cooks().apply(point);
    Surroundings around = new Surroundings(model.cooks().get(0).traces().get(0).air(), point);
    SurfaceLaw law = SurfaceLaw.sum(around.dry(0), around.vapour(1));
    for (double time : new double[] {0, 3600, 9000}) {
      for (double face : new double[] {280, 320, 360}) {
        SurfaceFlux expected = new SurfaceFlux();
        SurfaceFlux found = new SurfaceFlux();
        cook.stages().get(0).upper().evaluate(face, time, expected);
        law.evaluate(face, time, found);
        assertEquals(expected.heatFlux(), found.heatFlux(), 1e-9);
        assertEquals(expected.evaporation(), found.evaporation(), 1e-15);
      }
    }
  }

  @Test
  void recovery_holdsTheTruth() {
    Study study = RecoveryStudy.exact();
    int cases = study.cases(Study.Size.CI);
    Study.Findings findings = study.run(cases, 1, done -> {});
    double errors = 4 / Math.sqrt(cases);
    for (Bar bar : findings.bars()) {
      double widened =
          bar.what().endsWith("coverage of 90 %")
              ? 0.3 * errors
              : bar.what().endsWith("prior sd") ? errors : errors / Math.sqrt(2);
      assertTrue(
          !bar.counts()
              || (bar.value() >= bar.low() - widened && bar.value() <= bar.high() + widened),
          bar::toString);
    }
    assertTrue(findings.remarks().contains("estimates not found: 0"), findings.remarks()::toString);
  }

  /**
   * Steps of whole degrees are five times the white noise, and count as white noise themselves: the
   * same logs with and without them. Were each step news, spreads would be narrower or estimates
   * elsewhere.
   */
  @Test
  void wholeDegrees_moveEstimatesLittle_andSpreadsLess() {
    List<double[]> truths = Truths.inPairs(1, 12);
    Tally moved = new Tally();
    Tally wider = new Tally();
    for (int i = 0; i < truths.size(); i++) {
      StudyLog exact = StudyLog.of(truths.get(i), Truths.noise(1, i));
      StudyLog rounded = exact.shownBy(StudyCook.WHOLE_DEGREES);
      assertEquals(0, (rounded.readings()[60] - Temperatures.celsius(0)) % 1, 1e-9);
      MapEstimate fine = exact.fitted(Truths.PRIOR, exact.end()).estimate();
      MapEstimate coarse = rounded.fitted(Truths.PRIOR, exact.end()).estimate();
      for (int p = 0; p < Truths.PRIOR.size(); p++) {
        moved.add((coarse.mean()[p] - fine.mean()[p]) / fine.spread(p));
        wider.add(Math.log(coarse.spread(p) / fine.spread(p)));
      }
    }
    assertTrue(moved.spread() < 0.25, () -> "moved by " + moved.spread() + " spreads");
    assertEquals(0, wider.mean(), 0.02, "logarithm of spreads");
    assertTrue(wider.spread() < 0.05, () -> "spreads scatter by " + wider.spread());
  }

  /** So few tell gross errors alone: a spread off by a half, a mean by a spread. */
  @Test
  void ranks_areEven() {
    Study study = new RankStudy();
    Study.Findings findings = study.run(study.cases(Study.Size.CI), 1, done -> {});
    assertEquals(13, findings.bars().size());
    for (Bar bar : findings.bars()) {
      assertTrue(bar.isMet(), bar::toString);
    }
  }

  @Test
  void otherTruths_stayWithinReach() {
    Study study = new OtherTruthStudy();
    int cases = study.cases(Study.Size.CI);
    Study.Findings findings = study.run(cases, 1, done -> {});
    for (Bar bar : findings.bars()) {
      assertTrue(bar.value() >= bar.low() - 0.3 * 4 / Math.sqrt(cases), bar::toString);
    }
  }

  /** Of eight cooks CRPS tells nothing: the stored full study and HeldOutScoresTest do. */
  @Test
  void profiles_holdTheTruth_andAreNotFlagged() {
    Study study = new CookerStudy();
    Study.Findings findings = study.run(study.cases(Study.Size.CI), 1, done -> {});
    assertTrue(bar(findings, "effects of cookers: coverage of 90 %").value() > 0.6);
    assertTrue(bar(findings, "own profile flagged by half time").value() <= 0.25);
  }

  @Test
  void sameSeed_drawsTheSame_another_doesNot() {
    double[] one = Truths.PRIOR.draw(Truths.random(5, 2));
    assertArrayEquals(one, Truths.PRIOR.draw(Truths.random(5, 2)), 0);
    assertFalse(one[0] == Truths.PRIOR.draw(Truths.random(6, 2))[0]);
    StudyLog log = StudyLog.of(one, Truths.noise(5, 2));
    assertArrayEquals(log.readings(), StudyLog.of(one, Truths.noise(5, 2)).readings(), 0);
  }

  @Test
  void truthsOfAPair_areOpposite_andAllAreSpreadEvenly() {
    List<double[]> truths = Truths.inPairs(5, 40);
    double[] one = truths.get(6);
    double[] other = truths.get(7);
    assertArrayEquals(one, Truths.opposite(other), 1e-9);
    assertTrue(Truths.PRIOR.allows(other));
    int walls = StudyCook.index(CookParameters.WALLS);
    assertEquals(2 * Truths.PRIOR.mean()[walls], one[walls] + other[walls], 1e-9);
    for (int p = 0; p < one.length; p++) {
      int at = p;
      // One in each twentieth, and its opposite in the twentieth opposite: two in each.
      int[] filled = new int[20];
      truths.forEach(truth -> filled[(int) (20 * Truths.PRIOR.below(at, truth[at]))]++);
      assertTrue(Arrays.stream(filled).allMatch(count -> count == 2));
    }
    Tally tally = new Tally();
    for (double value : new double[] {1, -1, 4, -2}) {
      tally.add(value);
    }
    assertEquals(0.5, tally.errorByPairs(), 1e-15);
  }

  @Test
  void nextCook_keepsTheCookerAlone() {
    RandomGenerator random = Truths.random(5, 2);
    double[] first = Truths.PRIOR.draw(random);
    double[] next = Truths.nextCook(first, random);
    for (int p = 0; p < first.length; p++) {
      assertEquals(p < StudyCook.OF_COOKER, first[p] == next[p], StudyCook.IDS.get(p));
    }
    Prior same = Truths.onCooker(Truths.population().newCooker());
    assertArrayEquals(Truths.PRIOR.mean(), same.mean(), 1e-12);
    assertEquals(Truths.PRIOR.spread(1), same.spread(1), 1e-12);
  }

  @Test
  void result_isMissedByABarThatCountsAlone() {
    Bar off = new Bar("exempt", 2, 0, 1, false);
    Bar met = Bar.of("met", 1, 0, 1);
    assertTrue(new StudyResult("x", "ci", 1, 1, List.of(off, met), List.of()).isMet());
    Bar missed = Bar.of("missed", Double.NaN, 0, 1);
    StudyResult result = new StudyResult("x", "ci", 1, 1, List.of(met, missed), List.of("said"));
    assertFalse(result.isMet());
    assertEquals("roastfield study x --size ci --seed 1", result.command());
  }
}
