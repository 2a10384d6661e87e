package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class QuantityPropertiesTest {

  @Property
  void anyText_isReadOrRefused_neverFatal(@ForAll String text, @ForAll Dimension dimension) {
    OptionalDouble value = Quantity.parse(text, dimension);
    value.ifPresent(si -> assertTrue(Double.isFinite(si)));
  }

  @Property
  void everyNumberThatJavaPrints_isReadBack(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double metres) {
    assertEquals(metres, Quantity.parse(metres + " m", Dimension.LENGTH).orElseThrow());
  }
}
