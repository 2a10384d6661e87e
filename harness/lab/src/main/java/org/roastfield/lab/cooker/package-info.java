/**
 * Cooks whose numbers are free: what a cook file and a log make of a point of parameters, what logs
 * of one cooker say of it, and the profile that keeps it.
 */
@NullMarked
package org.roastfield.lab.cooker;

import org.jspecify.annotations.NullMarked;
