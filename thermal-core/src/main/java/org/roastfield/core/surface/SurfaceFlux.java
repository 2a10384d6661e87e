package org.roastfield.core.surface;

/**
 * Sum of what the laws of one face say at one surface temperature: the single mutable type of this
 * package, owned by a solve and reused.
 */
public final class SurfaceFlux {

  private double heatFlux;
  private double slope;
  private double evaporation;
  private double evaporationSlope;

  /** An empty sum. */
  public SurfaceFlux() {}

  /** Empties the sum. */
  public void clear() {
    heatFlux = 0;
    slope = 0;
    evaporation = 0;
    evaporationSlope = 0;
  }

  /**
   * Adds heat.
   *
   * @param heatFlux q [W/m²], positive into the food
   * @param slope ∂q/∂Ts [W/(m²·K)]; wrong slopes cost iterations, not accuracy
   */
  public void addHeat(double heatFlux, double slope) {
    this.heatFlux += heatFlux;
    this.slope += slope;
  }

  /**
   * Adds vapour; its latent heat must be added by {@link #addHeat} as well.
   *
   * @param rate water leaving the surface [kg/(m²·s)], negative when vapour condenses on it
   * @param slope its derivative by surface temperature [kg/(m²·s·K)]
   */
  public void addEvaporation(double rate, double slope) {
    evaporation += rate;
    evaporationSlope += slope;
  }

  /** Adds a law's flux times a share of the face. */
  void addShare(double share, SurfaceLaw law, double surfaceTemperature, double time) {
    double heatBefore = heatFlux;
    double slopeBefore = slope;
    double evaporationBefore = evaporation;
    double evaporationSlopeBefore = evaporationSlope;
    clear();
    law.evaluate(surfaceTemperature, time, this);
    heatFlux = heatBefore + share * heatFlux;
    slope = slopeBefore + share * slope;
    evaporation = evaporationBefore + share * evaporation;
    evaporationSlope = evaporationSlopeBefore + share * evaporationSlope;
  }

  /** Heat flux q [W/m²], positive into the food. */
  public double heatFlux() {
    return heatFlux;
  }

  /** Slope ∂q/∂Ts [W/(m²·K)]. */
  public double slope() {
    return slope;
  }

  /** Water leaving the surface [kg/(m²·s)]. */
  public double evaporation() {
    return evaporation;
  }

  /** Derivative of the evaporation by surface temperature [kg/(m²·s·K)]. */
  public double evaporationSlope() {
    return evaporationSlope;
  }
}
