/**
 * One cook from start to end: {@link org.roastfield.core.simulation.Simulator} runs a {@link
 * org.roastfield.core.cook.Cook} and returns an {@link org.roastfield.core.simulation.Outcome}.
 *
 * <p>Assumes heat conduction in one space coordinate with constant density, no water moving inside
 * and no shrinkage; see docs/model.md for the equations and for where they fail.
 */
@NullMarked
package org.roastfield.core.simulation;

import org.jspecify.annotations.NullMarked;
