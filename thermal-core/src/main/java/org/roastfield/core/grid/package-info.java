/**
 * Finite volumes over the dimensionless coordinate ξ in [0, 1], and how to read temperatures from
 * their averages. Not exported.
 *
 * <p>A symmetric body has ξ = r/R, no flux at 0 and a heated face at 1. A slab with two faces has ξ
 * = distance from the lower face over thickness, and both ends are heated. The scheme is eqs.
 * (12)-(16) of docs/model.md.
 */
@NullMarked
package org.roastfield.core.grid;

import org.jspecify.annotations.NullMarked;
