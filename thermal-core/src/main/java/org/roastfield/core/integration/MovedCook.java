package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.surface.FaceWater;

/**
 * A cook as it would be at another value of one parameter, to first order: what its integration
 * found, moved along its derivatives. Heat, water on the faces and work are not carried along.
 */
public final class MovedCook implements ComputedCook {

  private final CookIntegration plain;
  private final TangentIntegration tangents;
  private final int parameter;
  private final double amount;
  private final Cook cook;

  /**
   * A moved cook.
   *
   * @param amount that the parameter is moved by
   * @param cook at the value that it is moved to
   */
  public MovedCook(
      CookIntegration plain, TangentIntegration tangents, int parameter, double amount, Cook cook) {
    this.plain = plain;
    this.tangents = tangents;
    this.parameter = parameter;
    this.amount = amount;
    this.cook = cook;
  }

  @Override
  public double time() {
    return plain.time() + amount * tangents.time(parameter);
  }

  @Override
  public Reading reading(Probe probe) {
    return plain.reading(probe, cook);
  }

  @Override
  public Reading readingAt(double distance) {
    return plain.readingAt(distance, cook);
  }

  @Override
  public double extent() {
    return plain.extent(cook);
  }

  @Override
  public double now(Reading reading) {
    return plain.now(reading) + amount * tangents.now(parameter, reading);
  }

  @Override
  public double evaporatedUpper() {
    return plain.evaporatedUpper() + amount * tangents.evaporatedUpper(parameter);
  }

  @Override
  public double evaporatedLower() {
    return plain.evaporatedLower() + amount * tangents.evaporatedLower(parameter);
  }

  @Override
  public double stored() {
    throw notMoved("stored heat");
  }

  @Override
  public double throughUpper() {
    throw notMoved("heat through the upper face");
  }

  @Override
  public double throughLower() {
    throw notMoved("heat through the lower face");
  }

  @Override
  public double turnover() {
    throw notMoved("heat through the faces");
  }

  @Override
  public @Nullable FaceWater faceWater(boolean upper) {
    throw notMoved("water on a face");
  }

  @Override
  public CarriedWater carriedWater(boolean upper) {
    CarriedWater own = plain.carriedWater(upper);
    CarriedWater change = tangents.carriedWater(upper, parameter);
    return new CarriedWater(
        own.drawn() + amount * change.drawn(),
        own.poured() + amount * change.poured(),
        own.ranOff() + amount * change.ranOff(),
        own.held() + amount * change.held());
  }

  @Override
  public double humidityRatio(boolean upper) {
    return plain.humidityRatio(upper) + amount * tangents.humidity(upper, parameter);
  }

  @Override
  public long acceptedSteps() {
    throw notMoved("work");
  }

  @Override
  public long rejectedSteps() {
    throw notMoved("work");
  }

  @Override
  public long solves() {
    throw notMoved("work");
  }

  @Override
  public long factorisations() {
    throw notMoved("work");
  }

  @Override
  public long fluxEvaluations() {
    throw notMoved("work");
  }

  private static IllegalStateException notMoved(String what) {
    return new IllegalStateException(
        what + " of a result moved along its derivatives is not known");
  }
}
