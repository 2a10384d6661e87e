/** The air and walls around a cut, as functions of time: steady, or logged. */
@NullMarked
package org.roastfield.core.chamber;

import org.jspecify.annotations.NullMarked;
