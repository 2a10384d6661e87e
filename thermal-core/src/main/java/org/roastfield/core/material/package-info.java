/**
 * What a cut is made of and how it conducts and stores heat: a catalogue of foods, composition,
 * property curves, latent heats, materials.
 *
 * <p>Density is constant, since a fixed grid holds a fixed mass; conductivity and heat capacity may
 * depend on temperature. Freezing and loss of water from the inside are not represented.
 */
@NullMarked
package org.roastfield.core.material;

import org.jspecify.annotations.NullMarked;
