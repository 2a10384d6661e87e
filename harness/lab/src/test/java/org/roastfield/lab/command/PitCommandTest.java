package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.LidCost;
import org.roastfield.core.chamber.Outside;

class PitCommandTest {

  private record Run(int code, String out, String err) {}

  private static Run run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(words);
    return new Run(code, out.toString(), err.toString());
  }

  @Test
  void needs_areShown() {
    Run run =
        run(
            "pit",
            "--like=brick-and-steel",
            "--setting=110 °C",
            "--for=3 h",
            "--sear=270 °C",
            "--members=60");
    assertEquals(0, run.code(), run.err());
    for (String piece :
        List.of(
            "A pit of brick and steel, 15.0 °C outside, wind 0 m/s, 1.0 kg of glowing coals",
            "3.0 h at 110.0 °C, then a sear in 270.0 °C, food that takes 200 W",
            "  from the match to on ",
            "  pause before the sear ",
            "  charcoal to begin with ",
            "A minute with the lid open: walls " + lid(),
            "Burn charcoal outdoors only")) {
      assertTrue(run.out().contains(piece), () -> piece + " in\n" + run.out());
    }
    assertEquals(run.out(), again().out(), "the same seed gives the same text");
  }

  /** The cost in the weather and at the setting that were asked for. */
  private static String lid() {
    Outside still = new Outside(288.15, 0, 0.007, 101_325);
    LidCost cost = LidCost.of(FirePit.brickAndSteel(), still, 383.15, 200, 60);
    return String.format(
        Locale.ROOT,
        "%.1f K cooler, gas back after %.1f min, %.0f g of charcoal",
        cost.wallFall(),
        cost.recovery() / 60,
        1000 * cost.fuel());
  }

  private static Run again() {
    return run(
        "pit",
        "--like=brick-and-steel",
        "--setting=110 °C",
        "--for=3 h",
        "--sear=270 °C",
        "--members=60");
  }

  @Test
  void settingNoFireHolds_isSaidToBeNeverReached() {
    Run run = run("pit", "--like=thin-steel", "--setting=345 °C", "--for=1 h", "--members=40");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains(" of 40 pits like this never get there within six hours"));
    assertTrue(!run.out().contains("  0 of 40"), run.out());
  }

  @Test
  void unknownPit_isRefused() {
    Run run = run("pit", "--like=straw", "--setting=110 °C", "--for=1 h");
    assertNotEquals(0, run.code());
    assertTrue(
        run.err().contains("--like must be thin-steel, brick-and-steel or ceramic, was \"straw\""),
        run.err());
  }
}
