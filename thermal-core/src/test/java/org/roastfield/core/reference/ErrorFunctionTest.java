package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ErrorFunctionTest {
  @Test
  void agreesWithIndependentValues() {
    for (List<String> row : ReferenceFiles.rows("/exact/error-function.csv")) {
      double x = Double.parseDouble(row.get(0));
      double scaled = Double.parseDouble(row.get(1));
      double plain = Double.parseDouble(row.get(2));
      assertEquals(scaled, ErrorFunction.scaledComplement(x), 2e-14 * scaled, "erfcx of " + x);
      double roundOffOfSquare = 3e-16 * x * x;
      assertEquals(
          plain, ErrorFunction.complement(x), (2e-14 + roundOffOfSquare) * plain, "erfc of " + x);
    }
  }

  @Test
  void scaledComplement_ofLargeArgument_followsItsAsymptote() {
    double x = 1e8;
    assertEquals(1 / (x * Math.sqrt(Math.PI)), ErrorFunction.scaledComplement(x), 1e-22);
  }

  @Test
  void negativeArgumentIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> ErrorFunction.scaledComplement(-0.1));
    assertThrows(IllegalArgumentException.class, () -> ErrorFunction.complement(Double.NaN));
  }
}
