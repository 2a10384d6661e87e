package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.material.Material;

/**
 * What is integrated: a grid scaled to a body, and its material.
 *
 * @param grid over ξ in [0, 1]
 * @param length what ξ = 1 stands for [m]: the equivalent radius or half thickness, or the
 *     thickness of a two-sided slab
 * @param material properties
 * @param source heat released inside, or null for none
 * @param depth of the body behind each square metre of face [m]; 0 where faces that dry are fed
 *     without an end
 */
record HeatProblem(
    Grid grid, double length, Material material, @Nullable CellSource source, double depth) {

  /** Of a body whose faces, if they dry, are fed without an end. */
  HeatProblem(Grid grid, double length, Material material, @Nullable CellSource source) {
    this(grid, length, material, source, 0);
  }
}
