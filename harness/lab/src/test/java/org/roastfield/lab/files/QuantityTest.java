package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  @ParameterizedTest
  @CsvSource({
    "96 mm, LENGTH, 0.096",
    "9.6cm, LENGTH, 0.096",
    "2.5 in, LENGTH, 0.0635",
    "12 m, ALTITUDE, 12",
    "57 °C, TEMPERATURE, 330.15",
    "57 degC, TEMPERATURE, 330.15",
    "212 °F, TEMPERATURE, 373.15",
    "-40 F, TEMPERATURE, 233.15",
    "−40 C, TEMPERATURE, 233.15",
    "300 K, TEMPERATURE, 300",
    "1 h 30 min, TIME, 5400",
    "1h 30min 5s, TIME, 5405",
    "90 s, TIME, 90",
    "72.2 %, SHARE, 0.722",
    "0.3, SHARE, 0.3",
    "35 g/kg, HUMIDITY_RATIO, 0.035",
    "7 W/(m²·K), HEAT_TRANSFER, 7",
    "7 W/(m2 K), HEAT_TRANSFER, 7",
    "7 W/m2K, HEAT_TRANSFER, 7",
    "7 W/(m^2*K), HEAT_TRANSFER, 7",
    "0.48 W/(m·K), CONDUCTIVITY, 0.48",
    "1.06 g/cm³, DENSITY, 1060",
    "3.45 kJ/(kg·K), HEAT_CAPACITY, 3450",
    "1e2 mm, LENGTH, 0.1",
    ".5 m, LENGTH, 0.5"
  })
  void numberWithUnit_isReadInSiUnits(String text, Dimension dimension, double si) {
    assertEquals(si, Quantity.parse(text, dimension).orElseThrow(), 1e-12 * Math.abs(si));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "mm",
        "96",
        "96 kg",
        "NaN mm",
        "Infinity mm",
        "1e999 mm",
        "9,6 cm",
        "96 mm 4",
        "96 mm 4 mm",
        "0x10 mm",
        "96 mm long",
        "- 96 mm",
        "9 6 mm",
        "96mm/"
      })
  void anythingElse_isNoLength(String text) {
    assertTrue(Quantity.parse(text, Dimension.LENGTH).isEmpty());
  }

  @Test
  void endlessText_isNoQuantity() {
    assertTrue(Quantity.parse("1 " + "a ".repeat(500_000), Dimension.LENGTH).isEmpty());
  }

  @Test
  void optionsOfCommands_areReadAlike() {
    assertEquals(330.15, Quantities.temperature("57°C"), 1e-9);
    assertEquals(24_900, Quantities.time("415min"), 1e-9);
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Quantities.time("soon"));
    assertEquals(
        "must be a time, such as 20 min or 1 h 30 min (s, min, h), was \"soon\"", e.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Quantities.time("0 min"));
    assertThrows(IllegalArgumentException.class, () -> Quantities.temperature("-300 °C"));
  }
}
