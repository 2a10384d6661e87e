package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CookLogReaderTest {

  @Test
  void unitsOfTheHeader_becomeSecondsAndKelvin() {
    CookLog log =
        read("time_min,core_degF,chamber_degC,grate_K\n0,32,100,300\n1.5,212,110.5,301\n");
    assertEquals(2, log.rows());
    assertEquals(0, log.start());
    assertEquals(90, log.end());
    LogChannel core = log.channel(CookLog.CORE).orElseThrow();
    assertEquals(273.15, core.temperature(0), 1e-9);
    assertEquals(373.15, core.temperature(1), 1e-9);
    assertEquals(90, core.time(1));
    assertEquals(383.65, log.channel(CookLog.CHAMBER).orElseThrow().temperature(1), 1e-9);
    assertEquals(301, log.channel("grate").orElseThrow().temperature(1));
    assertTrue(log.channel("probe").isEmpty());
  }

  @Test
  void hours_becomeSeconds() {
    assertEquals(5400, read("time_h,core_degC\n0,1\n1.5,2\n").end(), 1e-9);
  }

  @Test
  void emptyCell_isAMissingReading() {
    LogChannel core =
        read("time_s,core_degC\n0,1\n60,\n120,3\n180, \n").channel(CookLog.CORE).orElseThrow();
    assertEquals(2, core.size());
    assertEquals(2, core.missing());
    assertEquals(120, core.time(1));
    assertEquals(1, core.until(100).missing());
    assertEquals(1, core.until(100).size());
  }

  @Test
  void commentsAboveTheHeader_areKept() {
    CookLog log = read("# who: a test\n#  when: now\ntime_s,core_degC\n0,1\n");
    assertEquals(List.of("who: a test", "when: now"), log.comments());
  }

  @Test
  void byteOrderMarkQuotesAndOtherLineEnds_areUnderstood() {
    CookLog log = read("\uFEFFtime_s,core_degC\r\n\"0\",\"1.5\"\r\n");
    assertEquals(274.65, log.channel(CookLog.CORE).orElseThrow().temperature(0), 1e-9);
  }

  private static CookLog read(String text) {
    return CookLogReader.parse("log.csv", text.getBytes(StandardCharsets.UTF_8));
  }
}
