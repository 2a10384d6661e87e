/**
 * Air of a chamber: saturation pressure, boiling point and altitude, humidity with dew point and
 * wet bulb, latent heat, and properties of dry air for convection.
 */
@NullMarked
package org.roastfield.core.air;

import org.jspecify.annotations.NullMarked;
