package org.roastfield.lab.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogUnit;

/** Logs of many layouts say the same once they are taken in. */
class TakeInTest {

  @TempDir Path folder = Path.of("");

  @Test
  void semicolonsDecimalCommaAndAByteOrderMark() throws IOException {
    Taken taken =
        accepted("\uFEFFZeit (min);Garraum °C;Kern °C\n0;100,5;8,0\n1;101,0;8,5\n2;102,5;9,25\n");
    assertChannel(taken, "core", 8, 8.5, 9.25);
    assertChannel(taken, "chamber", 100.5, 101, 102.5);
    assertEquals(120, taken.log().end());
    assertEquals(2, taken.formats().get(1).decimals());
  }

  @Test
  void tabsFahrenheitAndWindowsEncoding() throws IOException {
    Path file = folder.resolve("log.csv");
    String text = "Elapsed (s)\tPit [°F]\tMeat [°F]\n0\t212\t41\n30\t230\t50\n";
    Files.write(file, text.getBytes(Charset.forName("windows-1252")));
    Proposal proposal = Proposer.propose(file, Wishes.none());
    assertEquals("windows-1252", proposal.declaration().layout().charset().name());
    Taken taken = TakeIn.read(file, proposal.declaration(), OptionalDouble.empty());
    assertChannel(taken, "core", 5, 10);
    assertEquals(LogUnit.FAHRENHEIT, taken.formats().get(0).unit());
  }

  @Test
  void utf16_isSeenByItsMark() throws IOException {
    Path file = folder.resolve("log.csv");
    Files.write(file, "\uFEFFt_s,core_degC\n0,5\n60,6\n".getBytes(StandardCharsets.UTF_16LE));
    Proposal proposal = Proposer.propose(file, Wishes.none());
    assertChannel(TakeIn.read(file, proposal.declaration(), OptionalDouble.empty()), "core", 5, 6);
  }

  @Test
  void withoutHeader_theHotterColumnIsTheChamber() throws IOException {
    Path file = write("0,110.0,5.0\n1,111.0,6.0\n2,112.0,7.0\n");
    Proposal proposal = Proposer.propose(file, Wishes.none());
    assertEquals(2, proposal.questions().size(), proposal.questions().toString());
    Wishes wishes = wishes("#1=min", List.of("core=#3:degC", "chamber=#2:degC"), List.of());
    Taken taken =
        TakeIn.read(file, Proposer.propose(file, wishes).declaration(), OptionalDouble.empty());
    assertChannel(taken, "core", 5, 6, 7);
    assertEquals(120, taken.log().end());
  }

  @Test
  void clockTimesWithOffsets_giveTheStart() throws IOException {
    Taken taken =
        accepted("time,core °C\n2026-06-13T15:10:00+02:00,8\n2026-06-13T15:11:30+02:00,9\n");
    assertEquals("2026-06-13T13:10Z", taken.starts().orElseThrow().toString());
    assertEquals(90, taken.log().end());
  }

  /** The hour from 2:00 comes twice; without a zone the second would run backwards. */
  @Test
  void endOfDaylightTime_repeatsAnHour() throws IOException {
    StringBuilder text = new StringBuilder("time,core °C\n");
    String[] clocks = {"01:30", "02:00", "02:30", "02:00", "02:30", "03:00"};
    for (int i = 0; i < clocks.length; i++) {
      text.append("2026-10-25 " + clocks[i] + ":00," + (8 + i) + "\n");
    }
    Path file = write(text.toString());
    Wishes zoned = zone("Europe/Berlin");
    Taken taken =
        TakeIn.read(file, Proposer.propose(file, zoned).declaration(), OptionalDouble.empty());
    assertEquals(2.5 * 3600, taken.log().end());
    assertTrue(taken.changes().get(0).what().contains("end of daylight time"));
    assertEquals(2, taken.changes().get(0).count());
    Taken plain = accepted(text.toString());
    assertTrue(kinds(plain).contains(Finding.Kind.OUT_OF_ORDER));
  }

  @Test
  void beginningOfDaylightTime_leavesAnHourOut() throws IOException {
    Path file =
        write(
            "time,core °C\n2026-03-29 01:59:00,8\n2026-03-29 03:00:00,9\n2026-03-29 03:01:00,10\n");
    Taken taken =
        TakeIn.read(
            file,
            Proposer.propose(file, zone("Europe/Berlin")).declaration(),
            OptionalDouble.empty());
    assertEquals(120, taken.log().end());
  }

  @Test
  void clockOverMidnight_goesOn() throws IOException {
    Taken taken = accepted("clock,core °C\n23:58:00,8\n23:59:00,9\n00:00:00,10\n00:01:00,11\n");
    assertEquals(180, taken.log().end());
    assertEquals(1, taken.changes().size());
  }

  @Test
  void dateAndTimeInTwoColumns_withAmAndPm() throws IOException {
    Taken taken =
        accepted("Date,Time,Core °F\n6/13/2026,11:59:00 AM,41\n6/13/2026,12:01:00 PM,43\n");
    assertEquals(120, taken.log().end());
  }

  @Test
  void dayOrMonthFirst_isAskedWhenTheTextDoesNotSay() throws IOException {
    Proposal proposal =
        Proposer.propose(
            write("time,core °C\n06/07/2026 15:00:00,8\n06/07/2026 15:01:00,9\n"), Wishes.none());
    assertEquals(
        List.of("is the date day or month first? --time=time=dmy or time=mdy"),
        proposal.questions());
  }

  @Test
  void unitThatNothingSays_isAsked() throws IOException {
    Proposal proposal = Proposer.propose(write("time_s,core\n0,40\n60,41\n"), Wishes.none());
    assertEquals(
        List.of("which unit has core from 40.0 to 41.0? --channel=NAME=core:degC or :degF"),
        proposal.questions());
  }

  @Test
  void longLog_givesAChannelForEachProbe() throws IOException {
    Path file = write("t_s,probe,value °C\n0,pit,110\n0,meat,5\n30,pit,111\n45,meat,6\n");
    Wishes wishes =
        new Wishes(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of("t_s=s"),
            Optional.empty(),
            List.of("core=meat:degC", "chamber=pit:degC"),
            Optional.of("probe"),
            Optional.of("value °C"),
            Optional.empty(),
            List.of());
    Taken taken =
        TakeIn.read(file, Proposer.propose(file, wishes).declaration(), OptionalDouble.empty());
    assertChannel(taken, "core", 5, 6);
    assertEquals(3, taken.log().rows());
  }

  @Test
  void signsForNoProbe_areProposedAndCounted() throws IOException {
    Taken taken = accepted("t_s,core °C\n0,5\n60,---\n120,999.9\n180,\n240,6\n");
    LogChannel core = taken.log().channel("core").orElseThrow();
    assertEquals(2, core.size());
    assertEquals(3, core.missing());
    assertEquals(2, taken.changes().size());
  }

  @Test
  void cellsWithTheirOwnUnit_areConvertedAndCounted() throws IOException {
    Taken taken = accepted("t_s,core °C\n0,5 °C\n60,43 °F\n120,7 °C\n");
    assertEquals(
        LogUnit.FAHRENHEIT.si(43), taken.log().channel("core").orElseThrow().temperature(1), 1e-9);
    assertEquals(1, taken.changes().size());
  }

  @Test
  void nothingIsDroppedInSilence() throws IOException {
    Path file =
        write(
            "t_s,core °C\n0,5\n60,6\n60,6\n120,7\n120,8\n90,6.5\n180\n240,2000\n300,9\n360,9,x\n");
    Wishes wishes = wishes("t_s=s", List.of("core=core °C:degC"), List.of("LOST"));
    Taken taken =
        TakeIn.read(file, Proposer.propose(file, wishes).declaration(), OptionalDouble.empty());
    LogChannel core = taken.log().channel("core").orElseThrow();
    assertEquals(5, core.size());
    long merged = taken.changes().stream().filter(c -> c.what().contains("merged")).count();
    assertEquals(1, merged);
    long aside = taken.asideCounts().stream().mapToLong(Change::count).sum();
    // Two rows of another length, a temperature that none is, a second reading at 120 s.
    assertEquals(4, aside, taken.asideCounts().toString());
    // Every row is a reading, a missing one, merged or set aside.
    assertEquals(10, taken.rows());
    assertEquals(taken.rows(), core.size() + 1 + aside);
    assertEquals(1, core.missing());
  }

  @Test
  void readingsBeforeTheCutWentOn_areSetAside() throws IOException {
    Path file = write("t_s,core °C\n0,20\n60,21\n120,8\n180,9\n");
    Declaration declared = Proposer.propose(file, Wishes.none()).declaration();
    Taken taken = TakeIn.read(file, declared, OptionalDouble.of(120));
    assertChannel(taken, "core", 8, 9);
    assertEquals(2, taken.asideCounts().get(0).count());
    assertEquals(0, taken.log().start());
  }

  @Test
  void cellThatIsNoNumber_isNamedWithItsPlace() throws IOException {
    Path file = write("t_s,core °C\n0,20\n60,abc\n");
    Wishes wishes = wishes("t_s=s", List.of("core=core °C:degC"), List.of("LOST"));
    Declaration declared = Proposer.propose(file, wishes).declaration();
    IntakeException e =
        assertThrows(
            IntakeException.class, () -> TakeIn.read(file, declared, OptionalDouble.empty()));
    assertEquals(
        "log.csv:3, cell 2: found \"abc\", expected a number, nothing, or a sign for no probe that"
            + " --no-probe states",
        e.getMessage());
  }

  @Test
  void columnThatIsNotThere_isNamed() throws IOException {
    Path file = write("t_s,core °C\n0,20\n60,21\n");
    IntakeException e =
        assertThrows(
            IntakeException.class,
            () -> Proposer.propose(file, wishes("time=s", List.of("core=x:degC"), List.of())));
    assertEquals(
        "log.csv: found no column \"time\", expected one of \"t_s\", \"core °C\"", e.getMessage());
  }

  @Test
  void lineOfUnitsBelowTheHeader_isReadAndSetAside() throws IOException {
    Taken taken = accepted("Time,Probe 1,Pit\nmin,°F,°C\n0,41,110\n1,42,111\n");
    assertEquals(
        List.of("core_degF", "chamber_degC"),
        taken.formats().stream().map(ChannelFormat::header).toList());
    assertEquals(60, taken.log().end());
    assertEquals(
        List.of(new SetAside(2, "min,°F,°C", "a line of units below the header")), taken.aside());
  }

  @Test
  void unitsInCells_areThoseOfTheirColumn() throws IOException {
    Taken taken = accepted("min,meat,pit\n0,41°F,110 C\n1,42°F,111 C\n");
    assertEquals(
        List.of("core_degF", "chamber_degC"),
        taken.formats().stream().map(ChannelFormat::header).toList());
    assertEquals(List.of(), taken.changes());
  }

  /** 999.9 °F is no reading where all others are far from it, and one where they lead up to it. */
  @Test
  void allNines_meanNoProbe_ifNoReadingIsNear() throws IOException {
    Taken apart = accepted("min,P1_F,P2_F\n0,41,999.9\n1,42,999.9\n2,43,70.0\n");
    assertEquals(1, apart.log().channel("chamber").orElseThrow().size());
    assertEquals("chamber: \"999.9\" means no probe", apart.changes().get(0).what());
    Taken near = accepted("min,core_F,pit_F\n0,41,960\n1,42,999\n2,43,1020\n");
    assertEquals(3, near.log().channel("chamber").orElseThrow().size());
  }

  /** A million readings a second apart last almost twelve days. */
  @Test
  void loggerLeftOnForDays_isTakenIn_butNotForMonths() throws IOException {
    Taken days = accepted("t_s,pit °C,core °C\n0,110,5\n10,110,6\n999999,20,20\n");
    assertEquals(999_999, days.log().end());
    IntakeException e =
        assertThrows(
            IntakeException.class,
            () -> accepted("t_s,pit °C,core °C\n0,110,5\n10,110,6\n2592001,20,20\n"));
    assertTrue(
        String.valueOf(e.getMessage()).endsWith("expected a log of at most thirty days"),
        e.getMessage());
  }

  @Test
  void millionRows_areCounted() throws IOException {
    Path file = folder.resolve("million.csv");
    int rows = 1_000_000;
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("t_s,pit °C,core °C\n");
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < rows; i++) {
        line.setLength(0);
        line.append(i / 2).append(i % 2 == 0 ? ".0," : ".5,").append(110 + i % 7).append(',');
        out.append(line.append(i / 20_000 + 5).append('\n'));
      }
    }
    Proposal proposal = Proposer.propose(file, Wishes.none());
    Taken taken = TakeIn.read(file, proposal.declaration(), OptionalDouble.empty());
    assertEquals(rows, taken.rows());
    assertEquals(rows, taken.log().rows());
    assertEquals(rows, taken.log().channel("core").orElseThrow().size());
    assertEquals((rows - 1) / 2.0, taken.log().end());
    assertEquals(List.of(), taken.asideCounts());
    assertEquals(Files.size(file), taken.bytes());
  }

  private static List<Finding.Kind> kinds(Taken taken) {
    return taken.findings().stream().map(Finding::kind).toList();
  }

  private Taken accepted(String text) throws IOException {
    Path file = write(text);
    Proposal proposal = Proposer.propose(file, Wishes.none());
    assertEquals(List.of(), proposal.questions());
    return TakeIn.read(file, proposal.declaration(), OptionalDouble.empty());
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("log.csv"), text);
  }

  private static Wishes wishes(String time, List<String> channels, List<String> noProbe) {
    return new Wishes(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(time),
        Optional.empty(),
        channels,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        noProbe);
  }

  private static Wishes zone(String zone) {
    return new Wishes(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(ZoneId.of(zone)),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static void assertChannel(Taken taken, String name, double... celsius) {
    LogChannel channel = taken.log().channel(name).orElseThrow();
    assertEquals(celsius.length, channel.size());
    for (int i = 0; i < celsius.length; i++) {
      assertEquals(celsius[i] + 273.15, channel.temperature(i), 1e-9);
    }
  }
}
