/** Inference against certified answers, closed forms and dense algebra. */
@NullMarked
package org.roastfield.core.inference;

import org.jspecify.annotations.NullMarked;
