/**
 * Logged cooks computed again from their chamber readings and compared with what the probe
 * measured.
 */
@NullMarked
package org.roastfield.lab.replay;

import org.jspecify.annotations.NullMarked;
