package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/**
 * Heat from a hot plate or bar pressed against the face, eq. (10): q = h_c (T_p − Ts). Plate
 * contact conductances of 200-1200 W/(m²·K) were measured on patties [HousovaTopinka1985].
 *
 * @param contactConductance h_c [W/(m²·K)], at least 0
 * @param plateTemperature T_p [K]
 */
public record Contact(double contactConductance, Signal plateTemperature) implements SurfaceLaw {

  /**
   * Usual conductance to a board or plate that a cut rests on [W/(m²·K)]; 10-30 in the first
   * minutes, assumed.
   */
  public static final double BOARD_CONDUCTANCE = 20;

  /**
   * @throws IllegalArgumentException if the conductance is negative or not finite
   */
  public Contact {
    Check.notNegative("contactConductance", contactConductance);
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double h = contactConductance;
    flux.addHeat(h * (plateTemperature.at(time) - surfaceTemperature), -h);
  }

  /** A wrap between metal and food is pressed thin: nothing changes. */
  @Override
  public SurfaceLaw under(Wrap wrap) {
    return this;
  }

  @Override
  public @Nullable LawRows rows() {
    return StandardRows.of(List.of(this));
  }

  @Override
  public double shortestPeriod() {
    return plateTemperature.shortestPeriod();
  }
}
