package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of mistake in a log is named with its place, to the letter. */
class CookLogErrorsTest {

  private static final String HEADER = "time_s,chamber_degC,core_degC\n";

  private static final String COLUMN =
      "expected time_s, time_min or time_h, or a name with its unit such as core_degC or"
          + " chamber_degF";

  private static final String NUMBER = "expected a number, or nothing for a missing reading";

  static Stream<Arguments> headers() {
    return Stream.of(
        arguments("", "1:1: found the end, expected a header and at least one row"),
        arguments("# only\n", "2:1: found the end, expected a header and at least one row"),
        arguments(HEADER, "2:1: found the end, expected a header and at least one row"),
        arguments("time,core_degC\n0,1\n", "1:1: found \"time\", " + COLUMN),
        arguments("time_s,core\n0,1\n", "1:8: found \"core\", " + COLUMN),
        arguments("time_s,core_s\n0,1\n", "1:8: found \"core_s\", " + COLUMN),
        arguments("time_s,Core_degC\n0,1\n", "1:8: found \"Core_degC\", " + COLUMN),
        arguments(
            "core_degC,air_degC\n1,2\n",
            "1:1: found no time column, expected time_s, time_min or time_h"),
        arguments(
            "time_s\n1\n", "1:1: found no temperature column, expected one such as core_degC"),
        arguments(
            "time_s,core_degC,core_degF\n1,2,3\n",
            "1:18: found a second column core, expected each only once"));
  }

  static Stream<Arguments> rows() {
    return Stream.of(
        arguments("0,100,5\n60,101\n", "3:1: found 2 cells, expected 3 separated by commas"),
        arguments("0,100,5\n60,101,5,6\n", "3:1: found 4 cells, expected 3 separated by commas"),
        arguments("0;100;5\n", "2:1: found 1 cell, expected 3 separated by commas"),
        arguments("0,100,NaN\n", "2:7: found \"NaN\", " + NUMBER),
        arguments("0,100,5\n60,1e999,6\n", "3:4: found \"1e999\", " + NUMBER),
        arguments("0,100,5 °C\n", "2:7: found \"5 °C\", " + NUMBER),
        arguments("0,\"100\",x\n", "2:9: found \"x\", " + NUMBER),
        arguments("0,\"1\n2\",3\n", "2:3: found \"1\\u000a2\", " + NUMBER),
        arguments("0,100,5\r\n60,100,x\r\n", "3:8: found \"x\", " + NUMBER),
        arguments("\n0,100,5\n\n60,100,y\n", "5:8: found \"y\", " + NUMBER),
        arguments(
            "0,100,5\n0,100,6\n", "3:1: found \"0\", expected a later time than in the row before"),
        arguments(
            "60,100,5\n30,100,6\n",
            "3:1: found \"30\", expected a later time than in the row before"),
        arguments("-1,100,5\n", "2:1: found \"-1\", expected a time from 0 to thirty days"),
        arguments(",100,5\n", "2:1: found nothing, expected a time in s"),
        arguments(
            "0,-300,5\n", "2:3: found \"-300\", expected a temperature from -100 °C to 1500 °C"),
        arguments(
            "0,100,5\n# late\n",
            "3:1: found a comment, expected readings, since comments stand above the header"),
        arguments(
            "0,100,5\n60,1,\"5\n",
            "3:1: found no comma-separated values (Unclosed quoted field at end of input (record"
                + " starting at line 3)), expected rows of numbers"));
  }

  @ParameterizedTest
  @MethodSource("headers")
  void mistakeInTheHeader_isNamedWithItsPlace(String text, String message) {
    assertEquals("log.csv:" + message, error(text));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void mistakeInARow_isNamedWithItsPlace(String rows, String message) {
    assertEquals("log.csv:" + message, error(HEADER + rows));
  }

  private static String error(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CookFileException e =
        assertThrows(CookFileException.class, () -> CookLogReader.parse("log.csv", bytes));
    return String.valueOf(e.getMessage());
  }
}
