package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class QuantityPropertiesTest {

  @Property
  void anyText_isReadOrRefused_neverFatal(@ForAll String text, @ForAll Dimension dimension) {
    OptionalDouble value = Quantity.parse(text, dimension);
    value.ifPresent(si -> assertTrue(Double.isFinite(si)));
  }

  @Property
  void writtenQuantity_isReadBack(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double si, @ForAll Dimension dimension) {
    double back = Quantity.parse(dimension.exactText(si), dimension).orElseThrow();
    assertEquals(si, back, 4 * Math.ulp(Math.max(Math.abs(si), 300)));
  }

  /** Sensible digits survive to the last bit: what make-data and intake write. */
  @Property
  void roundNumber_isWrittenShort(@ForAll @IntRange(min = -20_000, max = 60_000) int hundredths) {
    String text = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString() + " °C";
    double kelvin = Quantity.parse(text, Dimension.TEMPERATURE).orElseThrow();
    assertEquals(text, Dimension.TEMPERATURE.exactText(kelvin));
  }

  @Property
  void everyNumberThatJavaPrints_isReadBack(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double metres) {
    assertEquals(metres, Quantity.parse(metres + " m", Dimension.LENGTH).orElseThrow());
  }
}
