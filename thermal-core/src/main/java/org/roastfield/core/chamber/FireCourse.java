package org.roastfield.core.chamber;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;

/** How a fire went: gas, wall, coals and heat over time. Immutable. */
public final class FireCourse {

  /** Error of straight lines between the samples of a signal [K]. */
  private static final double SAMPLE_ERROR = 0.02;

  private static final double SHORTEST_SAMPLE = 0.05;

  private final FirePit pit;
  private final Outside outside;
  private final double initialFuel;
  private final List<FireStep> steps;
  private final GasLag lag;

  FireCourse(FirePit pit, Outside outside, FireState start, List<FireStep> steps) {
    this.pit = pit;
    this.outside = outside;
    this.initialFuel = start.fuel();
    this.steps = List.copyOf(steps);
    List<GasLag.Deed> deeds = new ArrayList<>();
    deeds.add(deed(start.airTemperature(), steps.get(0)));
    for (int k = 1; k < steps.size(); k++) {
      FireStep before = steps.get(k - 1);
      FireStep after = steps.get(k);
      if (!before.tending.equals(after.tending)) {
        deeds.add(deed(moment(before, before.to).airTemperature(), after));
      }
    }
    lag = new GasLag(deeds, pit.walls().settling());
  }

  private GasLag.Deed deed(double before, FireStep after) {
    double gas = moment(after, after.from).airTemperature();
    return new GasLag.Deed(after.from, before, gas, after.tending.open());
  }

  /** Beginning [s]. */
  public double start() {
    return steps.get(0).from;
  }

  /** End [s]. */
  public double end() {
    return steps.get(steps.size() - 1).to;
  }

  /** Gas temperature [K] at a time [s]. */
  public double airTemperature(double time) {
    FireStep step = step(time);
    return moment(step, time).airTemperature() + lag.at(time);
  }

  /** Wall temperature [K] at a time [s]. */
  public double wallTemperature(double time) {
    return step(time).value(FireRun.WALL, time);
  }

  /** Power of the fire [W] at a time [s]. */
  public double power(double time) {
    return moment(step(time), time).power();
  }

  /** Fuel burnt up to a time [kg], ash and crumbs not counted. */
  public double burnt(double time) {
    return step(time).value(FireRun.RELEASED, time) / pit.bed().heatingValue();
  }

  /** State at a time [s]. */
  public FireState state(double time) {
    FireStep step = step(time);
    return new FireState(
        airTemperature(time),
        step.value(FireRun.WALL, time),
        Math.max(0, step.value(FireRun.STRENGTH, time)),
        Math.max(0, initialFuel - burnt(time)));
  }

  /** Where the heat went, from the beginning to the end. */
  public FireBalance balance() {
    FireStep last = steps.get(steps.size() - 1);
    double stored = pit.walls().capacity() * (last.last(FireRun.WALL) - wallTemperature(start()));
    return new FireBalance(
        last.last(FireRun.RELEASED),
        stored,
        last.last(FireRun.WALL_LOSS),
        last.last(FireRun.FLUE_LOSS),
        last.last(FireRun.LOAD));
  }

  /**
   * Gas temperature over time, straight between samples within 0.02 K.
   *
   * @param zero time of the fire that is the signal's time 0 [s]
   */
  public Signal air(double zero) {
    return sampled(this::airTemperature, zero);
  }

  /** Wall temperature over time, likewise. */
  public Signal walls(double zero) {
    return sampled(this::wallTemperature, zero);
  }

  /**
   * Chamber that a cook runs in. Its humidity is that outside with the fuel's water, at the vents'
   * air use.
   *
   * @param fuel what burns
   * @param zero time of the fire at which the cook begins [s]
   */
  public Chamber chamber(Draught.Fuel fuel, double zero) {
    double excess = 1 / pit.vents().airUse();
    double ratio = Draught.ofFire(fuel, 1, excess, outside.humidityRatio()).humidityRatio();
    Signal vapour = Signal.constant(MoistAir.vapourPressure(ratio, outside.pressure()));
    return new Chamber(air(zero), walls(zero), vapour, outside.pressure());
  }

  /**
   * First time from one on at which the gas is at least so warm [s]; NaN if it never is.
   *
   * @param temperature [K]
   * @param from [s]
   */
  public double timeOfAir(double temperature, double from) {
    return firstTime(from, t -> airTemperature(t) - temperature);
  }

  /**
   * First time from one on at which the coals can give so much [s]; NaN if they never can.
   *
   * @param strength [W]
   * @param from [s]
   */
  public double timeOfStrength(double strength, double from) {
    return firstTime(from, t -> step(t).value(FireRun.STRENGTH, t) - strength);
  }

  /**
   * First time at which gas and walls are at least so warm [s]; NaN if they never are.
   *
   * @param gas [K]
   * @param walls [K]
   */
  public double timeOfGasAndWalls(double gas, double walls) {
    return firstTime(start(), t -> Math.min(airTemperature(t) - gas, wallTemperature(t) - walls));
  }

  /** A quantity of the course. */
  @FunctionalInterface
  interface Quantity {
    double at(double time);
  }

  private double firstTime(double from, Quantity excess) {
    if (excess.at(from) >= 0) {
      return from;
    }
    for (FireStep step : steps) {
      if (step.to > from && excess.at(step.to) >= 0) {
        double low = Math.max(from, step.from);
        double high = step.to;
        while (high - low > 1e-3) {
          double middle = 0.5 * (low + high);
          if (excess.at(middle) >= 0) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return high;
      }
    }
    return Double.NaN;
  }

  /** Fuel with which the coals are never short of it up to a time [kg], crumbs counted. */
  public double charge(double until) {
    double most = 0;
    for (FireStep step : steps) {
      if (step.from < until) {
        double time = Math.min(until, step.to);
        double glowing = pit.bed().glowing(step.value(FireRun.STRENGTH, time));
        most = Math.max(most, burnt(time) + glowing);
      }
    }
    return most / pit.bed().usable();
  }

  private FireMoment moment(FireStep step, double time) {
    FireMoment moment = new FireMoment(pit, outside);
    moment.tend(step.tending);
    double released = step.value(FireRun.RELEASED, time);
    moment.at(
        step.value(FireRun.WALL, time),
        step.value(FireRun.STRENGTH, time),
        initialFuel - released / pit.bed().heatingValue());
    return moment;
  }

  /** The last step that begins before a time: at a jump, what it jumps from. */
  private FireStep step(double time) {
    Check.inRange("time", time, start(), end());
    int low = 0;
    int high = steps.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (steps.get(middle).from < time) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return steps.get(low);
  }

  private Signal sampled(Quantity quantity, double zero) {
    Check.finite("zero", zero);
    List<double[]> samples = new ArrayList<>();
    samples.add(new double[] {start(), quantity.at(start())});
    for (FireStep step : steps) {
      refine(samples, quantity, step.to, quantity.at(step.to));
    }
    double[] times = samples.stream().mapToDouble(each -> each[0] - zero).toArray();
    double[] values = samples.stream().mapToDouble(each -> each[1]).toArray();
    return SampledSignal.of(times, values, lag.shortestPeriod());
  }

  /** Adds samples up to one, so close that straight lines keep to the quantity. */
  private void refine(List<double[]> samples, Quantity quantity, double time, double value) {
    double[] before = samples.get(samples.size() - 1);
    double middle = 0.5 * (before[0] + time);
    double there = quantity.at(middle);
    boolean straight = Math.abs(there - 0.5 * (before[1] + value)) <= SAMPLE_ERROR;
    if (!straight && time - before[0] > SHORTEST_SAMPLE) {
      refine(samples, quantity, middle, there);
      refine(samples, quantity, time, value);
    } else {
      samples.add(new double[] {time, value});
    }
  }
}
