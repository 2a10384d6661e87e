package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/**
 * Exchange with walls that surround the cut, eq. (8): q = ε σ (T_w⁴ − Ts⁴), for a small body in an
 * enclosure.
 *
 * @param emissivity ε of the face in [0, 1]; wet meat 0.92-0.97, dry crust 0.85-0.95
 * @param wallTemperature T_w [K]
 */
public record Radiation(double emissivity, Signal wallTemperature) implements SurfaceLaw {

  /**
   * Stefan-Boltzmann constant σ [W/(m²·K⁴)], exact in the SI of 2019, rounded to 10 digits
   * [CODATA2018].
   */
  public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /**
   * @throws IllegalArgumentException if {@code emissivity} is outside [0, 1]
   */
  public Radiation {
    Check.inRange("emissivity", emissivity, 0, 1);
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double wall = wallTemperature.at(time);
    double wallSquared = wall * wall;
    double cubed = surfaceTemperature * surfaceTemperature * surfaceTemperature;
    double strength = emissivity * STEFAN_BOLTZMANN;
    flux.addHeat(
        strength * (wallSquared * wallSquared - cubed * surfaceTemperature), -4 * strength * cubed);
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    return new Radiation(wrap.radiation() * emissivity, wallTemperature);
  }

  @Override
  public @Nullable LawRows rows() {
    return StandardRows.of(List.of(this));
  }

  @Override
  public double shortestPeriod() {
    return wallTemperature.shortestPeriod();
  }
}
