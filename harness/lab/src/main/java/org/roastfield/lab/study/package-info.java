/**
 * Studies of calibration: made-up logs by the hundred, whose truths are known, and what the library
 * makes of them, held against bars that were set before.
 */
@NullMarked
package org.roastfield.lab.study;

import org.jspecify.annotations.NullMarked;
