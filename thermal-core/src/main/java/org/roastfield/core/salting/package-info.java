/**
 * How salt spreads in a cut before it is cooked: the same cells and the same time stepping as for
 * heat, with D for k/(ρ c) and kilograms of salt for joules, eq. (71).
 */
@NullMarked
package org.roastfield.core.salting;

import org.jspecify.annotations.NullMarked;
