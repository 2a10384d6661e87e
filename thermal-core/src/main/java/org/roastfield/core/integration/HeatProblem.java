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
 */
record HeatProblem(Grid grid, double length, Material material, @Nullable CellSource source) {}
