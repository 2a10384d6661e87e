/**
 * What keeps calibration honest: reference draws from a posterior by another way than the library's
 * own, and whether posteriors of simulated data hold the truth as often as they say.
 */
@NullMarked
package org.roastfield.lab.calibration;

import org.jspecify.annotations.NullMarked;
