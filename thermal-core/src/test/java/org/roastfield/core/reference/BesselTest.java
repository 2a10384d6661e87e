package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;

class BesselTest {
  @Test
  void agreesWithIndependentValues() {
    for (List<String> row : ReferenceFiles.rows("/exact/bessel.csv")) {
      double x = Double.parseDouble(row.get(0));
      double tolerance = 3e-16 + 2e-16 * x;
      assertEquals(Double.parseDouble(row.get(1)), Bessel.j0(x), tolerance, "J0 of " + x);
      assertEquals(Double.parseDouble(row.get(2)), Bessel.j1(x), tolerance, "J1 of " + x);
    }
  }

  @Test
  void agreesWithAnotherImplementationBetweenTheTabulatedPoints() {
    for (double x = 0; x <= 200; x += 0.37) {
      assertEquals(BesselJ.value(0, x), Bessel.j0(x), 1e-13, "J0 of " + x);
      assertEquals(BesselJ.value(1, x), Bessel.j1(x), 1e-13, "J1 of " + x);
    }
  }

  @Test
  void argumentBeyondTheQuadratureIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Bessel.j0(251));
    assertThrows(IllegalArgumentException.class, () -> Bessel.j1(Double.NaN));
  }
}
