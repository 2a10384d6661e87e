package org.roastfield.core.outcome;

import java.util.Arrays;
import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * Published hold times for cooked, roast and corned beef and other meat, and the lethality that
 * goes with them, eq. (67). Immutable; nothing of it can be calibrated.
 *
 * <p>At any temperature the smaller of two lethalities counts: that of a fixed D and z fitted to
 * the column (within 10 % of each row), and that of the row at or below the temperature. Below the
 * first row there is none, above the last one with a time it is kept at the fit's value there. Rows
 * of 0 s hold by look-up alone. A row counts from the higher of its printed °F and °C. Not for
 * poultry.
 */
public final class HoldTable {

  /** Where the rows are published; read in copies that agree. */
  public static final String SOURCE =
      "USDA Food Safety and Inspection Service, Appendix A of 1999; whether the revision of 2021"
          + " keeps every row was not verified";

  private static final double LN_10 = 2.302585092994046;
  private static final int[] FAHRENHEIT = rangeOf(130, 158);
  private static final double[] CELSIUS = {
    54.4, 55.0, 55.6, 56.1, 56.7, 57.2, 57.8, 58.4, 58.9, 59.5, 60.0, 60.6, 61.1, 61.7, 62.2, 62.8,
    63.3, 63.9, 64.4, 65.0, 65.6, 66.1, 66.7, 67.2, 67.8, 68.3, 68.9, 69.4, 70.0
  };
  private static final double[] SECONDS_6_5 = {
    6720, 5340, 4260, 3360, 2700, 2160, 1680, 1380, 1080, 900, 720, 540, 480, 360, 300, 240, 169,
    134, 107, 85, 67, 54, 43, 34, 27, 22, 17, 14, 0
  };
  private static final double[] SECONDS_7 = {
    7260, 5820, 4620, 3720, 2820, 2220, 1920, 1440, 1140, 900, 720, 600, 480, 360, 300, 240, 182,
    144, 115, 91, 72, 58, 46, 37, 29, 23, 19, 15, 0
  };

  /** The 6.5-log column: D 1.77 min at 60 °C, z 5.56 K. */
  public static final HoldTable LOG_6_5 = new HoldTable(6.5, 1.77 * 60, 5.56, SECONDS_6_5);

  /** The 7-log column: D 1.74 min at 60 °C, z 5.57 K. */
  public static final HoldTable LOG_7 = new HoldTable(7, 1.74 * 60, 5.57, SECONDS_7);

  private final double logs;
  private final double d;
  private final double z;
  private final double[] seconds;
  private final double[] starts;
  private final double[] upTo;

  private HoldTable(double logs, double d, double z, double[] seconds) {
    this.logs = logs;
    this.d = d;
    this.z = z;
    this.seconds = seconds;
    this.starts = new double[seconds.length];
    for (int i = 0; i < seconds.length; i++) {
      starts[i] =
          Math.max(Temperatures.fahrenheit(FAHRENHEIT[i]), Temperatures.celsius(CELSIUS[i]));
    }
    this.upTo = new double[seconds.length];
    for (int i = 1; i < seconds.length; i++) {
      upTo[i] = upTo[i - 1] + inRow(i - 1, temperature(i));
    }
  }

  /** Reduction that the column stands for, in powers of ten. */
  public double logs() {
    return logs;
  }

  /** Number of rows. */
  public int rows() {
    return seconds.length;
  }

  /** Temperature from which a row counts [K]. */
  public double temperature(int row) {
    return starts[row];
  }

  /** Printed hold time of a row [s]. */
  public double seconds(int row) {
    return seconds[row];
  }

  /** Lethality rate of the fit at a temperature [K], in powers of ten per second. */
  public double fittedRate(double temperature) {
    return StrictMath.exp(LN_10 * (temperature - 333.15) / z) / d;
  }

  /** Lethality rate that counts at a temperature [K], in powers of ten per second. */
  public double rate(double temperature) {
    int row = rowAt(temperature);
    if (row < 0) {
      return 0;
    }
    if (row == seconds.length - 1) {
      return fittedRate(temperature(row));
    }
    return Math.min(fittedRate(temperature), logs / seconds[row]);
  }

  /** Lethality of a history, in powers of ten; exact over its straight pieces. */
  public double lethality(TemperatureHistory history) {
    return history.sum(this::piece);
  }

  /** Whether a history reaches a row that is printed with 0 s. */
  public boolean reachesInstantRow(TemperatureHistory history) {
    return history.highest() >= temperature(seconds.length - 1);
  }

  /** Whether the estimate meets the column. */
  public boolean isMetBy(TemperatureHistory history) {
    return reachesInstantRow(history) || lethality(history) >= logs;
  }

  private double piece(double duration, double from, double to) {
    double rise = to - from;
    if (Math.abs(rise) < 1e-7) {
      return duration * rate(Math.min(from, to));
    }
    return duration * (antiderivative(to) - antiderivative(from)) / rise;
  }

  /** Integral of the rate over temperature up to one. */
  private double antiderivative(double temperature) {
    int row = rowAt(temperature);
    return row < 0 ? 0 : upTo[row] + inRow(row, temperature);
  }

  private double inRow(int row, double to) {
    double from = temperature(row);
    if (row == seconds.length - 1) {
      return fittedRate(from) * (to - from);
    }
    double most = logs / seconds[row];
    double meet = 333.15 + z / LN_10 * StrictMath.log(most * d);
    double bend = Math.max(from, Math.min(to, meet));
    double below = (fittedRate(bend) - fittedRate(from)) * z / LN_10;
    return below + most * (to - bend);
  }

  private int rowAt(double temperature) {
    Check.finite("temperature", temperature);
    int place = Arrays.binarySearch(starts, temperature);
    return place >= 0 ? place : -place - 2;
  }

  private static int[] rangeOf(int from, int to) {
    int[] numbers = new int[to - from + 1];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = from + i;
    }
    return numbers;
  }
}
