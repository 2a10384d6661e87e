/**
 * Stiff integration of heat conduction with nonlinear faces: one stage of a cook after another. Not
 * exported.
 *
 * <p>State is the volumetric enthalpy of each cell, scaled to kelvin; eq. (12) of docs/model.md.
 * Time stepping is ESDIRK4 (Kennedy and Carpenter) with a tridiagonal solve per stage; all that is
 * nonlinear at a face is one scalar, the face temperature, which is eliminated by superposition and
 * found by Newton's method. docs/numerics.md says why and what was measured.
 */
@NullMarked
package org.roastfield.core.integration;

import org.jspecify.annotations.NullMarked;
