/** Moist air over a wet surface: saturation pressure, humidity, latent heat, boiling point. */
@NullMarked
package org.roastfield.core.air;

import org.jspecify.annotations.NullMarked;
