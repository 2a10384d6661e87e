package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
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
    ".5 m, LENGTH, 0.5",
    "3 3/4 in, LENGTH, 0.09525",
    "1 ½ in, LENGTH, 0.0381",
    "1½in, LENGTH, 0.0381",
    "¾ in, LENGTH, 0.01905",
    "2⁄3 m, LENGTH, 0.6666666666666666",
    "5 lb 4 oz, MASS, 2.3813599425",
    "5lb4oz, MASS, 2.3813599425",
    "5 1/4 lb, MASS, 2.3813599425",
    "2 kg 400 g, MASS, 2.4",
    "2400 g, MASS, 2.4",
    "1½ h, TIME, 5400",
    "1 h 30 s, TIME, 3630",
    "-1½ m, ALTITUDE, -1.5",
    "40 ft, ALTITUDE, 12.192",
    "1/3, SHARE, 0.3333333333333333",
    "100 g/m^2, WATER_PER_AREA, 0.1"
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
        "9 6/0 mm",
        "6/ mm",
        "1 2 3/4 mm",
        "96 mm 1/2",
        "½ ½ in",
        "1 m 20 cm",
        "-",
        "96mm/"
      })
  void anythingElse_isNoLength(String text) {
    assertTrue(Quantity.parse(text, Dimension.LENGTH).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "30 min 1 h",
        "1 h 1 h",
        "1 h -30 min",
        "1 h 30",
        "90",
        "90 m",
        "1:30",
        "1 h, 30 min",
        "1 h 30 K"
      })
  void timesInAnotherOrder_orWithoutUnit_areRefused(String text) {
    assertTrue(Quantity.parse(text, Dimension.TIME).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9,6 cm | LENGTH | ; decimals stand after a point: 9.6 cm",
        "1,250 g | MASS | ; a comma may mean thousands or decimals: write 1250 g or 1.250 g",
        "57 | TEMPERATURE | ; 57 of °C or °F?",
        "57 ° | TEMPERATURE | ; 57 of °C or °F?",
        "135 degrees | TEMPERATURE | ; 135 of °C or °F?",
        "2 °F | TEMPERATURE_DIFFERENCE | ; differences are in K: 1 K is 1 °C or 1.8 °F apart",
        "90 m | TIME | ; m is metres, minutes are min",
        "1:30 | TIME | ; 1:30 may be hours or minutes: write 1 h 30 min or 1 min 30 s",
        "3 3/4\" | LENGTH | ; inches are in: 3 3/4 in",
        "96 | LENGTH | ; 96 of mm, cm or in?",
        "5 | MASS | ; 5 of kg, g, lb or oz?",
      })
  void quantityThatMayMeanSeveralThings_getsAdvice(
      String text, Dimension dimension, String advice) {
    assertTrue(Quantity.parse(text, dimension).isEmpty());
    assertEquals(advice, Advice.on(text, dimension));
  }

  @ParameterizedTest
  @CsvSource({
    "length, LENGTH",
    "weight, MASS",
    "time, TIME",
    "temperature, TEMPERATURE",
    "temperature difference, TEMPERATURE_DIFFERENCE",
    "share, SHARE",
    "heat transfer, HEAT_TRANSFER"
  })
  void quantitiesOfTheDocumentation_areRead(String kind, Dimension dimension) throws IOException {
    String readme = Files.readString(Path.of("", "..", "..", "datasets", "schema", "README.md"));
    String row =
        readme
            .lines()
            .filter(line -> line.startsWith("| " + kind + " |"))
            .findFirst()
            .orElseThrow()
            .split(";", 2)[0];
    List<String> samples =
        Pattern.compile("`([^`]+)`").matcher(row).results().map(found -> found.group(1)).toList();
    assertFalse(samples.isEmpty());
    for (String sample : samples) {
      assertTrue(Quantity.parse(sample, dimension).isPresent(), sample);
    }
  }

  @Test
  void everyUnit_isReadAsItIsWritten() {
    for (Dimension dimension : Dimension.values()) {
      for (Dimension.Unit unit : dimension.units()) {
        String text = "1 " + unit.word();
        assertEquals(
            dimension.si(1, unit.word()), Quantity.parse(text, dimension).orElseThrow(), text);
      }
    }
  }

  @Test
  void quantityIsWritten_withTheFewestDigitsThatAreReadBack() {
    assertEquals("96 mm", Dimension.LENGTH.exactText(0.096));
    assertEquals("57 °C", Dimension.TEMPERATURE.exactText(330.15));
    assertEquals("57.2 °C", Dimension.TEMPERATURE.exactText(57.2 + 273.15));
    assertEquals("5400 s", Dimension.TIME.exactText(5400));
    assertEquals("2.4 kg", Dimension.MASS.exactText(2.4));
    assertEquals("0.3", Dimension.SHARE.exactText(0.3));
    assertEquals("7 W/(m²·K)", Dimension.HEAT_TRANSFER.exactText(7));
    assertEquals("0 mm", Dimension.LENGTH.exactText(0));
    assertThrows(IllegalArgumentException.class, () -> Dimension.LENGTH.exactText(Double.NaN));
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
