/**
 * What logged cooks tell of unknown numbers: least squares, correlated errors, posteriors.
 *
 * <p>Everything works on coordinates, in which priors are normal: logarithms of multipliers,
 * offsets as they are. The objective is written out in {@code docs/model.md}.
 */
@NullMarked
package org.roastfield.core.inference;

import org.jspecify.annotations.NullMarked;
