package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Certified answers of 27 nonlinear problems [NistStrd2003], by the search that fits cooks. */
class NistTest {

  private static final List<String> NAMES =
      List.of(
          "Bennett5",
          "BoxBOD",
          "Chwirut1",
          "Chwirut2",
          "DanWood",
          "ENSO",
          "Eckerle4",
          "Gauss1",
          "Gauss2",
          "Gauss3",
          "Hahn1",
          "Kirby2",
          "Lanczos1",
          "Lanczos2",
          "Lanczos3",
          "MGH09",
          "MGH10",
          "MGH17",
          "Misra1a",
          "Misra1b",
          "Misra1c",
          "Misra1d",
          "Nelson",
          "Rat42",
          "Rat43",
          "Roszman1",
          "Thurber");

  private static final LevenbergMarquardt SEARCH =
      LevenbergMarquardt.standard().withTolerance(0).withMostSteps(10_000);

  @Test
  void sixDigitsFromTheFarStart() {
    List<String> missed = new ArrayList<>();
    for (String name : NAMES) {
      NistProblem problem = new NistProblem(name);
      LeastSquaresResult r = SEARCH.search(problem, problem.start1);
      if (problem.digits(r.x()) < 6) {
        missed.add(name);
      }
    }
    assertTrue(missed.size() <= 1, missed::toString);
  }

  @Test
  void eightDigitsFromTheNearStart() {
    List<String> missed = new ArrayList<>();
    for (String name : NAMES) {
      NistProblem problem = new NistProblem(name);
      LeastSquaresResult r = SEARCH.search(problem, problem.start2);
      if (problem.digits(r.x()) < 8) {
        missed.add(name);
      }
    }
    assertEquals(List.of(), missed);
  }
}
