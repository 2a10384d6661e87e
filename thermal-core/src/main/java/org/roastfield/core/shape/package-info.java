/**
 * Shapes of cuts as seen by one space coordinate. Assumes that heat enters through the large faces
 * only; a short or tapering piece needs more than this package offers so far.
 */
@NullMarked
package org.roastfield.core.shape;

import org.jspecify.annotations.NullMarked;
