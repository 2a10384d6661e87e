/**
 * Laws of heat flux into the surface of a cut, and of evaporation from it.
 *
 * <p>A {@link org.roastfield.core.surface.SurfaceLaw} gives the flux [W/m²], positive into the
 * food, and its slope with surface temperature. Convection, radiation, evaporation and contact are
 * provided; a caller's own law is one method. A coefficient of convection is stated, or follows
 * from form, size and air ({@link org.roastfield.core.surface.FilmCoefficient}). Surroundings that
 * change in time enter as {@link org.roastfield.core.surface.Signal}s. Wetness is constant in a
 * stage: a surface that dries or is fed with juice is not represented yet.
 */
@NullMarked
package org.roastfield.core.surface;

import org.jspecify.annotations.NullMarked;
