package org.roastfield.core.chamber;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.Signal;

/**
 * When the lid of a chamber is open, eq. (60): what it keeps warm falls towards another value while
 * it is open, and recovers over a few times as long. It bends where the lid is opened and closed; a
 * stage is cut there by {@code Stage.cutAt}.
 *
 * @param openings in order of time, none overlapping
 */
public record Lid(List<Opening> openings) {

  /** Time constant of the fall [s]: 95 % in 15 s, assumed; the gas in a kettle holds some 8 kJ. */
  public static final double FALL = 5;

  /**
   * Time constant of the recovery over the time that the lid was open: 95 % after three times that,
   * assumed; 2-4 times is usual.
   */
  public static final double RECOVERY = 1;

  /** Air at the cut while the lid is open [K]: 30 K above the outside of 290 K; assumed. */
  public static final double OPEN_AIR = 320;

  /**
   * One opening.
   *
   * @param opens since the start of the cook [s]
   * @param duration [s], 5 s to an hour
   */
  public record Opening(double opens, double duration) {

    /**
     * @throws IllegalArgumentException if {@code opens} is negative or the duration outside its
     *     range
     */
    public Opening {
      Check.notNegative("opens", opens);
      Check.inRange("duration", duration, 5, 3600);
    }

    double closes() {
      return opens + duration;
    }
  }

  /**
   * @throws IllegalArgumentException if there is no opening, or one begins before the last has
   *     ended
   */
  public Lid {
    openings = List.copyOf(openings);
    Check.inRange("number of openings", openings.size(), 1, 1000);
    for (int i = 1; i < openings.size(); i++) {
      double earliest = openings.get(i - 1).closes();
      if (!(openings.get(i).opens() >= earliest)) {
        throw new IllegalArgumentException(
            "opens of openings["
                + i
                + "] must be at least "
                + earliest
                + " s, when the one before"
                + " ends, was "
                + openings.get(i).opens());
      }
    }
  }

  /** Lid that is opened once. */
  public static Lid openedAt(double opens, double duration) {
    return new Lid(List.of(new Opening(opens, duration)));
  }

  /**
   * A quantity that the lid keeps.
   *
   * @param closed its value with the lid closed
   * @param open value that it falls towards
   */
  public Signal over(Signal closed, double open) {
    return over(closed, open, RECOVERY);
  }

  /**
   * The same where the quantity recovers faster or more slowly.
   *
   * @param recovery time constant over the time that the lid was open, 0.1 to 10
   */
  public Signal over(Signal closed, double open, double recovery) {
    return new Kept(
        this, closed, Check.finite("open", open), Check.inRange("recovery", recovery, 0.1, 10));
  }

  /** When the lid is opened and closed [s], increasing: where a stage is best cut. */
  public double[] edges() {
    double[] edges =
        openings.stream()
            .flatMapToDouble(opening -> DoubleStream.of(opening.opens(), opening.closes()))
            .distinct()
            .toArray();
    return edges.length > 0 && edges[0] == 0 ? Arrays.copyOfRange(edges, 1, edges.length) : edges;
  }

  /** How far the fall has gone at a time [s], in [0, 1]. */
  public double fallen(double time) {
    return fallen(time, RECOVERY);
  }

  /**
   * The same with another recovery.
   *
   * @param recovery time constant over the time that the lid was open, greater than 0
   */
  public double fallen(double time, double recovery) {
    double fallen = 0;
    for (int i = 0; i < openings.size() && openings.get(i).opens() < time; i++) {
      Opening opening = openings.get(i);
      double until = Math.min(time, opening.closes());
      fallen = 1 - (1 - fallen) * StrictMath.exp(-(until - opening.opens()) / FALL);
      double next = i + 1 < openings.size() ? openings.get(i + 1).opens() : time;
      double closed = Math.min(time, next) - opening.closes();
      if (closed > 0) {
        fallen *= StrictMath.exp(-closed / (recovery * opening.duration()));
      }
    }
    return fallen;
  }

  private double shortest() {
    return openings.stream().mapToDouble(Opening::duration).min().orElseThrow();
  }

  private record Kept(Lid lid, Signal closed, double open, double recovery) implements Signal {

    @Override
    public double at(double time) {
      double value = closed.at(time);
      return value + lid.fallen(time, recovery) * (open - value);
    }

    /** Twice the shortest opening: steps are at most half of it, so that none is stepped over. */
    @Override
    public double shortestPeriod() {
      return Math.min(closed.shortestPeriod(), 2 * lid.shortest());
    }
  }
}
