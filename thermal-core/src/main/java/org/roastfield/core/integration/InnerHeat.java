package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;

/** Heat released inside the body, if any, in the scaled unit of the enthalpy. */
final class InnerHeat {

  private final Grid grid;
  private final ScaledMaterial material;
  private final @Nullable CellSource source;
  private final double[] averages;

  InnerHeat(Grid grid, ScaledMaterial material, @Nullable CellSource source) {
    this.grid = grid;
    this.material = material;
    this.source = source;
    this.averages = new double[grid.cells()];
  }

  boolean isPresent() {
    return source != null;
  }

  /** Adds factor · Q/(ρ c₀) to each cell [K/s · factor]. */
  void add(double time, double factor, double[] target) {
    if (source != null) {
      source.averages(time, averages);
      Rows.add(averages.length, factor / material.volumetricHeatCapacity(), averages, target);
    }
  }

  /** Q/(ρ c₀) summed over the volume [K/s]; 0 without a source. */
  double released(double time) {
    if (source == null) {
      return 0;
    }
    source.averages(time, averages);
    double sum = 0;
    for (int i = 0; i < averages.length; i++) {
      sum += grid.volume(i) * averages[i];
    }
    return sum / material.volumetricHeatCapacity();
  }
}
