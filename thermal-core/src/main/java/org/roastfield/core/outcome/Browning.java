package org.roastfield.core.outcome;

import java.util.OptionalDouble;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.units.Temperatures;

/**
 * Crust and colour of one face, eq. (68).
 *
 * <p>The index is a colour difference, 0 for a raw face and 52 at most, by the kinetics of dry
 * bread crumb [Zanoni1995] at 140-250 °C, taken 3, 5 and 8 times as fast for meat, which is a
 * judgement. A face up to 100 °C is taken for wet and does not brown; from 100 to 140 °C the law is
 * used outside its range; above 250 °C its rate is kept.
 *
 * @param low index by the slow estimate
 * @param middle index
 * @param high index by the fast estimate
 * @param hottest temperature of the face [K]
 * @param timeDry time above 100 °C [s]
 * @param dryDepth thickness of the crust [m]; empty where the cook's laws do not form one
 */
public record Browning(
    double low,
    double middle,
    double high,
    double hottest,
    double timeDry,
    OptionalDouble dryDepth) {

  /** Face from which a caution about charring is given [K]; 230 °C, assumed. */
  public static final double CHARS = Temperatures.celsius(230);

  /** What the index rests on. */
  public static final Status STATUS = Status.ASSUMED;

  private static final double MOST = 52;
  private static final double DRY = Temperatures.celsius(100);
  private static final double HIGHEST = Temperatures.celsius(250);

  private static final FirstOrder CRUMB =
      new FirstOrder(
          "browning",
          42_000 * StrictMath.exp(-64_151 / (8.314462618 * 453.15)),
          453.15,
          64_151,
          Status.LITERATURE,
          "Zanoni, Peri and Bruno 1995, bread crumb");

  /** Of the surface, or the upper face, of a computed cook. */
  public static Browning of(CookedCut cut, SimulationResult result) {
    OptionalDouble depth =
        result.upperFaceWater().map(FaceWater::crust).stream().mapToDouble(d -> d).findFirst();
    return of(cut.surface(), depth);
  }

  /**
   * Of a face.
   *
   * @param dryDepth thickness of the crust [m], if known
   */
  public static Browning of(TemperatureHistory face, OptionalDouble dryDepth) {
    double done =
        face.integral(DRY, HIGHEST, CRUMB::rateAt)
            + CRUMB.rateAt(HIGHEST) * face.timeBetween(Math.nextUp(HIGHEST), Double.MAX_VALUE);
    return new Browning(
        index(3 * done),
        index(5 * done),
        index(8 * done),
        face.highest(),
        face.timeBetween(Math.nextUp(DRY), Double.MAX_VALUE),
        dryDepth);
  }

  /** Whether the face gets so hot that a caution about charring is due. */
  public boolean mayChar() {
    return hottest >= CHARS;
  }

  private static double index(double done) {
    return MOST * (1 - StrictMath.exp(-done));
  }
}
