/** Conversions between the units of the edge (°C, °F) and those of the inside (SI, kelvin). */
@NullMarked
package org.roastfield.core.units;

import org.jspecify.annotations.NullMarked;
