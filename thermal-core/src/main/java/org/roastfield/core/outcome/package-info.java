/**
 * What a computed cook means on the plate: doneness, crust, juice, tenderness, and how it stands to
 * published minima.
 *
 * <p>Everything is read off {@link org.roastfield.core.outcome.TemperatureHistory histories} at the
 * places of the grid; {@link org.roastfield.core.outcome.CookedCut} does so for a {@code
 * SimulationResult}. Each number has a {@link org.roastfield.core.outcome.Status}. Nothing here
 * permits to serve or eat anything.
 */
@NullMarked
package org.roastfield.core.outcome;

import org.jspecify.annotations.NullMarked;
