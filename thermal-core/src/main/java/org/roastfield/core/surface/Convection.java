package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/**
 * Heat from moving or still air, eq. (7): q = h (T∞ − Ts).
 *
 * @param heatTransferCoefficient h [W/(m²·K)], at least 0
 * @param airTemperature T∞ [K]
 */
public record Convection(double heatTransferCoefficient, Signal airTemperature)
    implements SurfaceLaw {

  /**
   * @throws IllegalArgumentException if the coefficient is negative or not finite
   */
  public Convection {
    Check.notNegative("heatTransferCoefficient", heatTransferCoefficient);
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double h = heatTransferCoefficient;
    flux.addHeat(h * (airTemperature.at(time) - surfaceTemperature), -h);
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    return new Convection(wrap.convection() * heatTransferCoefficient, airTemperature);
  }

  @Override
  public @Nullable LawRows rows() {
    return StandardRows.of(List.of(this));
  }

  @Override
  public double shortestPeriod() {
    return airTemperature.shortestPeriod();
  }
}
