/**
 * Reference data and exact solutions that the tests of every package compare with.
 *
 * <p>Data files are read from the class path under {@code /reference} and keep their own units,
 * which the accessor names state (Celsius, seconds, metres). The exact solutions are dimensionless,
 * or free of any offset in temperature, so that they serve Celsius and kelvin alike.
 */
@NullMarked
package org.roastfield.core.reference;

import org.jspecify.annotations.NullMarked;
